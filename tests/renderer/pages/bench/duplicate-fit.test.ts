import { expect, it } from 'vitest';
import { fitSchema } from '../../../../core/document/fit-schema.ts';
import { copyName } from '../../../../renderer/pages/bench/duplicate-fit.ts';

it.each([
  ['Spring', 'Spring (2)'],
  ['Spring (2)', 'Spring (3)'],
  ['Spring (9)', 'Spring (10)'],
  ['C2 (old) boat', 'C2 (old) boat (2)'],
])('a copy of %s is %s', (name, copy) => {
  expect(copyName(name)).toBe(copy);
});

it('is never longer than a fit’s name may be', () => {
  expect(fitSchema.shape.name.safeParse(copyName('x'.repeat(120))).success).toBe(true);
});
