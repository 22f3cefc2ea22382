import { describe, expect, it } from 'vitest';
import { figureLengths } from '../../../core/body/figure-lengths.ts';
import { surveyPerson } from '../../../core/body/survey-person.ts';
import { tapeModels } from '../../../core/body/tape-models.ts';
import { TAPE_SD } from '../../../core/body/tape-sd.ts';
import { covarianceOf, varianceOf } from '../../../core/body/uncertain.ts';
import { TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';

const person = surveyPerson(
  { stature: 1.7562, statureSd: 0, mass: 85.52, massSd: 0, spread: 1, ageYears: null },
  'male',
);
const lengths = figureLengths(person);
const tapes = tapeModels(person, lengths);

describe('what a perfect tape would read', () => {
  it('covers every tape measure, and each has a usual error', () => {
    expect(Object.keys(tapes).sort()).toEqual([...TAPE_MEASURES].sort());
    for (const measure of TAPE_MEASURES) {
      expect(TAPE_SD[measure]).toBeGreaterThan(0.001);
      expect(TAPE_SD[measure]).toBeLessThan(0.02);
      expect(Math.sqrt(varianceOf(tapes[measure]))).toBeGreaterThan(0.005);
    }
  });

  // Means of the survey's men, millimetres.
  it.each([
    ['kneeHeightSitting', 554.2],
    ['buttockKneeLength', 618.0],
    ['shoulderHeight', 1440.7],
    ['armSpan', 1814.2],
    ['footLength', 271.2],
    ['crotchHeight', 845.9],
    ['tibialHeight', 468.2],
    ['poplitealHeight', 429.8],
    ['sittingHeight', 918.3],
    ['biacromialBreadth', 415.7],
  ] as const)('%s is the survey’s own column', (measure, mm) => {
    expect(tapes[measure].mean * 1000).toBeCloseTo(mm, 0);
  });

  it('kneeling height is knee radius, thigh, trunk, head and neck in a row', () => {
    const row = (['kneeRadius', 'thigh', 'trunk', 'headNeck'] as const).map((name) => lengths[name].mean);
    expect(tapes.kneelingHeight.mean).toBeCloseTo(
      row.reduce((a, b) => a + b),
      12,
    );
    // Stature less the lower leg plus the knee: the survey's stature less epicondyle height is 1264.6 mm.
    expect(tapes.kneelingHeight.mean).toBeCloseTo(1.2646 + 0.0575, 3);
  });

  it('knee to hip is the thigh to the felt point, from a little in front of the joint', () => {
    expect(tapes.kneeToHipLength.mean - lengths.thigh.mean).toBeCloseTo(0.3 * 0.115 - 0.0186, 3);
  });

  it.each([
    ['kneeHeightSitting', 'shank', 1],
    ['crotchHeight', 'thigh', 1],
    ['sittingHeight', 'thigh', -1],
    ['sittingHeight', 'trunk', 1],
    ['buttockKneeLength', 'thigh', 1],
    ['kneelingHeight', 'shank', -1],
    ['shoulderHeight', 'headNeck', -1],
    ['armSpan', 'upperArm', 1],
    ['armSpan', 'forearm', 1],
    ['kneeToHipLength', 'thigh', 1],
    ['footLength', 'heelToBall', 1],
    ['biacromialBreadth', 'shoulderSeparation', 1],
  ] as const)('%s goes with %s, sign %d, at equal stature', (measure, length, sign) => {
    const correlation =
      covarianceOf(tapes[measure], lengths[length]) /
      Math.sqrt(varianceOf(tapes[measure]) * varianceOf(lengths[length]));
    expect(sign * correlation).toBeGreaterThan(0.2);
  });
});
