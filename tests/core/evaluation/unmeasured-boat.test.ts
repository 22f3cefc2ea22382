import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { narrowedBy } from '../../../core/evaluation/narrowed-by.ts';
import { unmeasuredBoat } from '../../../core/evaluation/unmeasured-boat.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { exampleBoat } from '../example/example-fit.ts';

describe('a boat as if nobody had measured it', () => {
  it('has the usual lines of its class at its own length and beam, and is a boat', () => {
    const boat = exampleBoat();
    const bare = boatSchema.parse(unmeasuredBoat(boat));
    expect(bare.hull.kind).toBe('usual');
    expect(hullLengthOf(bare.hull)).toBeCloseTo(hullLengthOf(boat.hull), 9);
  });

  it('is less sure than the measured boat in draft, trim and breadth', () => {
    const boat = exampleBoat();
    const figures = narrowedBy(unmeasuredBoat(boat), boat).map(({ figure }) => figure);
    expect(figures).toEqual(expect.arrayContaining(['draft', 'trimRest', 'halfBreadth']));
  });

  it('is the boat itself where nobody measured, and without the float check where one was taken', () => {
    const usual = usualHull({ boatClass: 'C2' });
    expect(unmeasuredBoat(usual)).toEqual(usual);
    const correction = { fullness: 0.02, foreAftFullness: 0, residualM: 0.001 };
    const checked = { ...usual, correction };
    expect(hullSpread(checked).draft).toBeLessThan(hullSpread(unmeasuredBoat(checked)).draft / 2);
  });
});
