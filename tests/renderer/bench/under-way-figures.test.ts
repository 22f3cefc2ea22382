import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../app/language/format.ts';
import { withDoubt } from '../../../renderer/bench/tabs/under-way/costs-table.tsx';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });

describe('a difference on the water is told with its doubt (half of the 95 % interval)', () => {
  it.each([
    ['of a tenth and more, to a tenth', 4.31, 0.56, '+4.3 ± 1.1'],
    ['under 0.05, to a hundredth: never as 0.0 or left out', 0.113, 0.02, '+0.11 ± 0.04'],
    ['of tens, to tens', 83, 20, '+80 ± 40'],
    ['that falls', -0.62, 0.1, '\u{2212}0.6 ± 0.2'],
    ['of nothing: the water is as deep already', 0, 0, '0.0'],
  ])('%s', (_, value, sd, text) => {
    expect(withDoubt(value, sd, format)).toBe(text.replace(' ± ', '\u{a0}±\u{a0}'));
  });
});
