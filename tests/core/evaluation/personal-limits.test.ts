import { describe, expect, it } from 'vitest';
import type { LimitedJoint } from '../../../core/document/athlete-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { judge } from '../../../core/evaluation/judge.ts';
import { withPersonalLimits } from '../../../core/evaluation/personal-limits.ts';
import { findQuantity } from '../../../core/evaluation/quantities.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const limited = (joint: LimitedJoint, maxDeg: number, stroke: Seat['stroke'] = {}): Seat => {
  const seat = exampleSeat();
  const athlete = { ...seat.athlete!, limits: [{ joint, maxDeg, reason: 'invented' }] };
  return { ...seat, athlete, stroke };
};
const evaluator = createEvaluator();
const degrees = (radians: number) => (radians * 180) / Math.PI;

describe('a band that a personal limit narrows', () => {
  const JOINTS: readonly LimitedJoint[] = [
    'kneelingKneeFlexion',
    'frontKneeFlexion',
    'kneelingHipExtension',
    'frontHipFlexion',
    'rearAnklePlantarflexion',
    'frontAnkleDorsiflexion',
    'trunkForward',
  ];
  const bandsOf = (seat: Seat) => BANDS.map((rule) => withPersonalLimits({ ...rule, reason: '' }, seat));

  it.each(JOINTS)('by %s is never empty, and 20° wide at least', (joint) => {
    for (let maxDeg = -30; maxDeg <= 150; maxDeg += 5) {
      const own = bandsOf(limited(joint, maxDeg)).filter(({ sourceKey }) => sourceKey === 'personal-limit');
      for (const { min, max } of own) {
        if (min === null || max === null) continue;
        expect(degrees(max - min), `${joint} ${maxDeg}°`).toBeGreaterThan(19.999);
      }
    }
  });

  // Motion from the neutral position (neutral-zero method, common practice): a straight limb is 180° between its bones, an ankle 90°.
  it.each([
    ['kneelingKneeFlexion', 50, 'kneelingKnee', 'min', 130],
    ['frontKneeFlexion', 50, 'frontKnee', 'min', 130],
    ['kneelingHipExtension', -15, 'kneelingHip', 'max', 165],
    ['frontHipFlexion', 60, 'frontHip', 'min', 120],
    ['rearAnklePlantarflexion', 20, 'rearAnkle', 'max', 110],
    ['frontAnkleDorsiflexion', 2, 'frontAnkle', 'min', 88],
    ['trunkForward', 8, 'trunkPitch', 'max', 8],
  ] as const)('by %s of %i° has its edge there: %s %s %i°', (joint, maxDeg, quantity, edge, wanted) => {
    const own = bandsOf(limited(joint, maxDeg)).find((band) => band.quantity === quantity)!;
    expect(own.sourceKey).toBe('personal-limit');
    expect(degrees(own[edge]!)).toBeCloseTo(wanted, 9);
  });

  it('of a knee that may hardly bend asks for that knee, not for the usual one', () => {
    const knee = bandsOf(limited('kneelingKneeFlexion', 45)).find(
      ({ quantity }) => quantity === 'kneelingKnee',
    )!;
    expect([degrees(knee.min!), degrees(knee.max!)]).toEqual([
      expect.closeTo(135, 9),
      expect.closeTo(155, 9),
    ]);
    expect(knee.stopMin).toBe(knee.min);
  });

  it('sideways holds both ways', () => {
    const roll = bandsOf(limited('trunkSideways', 3)).find(({ quantity }) => quantity === 'trunkRoll')!;
    expect(degrees(roll.min!)).toBeCloseTo(-3, 9);
    expect(degrees(roll.max!)).toBeCloseTo(3, 9);
    expect(degrees(roll.stopMin!)).toBeCloseTo(-3, 9);
  });

  it('keeps its usual edges where the limit allows more', () => {
    expect(bandsOf(limited('kneelingKneeFlexion', 145))).toEqual(
      BANDS.map((rule) => ({ ...rule, reason: '' })),
    );
  });
});

describe('a personal limit outside the usual band', () => {
  // Flexion of 100° is 80° between the bones: less than the usual 110°, more than anybody's least.
  const knee = (limits: { joint: LimitedJoint; maxDeg: number }[]) => {
    const seat = exampleSeat();
    const athlete = { ...seat.athlete!, limits: limits.map((limit) => ({ ...limit, reason: 'invented' })) };
    return (deg: number) =>
      judge(exampleFit([{ ...seat, athlete }]), [
        { id: 'frontKnee', seat: 0, value: (deg * Math.PI) / 180, sd: 0.01, unit: 'rad' },
      ])[0]!;
  };

  it('stops what passes it, and the band stays as it is', () => {
    const judged = knee([{ joint: 'frontKneeFlexion', maxDeg: 100 }]);
    const [past, within] = [judged(79), judged(81)];
    expect([past.severity, past.band.sourceKey, past.band.reason]).toEqual([
      'stop',
      'personal-limit',
      'invented',
    ]);
    expect([within.severity, within.band.sourceKey, within.band.reason]).toEqual(['change', 'frontKnee', '']);
    for (const { band } of [past, within]) expect(degrees(band.min!)).toBeCloseTo(110, 9);
    expect(knee([])(79).severity).toBe('change');
  });

  it('sideways stops a lean to either side and leaves the usual edges', () => {
    const rolls = BANDS.find(({ quantity }) => quantity === 'trunkRoll')!;
    const own = withPersonalLimits({ ...rolls, reason: '' }, limited('trunkSideways', 10));
    expect([own.min, own.max].map((edge) => degrees(edge!))).toEqual([0, expect.closeTo(6, 9)]);
    expect([own.stopMin, own.stopMax].map((edge) => degrees(edge!))).toEqual([
      expect.closeTo(-10, 9),
      expect.closeTo(10, 9),
    ]);
  });
});

describe('a limit on the trunk', () => {
  const report = (seat: Seat) => evaluator.evaluate(exampleFit([seat]));
  const lean = (seat: Seat) => report(seat).findings.find(({ quantity }) => quantity === 'strokeLean');

  it('holds the usual lean of catch, exit and drive: the bow at the catch answers', () => {
    const [free, held] = [report(exampleSeat()), report(limited('trunkForward', 10))];
    const at = ({ quantities }: typeof free) => degrees(findQuantity(quantities, 'strokeLean', 0)!.value);
    expect(at(free)).toBeCloseTo(38, 9);
    expect(at(held)).toBeCloseTo(10, 9);
    const bow = ({ quantities }: typeof free) => findQuantity(quantities, 'trimCatch', null)!.value;
    expect(bow(held)).toBeGreaterThan(bow(free) + 0.005);
  });

  it('is no finding while it is kept, and none without a limit', () => {
    expect(lean(exampleSeat())).toBeUndefined();
    expect(lean(limited('trunkForward', 25))?.severity).toBe('good');
  });

  it.each([{ catchPitchDeg: 40 }, { exitPitchDeg: 30 }])(
    'says stop where the stroke is set past it: %o',
    (stroke) => {
      expect(lean(limited('trunkForward', 25, stroke))?.severity).toBe('stop');
      expect(lean(limited('trunkForward', 45, stroke))?.severity).toBe('good');
    },
  );
});
