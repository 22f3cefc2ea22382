import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import type { Evaluator } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';

/** An invented fit with one seat, for tests of the document; nothing in it is computed. */
export function inventedFit(): Fit {
  const shares = [-0.8, -0.4, 0, 0.4, 0.8];
  return fitSchema.parse({
    format: 'kneelwright-fit/1',
    name: 'Invented',
    boat: {
      name: 'Invented hull',
      massKg: 14,
      hull: {
        kind: 'tape',
        lengthM: 5.2,
        stations: shares.map((share) => ({
          xM: share * 2.6,
          keelM: 0,
          sheerM: 0.3,
          sheerBeamM: 0.42 * (1 - 0.7 * share ** 2),
        })),
      },
      floorboard: { heightM: 0.03, widthM: 0.24, aftEndXM: -1.5, foreEndXM: 1.5 },
      seats: [{ stationM: 0 }],
    },
    seats: [
      {
        athlete: { name: 'Nobody', sex: 'unspecified', side: 'left', statureM: 1.75, massKg: 72 },
        side: 'left',
        kneePad: { aftM: 0.175, outM: 0.035, heightM: 0.11 },
        rearRest: { aftM: 0.62, outM: -0.1, heightM: 0.05 },
        frontFoot: { forwardM: 0.4, outM: -0.06 },
        paddle: { lengthM: 1.65, bladeLengthM: 0.57, lowerHandM: 0.7 },
      },
    ],
  });
}

/** An evaluator that only counts: its report carries the pad's place, so that tests can tell reports apart. */
export function countingEvaluator() {
  const calls = { evaluate: 0, evaluateHolding: 0 };
  const report = (fit: Fit): Report => ({
    format: 'kneelwright-report/1',
    fitName: fit.name,
    seats: [],
    afloat: {} as Report['afloat'],
    balance: null,
    quantities: [{ id: 'padAft', seat: 0, value: fit.seats[0]!.kneePad.aftM, sd: null, unit: 'm' }],
    findings: [],
    unknowns: [],
  });
  const evaluator: Evaluator = {
    evaluate(fit) {
      calls.evaluate += 1;
      return report(fit);
    },
    evaluateHolding(fit) {
      calls.evaluateHolding += 1;
      return report(fit);
    },
    judgedHolding: () => new Map(),
  };
  return { evaluator, calls };
}

/** The fit with its knee pad set `aftM` aft. */
export function padAt(fit: Fit, aftM: number): Fit {
  const [seat, ...rest] = fit.seats;
  return { ...fit, seats: [{ ...seat!, kneePad: { ...seat!.kneePad, aftM } }, ...rest] };
}
