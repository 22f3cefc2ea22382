import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { COORDINATES, FITTING_COORDINATES } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../core/document/fitting-coordinate.ts';
import { boatState } from '../../core/evaluation/boat-state.ts';
import { computeBoat } from '../../core/evaluation/computed-fit.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { seatFrame, solveSeat } from '../../core/evaluation/seat-state.ts';
import { derivativesTo } from '../../core/optimise/sensitivity.ts';
import { cases } from '../cases.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';

/**
 * Finite differences of the whole pipeline: a cold evaluation (nothing held, nothing kept) at four places about the
 * setting, to fourth order: f′ ≈ (f(−2h) − 8 f(−h) + 8 f(h) − f(2h)) / 12h (Abramowitz & Stegun 25.3.6).
 */
const STEP = { m: 0.0015, deg: 0.4 } as const;

/** Every quantity of a fit worked out from nothing: body, hull, stances, loads, the boat afloat. */
function coldValues(fit: Fit): Map<string, number> {
  const seats = fit.seats.map((seat, index) =>
    solveSeat({ seat, body: bodyOfAthlete(seat.athlete!), frame: seatFrame(fit.boat, seat, index) }),
  );
  const { quantities } = computeBoat(boatState(fit), seats, null);
  return new Map(quantities.map((q) => [`${q.id}@${q.seat}`, q.value]));
}

/** Tolerances: a share of the slope, and a floor under which a slope is none, per metre or degree by its unit. */
const SHARE = 0.03;
const FLOOR = { m: 5e-3, deg: 5e-5 } as const;

/** The least of several distances or angles bends where another becomes the least: there two steps see different pieces. */
const PIECEWISE = [
  'padInsideHull',
  'kneeInsideHull',
  'restInsideHull',
  'footInsideHull',
  'footOverhang',
  'supportMargin',
  'hipFlexorStretch',
];

// The quick run takes the first.
const FITS: readonly (readonly [string, Fit])[] = [
  ['the example', exampleFit()],
  [
    'a right-hander with toes out',
    exampleFit([exampleSeat({ side: 'right', frontFoot: { ...exampleSeat().frontFoot, toeOutDeg: 12 } })]),
  ],
];

describe.each(FITS.slice(0, cases(1, 2)))(
  'what one centimetre does, of %s, against finite differences of the whole pipeline',
  (_, fit) => {
    const evaluator = createEvaluator();
    const report = evaluator.evaluate(fit);

    it.each(FITTING_COORDINATES)('%s, every quantity', (coordinate) => {
      const { unit } = COORDINATES[coordinate];
      const h = STEP[unit];
      const at = coordinateOf(fit.seats[0]!, coordinate);
      const values = [-2, -1, 1, 2].map((k) =>
        coldValues(withCoordinate(fit, { seat: 0, coordinate }, at + k * h)),
      );
      const found = derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate });
      expect(found.length).toBeGreaterThan(50);
      for (const { id, seat, perUnit, unit: quantityUnit } of found) {
        const [a, b, c, d] = values.map((v) => v.get(`${id}@${seat}`)!);
        const slope = (a! - 8 * b! + 8 * c! - d!) / (12 * h);
        // Newtons and pascals are large numbers: their floor is a newton, a kilopascal a metre.
        const scale = { N: 1e3, Pa: 1e6, N·m: 1e2, kg: 1e1 }[quantityUnit as string] ?? 1;
        const off = Math.abs(perUnit - slope);
        const room = (PIECEWISE.includes(id) ? 10 : 1) * (SHARE * Math.abs(slope) + FLOOR[unit] * scale);
        expect(off, `${id}: ${perUnit} against ${slope}`).toBeLessThan(room);
      }
    });
  },
);

describe('what one centimetre does, known without a model', () => {
  const fit = exampleFit();
  const evaluator = createEvaluator();
  const report = evaluator.evaluate(fit);
  const slopes = new Map(
    FITTING_COORDINATES.map((coordinate) => [
      coordinate,
      derivativesTo({ evaluator, fit, report }, { seat: 0, coordinate }),
    ]),
  );
  const slope = (coordinate: (typeof FITTING_COORDINATES)[number], id: string) =>
    slopes.get(coordinate)!.find((d) => d.id === id)!.perUnit;

  it('a place moved a centimetre is a centimetre elsewhere; a mass is nowhere heavier', () => {
    expect(slope('kneePad.aftM', 'padAft')).toBeCloseTo(1, 9);
    expect(slope('kneePad.heightM', 'padHeight')).toBeCloseTo(1, 9);
    expect(slope('paddle.lengthM', 'paddleUnderStature')).toBeCloseTo(-1, 9);
    for (const coordinate of FITTING_COORDINATES) expect(slope(coordinate, 'totalMass')).toBeCloseTo(0, 9);
  });

  it('the three shares stay one, so their slopes cancel', () => {
    for (const coordinate of FITTING_COORDINATES) {
      const sum = ['kneeShare', 'rearShare', 'frontShare'].reduce((s, id) => s + slope(coordinate, id), 0);
      expect(sum, coordinate).toBeCloseTo(0, 8);
    }
  });
});
