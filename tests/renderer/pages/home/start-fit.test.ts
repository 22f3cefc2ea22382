import { describe, expect, it } from 'vitest';
import { FITTING_COORDINATES } from '../../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../../core/document/fitting-coordinate.ts';
import { startFit } from '../../../../renderer/pages/home/start-fit.ts';
import { makeFit } from '../../../../renderer/pages/new-fit/make-fit.ts';
import { notEmpty } from '../../../not-empty.ts';

/** How far the picture may be from what the program would set today, in the coordinate's own unit: nobody sees less. */
const NEAR = { m: 0.015, deg: 4 };

describe('the empty sheet’s picture', () => {
  it('shows the setting that a first fit of that body begins with', () => {
    const { boat, seats } = startFit();
    const { athlete, side } = seats[0]!;
    const made = makeFit({ name: '–', boat, starters: [{ athlete, side }] });
    for (const coordinate of notEmpty(FITTING_COORDINATES)) {
      const [shown, set] = [coordinateOf(seats[0]!, coordinate), coordinateOf(made.seats[0]!, coordinate)];
      const near = coordinate.endsWith('Deg') ? NEAR.deg : NEAR.m;
      expect(Math.abs(shown - set), coordinate).toBeLessThan(near);
    }
  });
});
