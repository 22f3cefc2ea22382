import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readDemo } from '../../app/demo/scenario.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import { findQuantity } from '../../core/evaluation/quantities.ts';

/** How far the lower hand usually is above the neck of the blade, metres: common practice, no source. */
const HAND_ABOVE_NECK = { least: 0.15, most: 0.25 };

const fits = readDemo(join(import.meta.dirname, '../../assets')).fits.flatMap(({ revisions }) =>
  revisions.map(({ fit, name }) => [`${fit.name}: ${name}`, fit] as const),
);

it.each(fits)('%s has nothing to do, can be built, and has its hands where hands usually are', (_, fit) => {
  const { findings, quantities } = evaluateFit(fit);
  expect(findings.filter(({ severity }) => severity !== 'good').map(({ id }) => id)).toEqual([]);
  expect(findQuantity(quantities, 'boardInsideHull', null)!.value).toBeGreaterThan(0);
  fit.seats.forEach((_seat, index) => {
    const above = findQuantity(quantities, 'handAboveNeck', index)!.value;
    expect(above).toBeGreaterThanOrEqual(HAND_ABOVE_NECK.least);
    expect(above).toBeLessThanOrEqual(HAND_ABOVE_NECK.most);
  });
});
