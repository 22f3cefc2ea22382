import { expect, it } from 'vitest';
import { beforeText } from '../../../../renderer/pages/measure/before-text.ts';

it('names the day of an earlier measure only where one is known', () => {
  expect(beforeText('171.0 cm', null)).toBe('Before: 171.0 cm.');
  expect(beforeText('171.0 cm', '2026-03-04')).toMatch(/^Before: 171\.0 cm on .*2026\.$/);
});
