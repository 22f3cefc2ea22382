import { expect, it } from 'vitest';
import { dualBound } from '../../../renderer/jobs/dual-bound.ts';
import { loadHighs } from '../../../renderer/jobs/load-highs.ts';

it('the bound is read from what the solver prints', async () => {
  const log: string[] = [];
  const highs = await loadHighs({ print: (line) => void log.push(line) });
  const programme = 'Minimize\n cost: 3 x + 2 y\nSubject To\n r: 2 x + 2 y >= 3\nBinary\n x y\nEnd\n';
  expect(highs.solve(programme, { mip_rel_gap: 0 }).ObjectiveValue).toBe(5);
  expect(dualBound(log)).toBe(5);
  expect(dualBound(['nothing'])).toBeNull();
  expect(dualBound(['  Dual bound        -inf'])).toBeNull();
});
