import fc from 'fast-check';
import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { type Figure, figureOf } from '../../../core/figure/figure.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

/** Ready, catch, drive, exit, recovery: legs of the cycle. */
export const INSTANTS = [0, 1, 1.5, 2, 2.5];
const SEED = 20;

/** A paddler of any body on either knee, with fittings that are spread about the usual ones. */
const someFit = fc
  .record({
    side: fc.constantFrom('left' as const, 'right' as const),
    sex: fc.constantFrom('female' as const, 'male' as const, 'unspecified' as const),
    statureM: fc.double({ min: 1.4, max: 2.05, noNaN: true }),
    index: fc.double({ min: 17, max: 32, noNaN: true }),
    spread: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
  })
  .map(({ side, sex, statureM, index, spread }): Fit => {
    const size = statureM / 1.8;
    const athlete = exampleAthlete({ side, sex, statureM, massKg: index * statureM ** 2 });
    const seat = exampleSeat({ side, athlete });
    const [aft, out, up, rest, foot, hand] = spread as [number, number, number, number, number, number];
    return fitSchema.parse(
      exampleFit([
        {
          ...seat,
          kneePad: {
            ...seat.kneePad,
            aftM: 0.175 * size + 0.03 * aft,
            outM: 0.035 + 0.02 * out,
            heightM: 0.11 + 0.03 * up,
          },
          rearRest: { ...seat.rearRest, aftM: 0.62 * size + 0.03 * rest },
          frontFoot: { ...seat.frontFoot, forwardM: 0.4 * size + 0.04 * foot },
          paddle: { ...seat.paddle, lengthM: 1.7 * size, lowerHandM: 0.7 * size + 0.04 * hand },
        },
      ]),
    );
  });

/** A paddler at one instant: the stance and the figure made of it. */
export interface Drawn {
  readonly stance: Stance;
  readonly figure: Figure;
}

function drawnOf(fit: Fit): Drawn[] {
  const report = valuesOf(fit);
  const crew = strokeOfFit(fit, report);
  const seat = fit.seats[0]!;
  const { stature, lengths } = report.seats[0]!.body;
  return INSTANTS.map((at) => {
    const { stance } = strokeRow(crew, at).seats[0]!;
    const body = { stature, lengths, sex: seat.athlete!.sex };
    return { stance, figure: figureOf(stance.points, body, { paddle: seat.paddle, fineness: 'screen' }) };
  });
}

/** So many paddlers at the five instants, the same ones at each call. */
export const drawnAtRandom = (numRuns: number): Drawn[][] =>
  fc.sample(someFit, { seed: SEED, numRuns }).map(drawnOf);
