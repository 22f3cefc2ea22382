import { describe, expect, it } from 'vitest';
import { fineRows } from '../../../core/hull/fine-rows.ts';
import { hullLines } from '../../../core/hull/hull-lines.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { halfBreadth } from '../../../core/hull/section-at.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit } from '../example/example-fit.ts';

const hull = hullOfBoat(exampleFit().boat);

describe('lines of a lines plan', () => {
  it('have rows at every station and between, of the very surface that floats', () => {
    const rows = fineRows(hull, 8);
    expect(rows.count).toBe(8 * (hull.stations.length - 1) + 1);
    for (const { x } of hull.stations) expect([...rows.x]).toContain(x);
  });

  it('run fair: no corner of a buttock in the middle half turns by more than 2°', () => {
    for (const { y, runs } of notEmpty(hullLines(hull, { halfBreadths: [0.08] }).buttocks)) {
      for (const run of notEmpty(runs)) {
        for (const { x, z } of run.slice(2, -2))
          expect(Math.abs((halfBreadth(hull, x, z) ?? y) - y)).toBeLessThan(2e-3);
        for (let k = 3; k < run.length - 3; k++) {
          const [a, b, c] = [run[k - 1]!, run[k]!, run[k + 1]!];
          if (Math.abs(b.x) > hull.length / 4) continue;
          const turn = Math.atan2(c.z - b.z, c.x - b.x) - Math.atan2(b.z - a.z, b.x - a.x);
          expect(Math.abs(turn)).toBeLessThan((2 * Math.PI) / 180);
        }
      }
    }
  });
});
