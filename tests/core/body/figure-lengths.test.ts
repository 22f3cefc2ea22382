import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS } from '../../../core/body/body.ts';
import { figureLengths } from '../../../core/body/figure-lengths.ts';
import { TROCHANTERION_FELT_SD, withoutPalpation } from '../../../core/body/joint-centres.ts';
import { PERSON_MEASURES } from '../../../core/body/person-measures.ts';
import { SEXES } from '../../../core/body/sex.ts';
import { surveyPerson } from '../../../core/body/survey-person.ts';
import { combine, covarianceOf, varianceOf } from '../../../core/body/uncertain.ts';

// The survey's mean man of 85.5 kg.
const EXACT = { statureSd: 0, massSd: 0, spread: 1, ageYears: null } as const;
const MAN = surveyPerson({ ...EXACT, stature: 1.7562, mass: 85.52 }, 'male');

describe('corrections', () => {
  it.each(SEXES)('the hip loses what was palpation, keeps what it shares with the rest (%s)', (sex) => {
    const person = surveyPerson({ ...EXACT, stature: 1.7, mass: 70 }, sex);
    const hip = withoutPalpation(person.trochanterionHeight);
    const felt = varianceOf(person.trochanterionHeight) - varianceOf(hip);
    expect(Math.sqrt(felt)).toBeCloseTo(TROCHANTERION_FELT_SD, 9);
    for (const measure of PERSON_MEASURES) {
      if (measure === 'trochanterionHeight') continue;
      const before = covarianceOf(person.trochanterionHeight, person[measure]);
      expect(covarianceOf(hip, person[measure])).toBeCloseTo(before, 12);
    }
  });
});

describe('the figure’s lengths', () => {
  const lengths = figureLengths(MAN);

  it('names every length', () => {
    expect(Object.keys(lengths).sort()).toEqual([...BODY_LENGTHS].sort());
  });

  // The survey's mean man, 1756.2 mm, so 1.0331 times the person that corrections are stated for: each by hand.
  const size = 1.0331;
  it.each([
    ['thigh', 900.9 + 18 * size - 491.7],
    ['shank', 491.7 - 72.9],
    ['ankleHeight', 72.9],
    ['trunk', 1440.7 - 0.104 * 335.2 - 900.9 - 18 * size],
    ['headNeck', 1756.2 - 1440.7 + 0.104 * 335.2],
    ['footLength', 271.2],
    ['heelToBall', 200.9],
    ['heelToAnkle', 0.24 * 271.2],
    ['hipSeparation', 175.6],
    ['shoulderSeparation', 415.7 - 30 * size],
    ['upperArm', (1 - 0.104 - 0.043) * 335.2],
    ['forearm', 267.9 + 0.043 * 335.2 - 10 * size],
    ['hand', 349.0 - 18 * size - (267.9 + 0.043 * 335.2 - 10 * size)],
    ['kneeRadius', 115.03 / 2],
  ] as const)('%s of the mean man by hand', (name, mm) => {
    expect(Math.abs(lengths[name].mean * 1000 - mm)).toBeLessThan(0.2);
  });

  it('adds up to the stature without any doubt left, whatever the doubts of its parts', () => {
    const sum = combine(
      (['ankleHeight', 'shank', 'thigh', 'trunk', 'headNeck'] as const).map((n) => [1, lengths[n]] as const),
    );
    expect(sum.mean).toBeCloseTo(1.7562, 12);
    expect(varianceOf(sum)).toBeCloseTo(0, 15);
  });

  it('knows the reach from elbow to grip better than forearm or hand', () => {
    const reach = combine([
      [1, lengths.forearm],
      [1, lengths.hand],
    ]);
    expect(varianceOf(reach)).toBeLessThan(varianceOf(lengths.forearm) + varianceOf(lengths.hand));
    expect(reach.mean).toBeCloseTo(0.349 - 0.0186, 3);
  });

  it('makes a long thigh a short trunk: they share the hip', () => {
    expect(covarianceOf(lengths.thigh, lengths.trunk)).toBeLessThan(0);
  });

  // De Leva 1996 table 4, lengths of his mean man over his stature (281.7, 268.9 of 1741 mm).
  it('has arms of the proportions that de Leva found between joint centres', () => {
    expect(lengths.upperArm.mean / 1.7562).toBeCloseTo(0.1618, 2);
    expect(lengths.forearm.mean / 1.7562).toBeCloseTo(0.1545, 2);
  });
});
