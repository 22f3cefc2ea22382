import { setImmediate } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator, evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { judgedOf } from '../../../core/evaluation/probability.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

const value = (report: Report, id: string, seat: number | null = 0) => {
  const found = report.quantities.find((q) => q.id === id && q.seat === seat);
  if (!found) throw new Error(`no quantity ${id}`);
  return found.value;
};

/** Quantities that change sign with the side; all others stay as they are. */
const MIRRORED = ['offCentre', 'steadyMoment'];

function mirrored(fit: Fit): Fit {
  return { ...fit, seats: fit.seats.map((s) => ({ ...s, side: s.side === 'left' ? 'right' : 'left' })) };
}

describe('evaluateFit', () => {
  const fit = exampleFit();
  const report = evaluateFit(fit);

  it('floats, kneels and judges the example', () => {
    expect(report.afloat.ready.kind).toBe('afloat');
    expect(report.findings.length).toBeGreaterThan(25);
    for (const q of report.quantities) {
      expect(Number.isFinite(q.value), q.id).toBe(true);
      expect(q.sd === null || (Number.isFinite(q.sd) && q.sd >= 0), q.id).toBe(true);
    }
  });

  it('has no room beside a knee that kneels above the sheer, and no finding of it', () => {
    const high = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.heightM' }, 0.4);
    const { quantities, findings } = evaluateFit(high);
    expect(report.quantities.some(({ id }) => id === 'kneeInsideHull')).toBe(true);
    expect(quantities.some(({ id }) => id === 'kneeInsideHull')).toBe(false);
    expect(findings.some(({ quantity }) => quantity === 'kneeInsideHull')).toBe(false);
  });

  it('gives equal numbers each time, from any evaluator', () => {
    expect(JSON.stringify(evaluateFit(structuredClone(fit)))).toBe(JSON.stringify(report));
  });

  it('balances: shares sum to one, loads to the weight of paddler and paddle', () => {
    expect(value(report, 'kneeShare') + value(report, 'rearShare') + value(report, 'frontShare')).toBeCloseTo(
      1,
      9,
    );
    const loads = value(report, 'kneeLoad') + value(report, 'rearLoad') + value(report, 'frontLoad');
    expect(loads).toBeCloseTo((80 + 0.75) * 9.80665, 3);
  });

  it('gives the mirrored fit the same numbers, lateral ones negated', () => {
    const other = evaluateFit(mirrored(fit));
    for (const q of report.quantities) {
      const sign = MIRRORED.includes(q.id) ? -1 : 1;
      const mirror = value(other, q.id, q.seat) * sign;
      expect(Math.abs(mirror - q.value), q.id).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(q.value)));
    }
    expect(other.findings.map((f) => f.severity).toSorted()).toEqual(
      report.findings.map((f) => f.severity).toSorted(),
    );
  });

  it('puts the most severe first', () => {
    const order = ['stop', 'change', 'check', 'good'];
    const ranks = report.findings.map((f) => order.indexOf(f.severity));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });

  it('lets an empty seat float', () => {
    const empty = evaluateFit(exampleFit([exampleSeat(), { ...exampleSeat(), athlete: null }]));
    expect(empty.seats[1]).toBeNull();
    expect(empty.afloat.ready.kind).toBe('afloat');
  });
});

describe('an evaluator that knows its seats from the step before', () => {
  const crew = exampleFit([
    exampleSeat({ athlete: exampleAthlete({ massKg: 72 }) }),
    exampleSeat({ athlete: exampleAthlete({ massKg: 90, side: 'right' }), side: 'right' }),
  ]);
  const evaluator = createEvaluator();
  const held = evaluator.evaluate(crew);

  it('gives, bit for bit, what one gives that has never seen them', () => {
    for (const seat of [0, 1, 0]) {
      const moved = withCoordinate(crew, { seat, coordinate: 'kneePad.aftM' }, 0.2);
      const fresh = createEvaluator().evaluateHolding(moved, held);
      expect(JSON.stringify(evaluator.evaluateHolding(moved, held))).toBe(JSON.stringify(fresh));
    }
  });

  it('solves the same seats anew where they change places, or the floorboard is raised', () => {
    const swapped = { ...crew, seats: crew.seats.toReversed() };
    const { boat } = crew;
    const raised = { ...crew, boat: { ...boat, floorboard: { ...boat.floorboard, heightM: 0.05 } } };
    for (const fit of [swapped, raised])
      expect(JSON.stringify(evaluator.evaluate(fit))).toBe(JSON.stringify(evaluateFit(fit)));
  });
});

describe('facts a coach would swear to (common practice, no source)', () => {
  const evaluator = createEvaluator();
  const fit = exampleFit();
  const base = evaluator.evaluate(fit);
  const moved = (coordinate: Parameters<typeof withCoordinate>[1]['coordinate'], by: number, from: number) =>
    evaluator.evaluateHolding(withCoordinate(fit, { seat: 0, coordinate }, from + by), base);

  it('pad further aft: the bow comes up and the front knee opens', () => {
    const aft = moved('kneePad.aftM', 0.03, 0.175);
    expect(value(aft, 'trimRest', null)).toBeGreaterThan(value(base, 'trimRest', null));
    expect(value(aft, 'frontKnee')).toBeGreaterThan(value(base, 'frontKnee'));
  });

  it('pad higher: the centre of mass rises, the boat is tippier, the front knee opens', () => {
    const high = moved('kneePad.heightM', 0.02, 0.11);
    expect(value(high, 'centreHeight')).toBeGreaterThan(value(base, 'centreHeight'));
    expect(value(high, 'transverseGm', null)).toBeLessThan(value(base, 'transverseGm', null));
    expect(value(high, 'frontKnee')).toBeGreaterThan(value(base, 'frontKnee'));
  });

  it('rest further aft: the kneeling knee opens', () => {
    const aft = moved('rearRest.aftM', 0.02, 0.62);
    expect(value(aft, 'kneelingKnee')).toBeGreaterThan(value(base, 'kneelingKnee'));
  });

  it('at the catch the bow is lower than at rest', () => {
    expect(value(base, 'trimCatch', null)).toBeLessThan(value(base, 'trimRest', null));
  });
});

describe('evaluateHolding', () => {
  it('has the same values as a whole evaluation, with the spreads it was given', () => {
    const evaluator = createEvaluator();
    const fit = exampleFit();
    const held = evaluator.evaluate(fit);
    const moved = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.19);
    const fast = evaluator.evaluateHolding(moved, held);
    const whole = evaluator.evaluate(moved);
    for (const q of whole.quantities) {
      expect(Math.abs(value(fast, q.id, q.seat) - q.value), q.id).toBeLessThan(
        1e-7 * Math.max(1, Math.abs(q.value)),
      );
    }
    const sd = (r: Report) => r.quantities.find((q) => q.id === 'frontKnee')!.sd;
    expect(sd(fast)).toBe(sd(held));
  });

  it('lets go of the steps before: a key that is held down fills no memory', async () => {
    const evaluator = createEvaluator();
    const fit = exampleFit();
    let report = evaluator.evaluate(fit);
    const steps: WeakRef<Report>[] = [];
    for (let mm = 0; mm < 5; mm++) {
      const moved = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.15 + mm / 1000);
      report = evaluator.evaluateHolding(moved, report);
      steps.push(new WeakRef(report));
    }
    await setImmediate();
    collectGarbage();
    expect(steps.filter((step) => step.deref() !== undefined)).toHaveLength(1);
    expect(report.unknowns).toEqual(evaluator.evaluate(fit).unknowns);
  });
});

describe('personal limits and bands of one’s own', () => {
  it('a personal limit narrows the band and says stop past it', () => {
    const athlete = exampleAthlete({
      limits: [{ joint: 'rearAnklePlantarflexion', maxDeg: 5, reason: 'old injury' }],
    });
    const report = evaluateFit(exampleFit([exampleSeat({ athlete })]));
    const ankle = report.findings.find((f) => f.quantity === 'rearAnkle')!;
    expect(ankle.severity).toBe('stop');
    expect(ankle.band.reason).toBe('old injury');
  });

  it('a joint that its paddler can hold within a personal limit is held there, and its doubt is told', () => {
    const athlete = exampleAthlete({
      limits: [{ joint: 'frontKneeFlexion', maxDeg: 45, reason: 'old injury' }],
    });
    const report = evaluateFit(exampleFit([exampleSeat({ athlete })]));
    const knee = report.findings.find((f) => f.quantity === 'frontKnee')!;
    expect((knee.value * 180) / Math.PI).toBeGreaterThan(135);
    expect(['good', 'check']).toContain(knee.severity);
    expect(knee.band.stopMin).toBeCloseTo((135 * Math.PI) / 180, 12);
  });

  it('a band set by the coach replaces the usual one, with its reason', () => {
    const bands = [{ quantity: 'padAft', min: 0.1, max: 0.14, reason: 'short boat' }];
    const report = evaluateFit(exampleFit([exampleSeat({ bands })]));
    const pad = report.findings.find((f) => f.quantity === 'padAft')!;
    expect(pad.band).toMatchObject({ min: 0.1, max: 0.14, source: "coach's own", reason: 'short boat' });
    expect(pad.severity).toBe('change');
  });
});

describe('a strap that holds the rear foot', () => {
  it.each(['fixed', 'releases'] as const)('that is %s: nobody may be tied into a boat', (strap) => {
    const { rearRest } = exampleSeat();
    const { findings } = evaluateFit(exampleFit([exampleSeat({ rearRest: { ...rearRest, strap } })]));
    const { severity } = findings.find(({ quantity }) => quantity === 'strapReleases')!;
    expect(severity).toBe(strap === 'fixed' ? 'stop' : 'good');
  });
});

describe('judgedHolding', () => {
  const evaluator = createEvaluator();
  const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
  it.each([
    ['single', exampleFit()],
    ['pair', crew],
    [
      'a leg that does not reach',
      exampleFit([exampleSeat({ frontFoot: { ...exampleSeat().frontFoot, forwardM: 0.9 } })]),
    ],
    ['pins', exampleFit([exampleSeat({ pins: { trunkPitchDeg: 20, thighRollDeg: 4 } })])],
    ['heel', { ...exampleFit(), heelDeg: 3 }],
  ])('has the values that evaluateHolding judges by: %s', (_, fit) => {
    const held = evaluator.evaluate(fit);
    for (const coordinate of ['kneePad.aftM', 'rearRest.outM', 'frontFoot.forwardM'] as const) {
      const to = coordinateOf(fit.seats[0]!, coordinate) + 0.03;
      const moved = withCoordinate(fit, { seat: 0, coordinate }, to);
      const { findings, quantities } = evaluator.evaluateHolding(moved, held);
      const judged = evaluator.judgedHolding(moved, held);
      expect(findings.length).toBeGreaterThan(20);
      for (const { id, quantity, seat } of findings) {
        const whole = quantities.find((q) => q.id === quantity && q.seat === seat)!;
        const found = judged.get(id)!;
        const held = quantity.endsWith('Share') ? Math.max(0, found) : found;
        expect(held, id).toBeCloseTo(judgedOf(whole).value, 9);
      }
    }
  });
});
