import { describe, expect, it } from 'vitest';
import type { Athlete } from '../../../core/document/athlete-schema.ts';
import { LIMITED_JOINTS } from '../../../core/document/athlete-schema.ts';
import { jointLimits } from '../../../core/posture/joint-limits.ts';
import { LIMIT_TOLERANCE, LIMITS } from '../../../core/posture/neutral-posture.ts';
import { exampleAthlete } from '../example/example-fit.ts';

const deg = (r: number) => (r * 180) / Math.PI;

/** What anatomy allows, each with its own spring. */
const USUAL: Record<string, unknown> = Object.fromEntries(
  Object.entries(LIMITS).map(([name, at]) => [name, { at, tolerance: LIMIT_TOLERANCE }]),
);

function limitsWith(...limits: Athlete['limits']) {
  return jointLimits({ athlete: { ...exampleAthlete(), limits } });
}
const limit = (joint: (typeof LIMITED_JOINTS)[number], maxDeg: number) => ({ joint, maxDeg, reason: 'sore' });

describe('jointLimits', () => {
  it('are the usual ones for somebody without limits of their own, and for an empty seat', () => {
    expect(limitsWith()).toEqual(USUAL);
    expect(jointLimits({ athlete: null })).toEqual(USUAL);
  });

  it.each([
    ['kneelingKneeFlexion', 100, 'kneelingKneeLeast', 80],
    ['frontKneeFlexion', 90, 'frontKneeLeast', 90],
    ['kneelingHipExtension', 5, 'kneelingHipMost', 185],
    ['frontHipFlexion', 80, 'frontHipLeast', 100],
    ['frontAnkleDorsiflexion', 5, 'frontAnkleLeast', 85],
    ['trunkForward', 30, 'trunkPitchMost', 30],
    ['trunkSideways', 10, 'trunkRollMost', 10],
  ] as const)(
    '%s of at most %i° narrows %s: held from a degree inside %i°, firmly',
    (joint, maxDeg, name, expected) => {
      const limits = limitsWith(limit(joint, maxDeg));
      const inside = name.endsWith('Most') ? expected - 1 : expected + 1;
      expect(deg(limits[name].at)).toBeCloseTo(inside, 9);
      expect(deg(limits[name].tolerance)).toBeCloseTo(0.5, 9);
      const { [name]: _, ...others } = limits;
      const { [name]: __, ...usual } = USUAL;
      expect(others).toEqual(usual);
    },
  );

  it('never widen what anatomy allows', () => {
    const supple = LIMITED_JOINTS.map((joint) => limit(joint, 170));
    const limits = limitsWith(...supple);
    for (const name of ['kneelingKneeLeast', 'frontKneeLeast', 'frontHipLeast', 'frontAnkleLeast'] as const) {
      expect(limits[name].at).toBeGreaterThanOrEqual(LIMITS[name]);
    }
    for (const name of ['kneelingHipMost', 'trunkPitchMost', 'trunkRollMost'] as const) {
      expect(limits[name].at).toBeLessThanOrEqual(LIMITS[name]);
    }
  });

  it('take the narrowest of several for one joint', () => {
    const limits = limitsWith(
      limit('trunkForward', 40),
      limit('trunkForward', 20),
      limit('trunkForward', 60),
    );
    expect(deg(limits.trunkPitchMost.at)).toBeCloseTo(19, 9);
  });

  it('leave the rear ankle to the fittings, which hold it', () => {
    expect(limitsWith(limit('rearAnklePlantarflexion', 20))).toEqual(USUAL);
  });
});

// AAOS handbook (hip 30° of extension at most, 120° of flexion, knee 135°, trunk 80° forward, 35° sideways, 45° turned) and Soucie
// et al. 2011 (knee 142°, ankle 17° up), both from memory. Neutral-zero method: a straight limb is 180°, an ankle 90°.
it('anatomy’s limits are the published ranges of motion', () => {
  const { kneelingHipMost, ...others } = Object.fromEntries(
    Object.entries(LIMITS).map(([name, at]) => [name, Math.round(deg(at))]),
  );
  expect(kneelingHipMost).toBeGreaterThanOrEqual(180 + 20);
  expect(kneelingHipMost).toBeLessThanOrEqual(180 + 30);
  expect(others).toEqual({
    frontHipLeast: 180 - 120,
    frontKneeLeast: 180 - 135,
    kneelingKneeLeast: 180 - 142,
    frontAnkleLeast: 90 - 17,
    trunkPitchMost: 80,
    trunkRollMost: 35,
    pelvisYawMost: 45,
    // Our own estimate.
    thighMost: 40,
  });
});
