import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { bestDrilling } from '../../../core/drilling/best-drilling.ts';
import { drilledPlaces } from '../../../core/drilling/drilled-places.ts';
import { drillingModel, USUAL_DRILLING } from '../../../core/drilling/drilling-model.ts';
import { drillingWishes } from '../../../core/drilling/drilling-wish.ts';
import { movedFit } from '../../../core/drilling/given-up.ts';
import type { PlanPoint } from '../../../core/parts/part.ts';
import { inventedFit, ROWS_OF_HOLES } from '../setout/invented-set-out.ts';
import { exactSolver } from './highs-solver.ts';

const drilledAt = (fit: Fit, holes: readonly { x: number; y: number }[]): Fit => ({
  ...fit,
  boat: {
    ...fit.boat,
    holes: holes.map(({ x, y }) => ({ xM: x, yM: y, diameterM: 0.0065, state: 'drilled' as const })),
  },
});

describe('places on holes that are drilled', () => {
  it.each(['left', 'right'] as const)(
    'are those that a plan puts pad and rest at, kneeling %s',
    async (side) => {
      const fit = inventedFit({ side, hardware: ROWS_OF_HOLES });
      const rules = { ...USUAL_DRILLING, board: fit.boat.floorboard, known: [] };
      const found = bestDrilling(
        drillingModel(
          drillingWishes([fit], () => 0.003),
          { ...rules, stepM: 0.002 },
        ),
        await exactSolver(),
      );
      if (found === 'none' || found === 'late') throw new Error(found);
      const [pad, rest] = found.plan.standings;
      const planned = movedFit(fit, 0, { kneePad: pad!, rearRest: rest! }).seats[0]!;
      const drilled = drilledAt(fit, found.plan.used);
      for (const fitting of ['kneePad', 'rearRest'] as const) {
        const places = drilledPlaces(drilled, 0, fitting);
        const { aftM, outM } = planned[fitting];
        // Bolts are spaced to whole steps: the middle of a pair may be out by half of one.
        const off = places.map((place) => Math.hypot(place.aftM - aftM, place.outM - outM));
        expect(Math.min(...off), fitting).toBeLessThan(0.0011);
      }
    },
  );

  it('are none without drilled holes, for planned ones, and on rails', () => {
    const fit = inventedFit({ hardware: ROWS_OF_HOLES });
    expect(drilledPlaces(fit, 0, 'kneePad')).toEqual([]);
    const bolts = drillingWishes([fit], () => 0)[0]!.bolts;
    const drilled = drilledAt(fit, bolts);
    expect(drilledPlaces(drilled, 0, 'kneePad')).toHaveLength(1);
    const holes = drilled.boat.holes!.map((hole) => ({ ...hole, state: 'planned' as const }));
    expect(drilledPlaces({ ...drilled, boat: { ...drilled.boat, holes } }, 0, 'kneePad')).toEqual([]);
    const rails = [{ fitting: 'kneePad' as const, apartM: 0.1, heightM: 0, holeM: 0.0065 }];
    const hardware = { ...drilled.boat.hardware, rails };
    expect(drilledPlaces({ ...drilled, boat: { ...drilled.boat, hardware } }, 0, 'kneePad')).toEqual([]);
  });
});

it('two holes count as straight across within the play of their bolts: 0.6 mm along the boat', () => {
  const fit = inventedFit({ hardware: ROWS_OF_HOLES });
  const [one, other] = drillingWishes([fit], () => 0)[0]!.bolts as [PlanPoint, PlanPoint];
  const places = (aslantM: number) =>
    drilledPlaces(drilledAt(fit, [one, { ...other, x: other.x + aslantM }]), 0, 'kneePad');
  expect(places(0.0005)).toHaveLength(1);
  expect(places(0.0007)).toEqual([]);
});

it('rails too short to keep a bolt from both ends hold none', () => {
  const board = inventedFit().boat.floorboard;
  const wish = (fore: number) => ({
    fit: 0,
    seat: 0,
    fitting: 'kneePad' as const,
    bolts: [{ x: 0.01, y: 0.03 }],
    toleranceM: 0.05,
    rails: [0, fore] as const,
  });
  const ways = (fore: number) =>
    drillingModel([wish(fore)], { ...USUAL_DRILLING, board, known: [] }).standings[0]!;
  // 12 mm from each end.
  expect(ways(0.0239)).toEqual([]);
  expect(ways(0.0241)).toMatchObject([{ dx: expect.closeTo(0.002, 3) }]);
});
