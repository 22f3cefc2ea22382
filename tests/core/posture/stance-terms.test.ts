import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { contactsOf, lengthsOf } from '../../../core/posture/contacts.ts';
import { jointLimits } from '../../../core/posture/joint-limits.ts';
import { LIMIT_TOLERANCE, NEUTRAL, REACH_TOLERANCE } from '../../../core/posture/neutral-posture.ts';
import {
  MEASURES,
  type Measure,
  residualOf,
  STANCE_TERMS,
  type StanceTermName,
  stanceTerms,
} from '../../../core/posture/stance-terms.ts';
import { exampleSeat } from '../example/example-fit.ts';

const lengths = lengthsOf(estimateBody({ stature: 1.8, mass: 80, sex: 'male' }));
const seat = exampleSeat();
const contacts = contactsOf(seat, lengths, 1.8);
const termsOf = (size: number) => stanceTerms(lengths, contacts, { limits: jointLimits(seat), size });
const terms = termsOf(1);
const term = (name: StanceTermName) => terms[STANCE_TERMS.indexOf(name)]!;
const deg = (angle: number) => (angle * Math.PI) / 180;

describe('residualOf', () => {
  const of = (sense: 'near' | 'most' | 'least' | 'within') => ({ measure: 0, sense, at: 2, tolerance: 0.5 });

  it.each([
    ['near', 3, 2],
    ['near', 1, -2],
    ['most', 3, 2],
    ['most', 1, 0],
    ['least', 1, -2],
    ['least', 3, 0],
    ['within', 3, 2],
    ['within', -3, -2],
    ['within', 1.9, 0],
    ['within', -1.9, 0],
  ] as const)('%s 2: a value of %f is off by %f tolerances', (sense, value, expected) => {
    expect(residualOf(of(sense), value)).toBeCloseTo(expected, 12);
  });

  it.each(['near', 'most', 'least', 'within'] as const)('%s has no jump at its edge', (sense) => {
    for (const edge of [2, -2]) {
      const [less, more] = [edge - 1e-9, edge + 1e-9].map((v) => residualOf(of(sense), v));
      expect(Math.abs(more! - less!)).toBeLessThan(1e-8);
    }
  });
});

describe('stanceTerms', () => {
  it('gives one term for every name, each on a measure there is, with a tolerance', () => {
    expect(terms).toHaveLength(STANCE_TERMS.length);
    for (const { measure, tolerance, at } of terms) {
      expect(MEASURES[measure]).toBeDefined();
      expect(tolerance).toBeGreaterThan(0);
      expect(Number.isFinite(at)).toBe(true);
    }
  });

  it('costs nothing at the neutral posture, and one unit one tolerance off', () => {
    for (const name of [
      'kneelingHip',
      'trunkPitch',
      'trunkRoll',
      'pelvisYaw',
      'thighPitch',
      'thighRoll',
    ] as const) {
      const { at, tolerance } = NEUTRAL[name];
      expect(MEASURES[term(name).measure]).toBe(name satisfies Measure);
      expect(residualOf(term(name), at)).toBe(0);
      expect(residualOf(term(name), at + tolerance)).toBeCloseTo(1, 12);
    }
  });

  it('lays the front knee on the distance from hip to ankle: 118° costs nothing, 11° off about one', () => {
    const apart = (angle: number) =>
      Math.sqrt(
        lengths.thigh ** 2 + lengths.shank ** 2 - 2 * lengths.thigh * lengths.shank * Math.cos(deg(angle)),
      );
    expect(residualOf(term('frontKnee'), apart(118))).toBeCloseTo(0, 9);
    expect(residualOf(term('frontKnee'), apart(107))).toBeCloseTo(-1, 0);
    expect(residualOf(term('frontKnee'), apart(129))).toBeCloseTo(1, 0);
  });

  it('keeps growing when the front leg is asked past straight, where an angle would turn back', () => {
    const whole = lengths.thigh + lengths.shank;
    const residual = (apart: number) => residualOf(term('frontKnee'), apart);
    expect(residual(whole + 0.1)).toBeGreaterThan(residual(whole));
    expect(residualOf(term('frontReach'), whole)).toBe(0);
    expect(residualOf(term('frontReach'), whole + 2 * REACH_TOLERANCE)).toBeCloseTo(2, 9);
  });

  it('takes the kneeling knee’s limit on its cosine: 38° is free, 2.5° more bent costs one', () => {
    const bent = (angle: number) => residualOf(term('kneelingKneeLimit'), Math.cos(deg(angle)));
    expect(bent(60)).toBe(0);
    expect(bent(38)).toBeCloseTo(0, 9);
    expect(bent(35.5)).toBeCloseTo(1, 1);
    expect(LIMIT_TOLERANCE).toBeCloseTo(deg(2.5), 12);
  });

  it('wants the centre of mass a share of the way from knee to front ball', () => {
    const { at, tolerance } = term('balanceFore');
    const share = (at - contacts.knee.x) / (contacts.frontBall.x - contacts.knee.x);
    expect(share).toBeCloseTo(NEUTRAL.balanceFore.at, 12);
    expect(tolerance).toBe(NEUTRAL.balanceFore.tolerance);
  });

  it('lets tolerances in metres grow with the body, and no others', () => {
    const twice = termsOf(2);
    STANCE_TERMS.forEach((name, i) => {
      const grows = ['balanceAcross', 'balanceFore', 'frontReach'].includes(name);
      expect(twice[i]!.tolerance / terms[i]!.tolerance, name).toBeCloseTo(grows ? 2 : 1, 12);
      expect(twice[i]!.at).toBe(terms[i]!.at);
    });
  });
});
