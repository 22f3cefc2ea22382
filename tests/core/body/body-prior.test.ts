import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS } from '../../../core/body/body.ts';
import { BODY_VALUES, bodyPrior, lengthIndex, tapeIndex } from '../../../core/body/body-prior.ts';
import { squareRootOf } from '../../../core/body/covariance-root.ts';

const INPUT = { stature: 1.72, statureSd: 0.006, mass: 70, massSd: 0.7, ageYears: null, spread: 1 } as const;

describe('joint spread of a body', () => {
  it('keeps lengths first, tapes after', () => {
    expect(BODY_VALUES.slice(0, BODY_LENGTHS.length)).toEqual([...BODY_LENGTHS]);
    expect(BODY_VALUES[lengthIndex('trunk')]).toBe('trunk');
    expect(BODY_VALUES[tapeIndex('armSpan')]).toBe('armSpan');
    // Fourteen lengths and twelve tapes, no name twice but the foot's length, which is both.
    expect(BODY_VALUES).toHaveLength(14 + 12);
    expect(new Set(BODY_VALUES).size).toBe(14 + 12 - 1);
  });

  it.each(['female', 'male', 'unspecified'] as const)(
    'is symmetric and positive semidefinite (%s)',
    (sex) => {
      const { covariance } = bodyPrior({ ...INPUT, sex });
      for (const [i, row] of covariance.entries()) {
        for (const [j, value] of row.entries()) expect(value).toBeCloseTo(covariance[j]![i]!, 15);
      }
      // A root that squares back to the matrix exists only for a semidefinite one.
      const columns = squareRootOf(covariance);
      for (const [i, row] of covariance.entries()) {
        for (const [j, value] of row.entries()) {
          const rebuilt = columns.reduce((sum, column) => sum + column[i]! * column[j]!, 0);
          expect(Math.abs(rebuilt - value)).toBeLessThan(1e-9);
        }
      }
    },
  );

  it('is the even mixture of both tables with the sex unspecified', () => {
    const [female, male, both] = (['female', 'male', 'unspecified'] as const).map((sex) =>
      bodyPrior({ ...INPUT, sex }),
    );
    const i = lengthIndex('shoulderSeparation');
    expect(both!.mean[i]).toBeCloseTo((female!.mean[i]! + male!.mean[i]!) / 2, 12);
    const between = ((male!.mean[i]! - female!.mean[i]!) / 2) ** 2;
    const within = (female!.covariance[i]![i]! + male!.covariance[i]![i]!) / 2;
    expect(both!.covariance[i]![i]).toBeCloseTo(within + between, 12);
  });

  it('is vaguer for a vaguer stature', () => {
    const i = lengthIndex('shank');
    const [sure, vague] = [0.002, 0.03].map((statureSd) => bodyPrior({ ...INPUT, statureSd, sex: 'male' }));
    // At one mass the shank grows 0.335 − 0.031 m per metre of stature.
    expect(vague!.covariance[i]![i]! - sure!.covariance[i]![i]!).toBeCloseTo(
      0.3042 ** 2 * (0.03 ** 2 - 0.002 ** 2),
      6,
    );
  });

  it('is vaguer with the mass unknown, most of all at the knee', () => {
    const i = lengthIndex('kneeRadius');
    const [weighed, not] = [70, null].map((mass) => bodyPrior({ ...INPUT, mass, sex: 'male' }));
    expect(Math.sqrt(not!.covariance[i]![i]!)).toBeGreaterThan(1.05 * Math.sqrt(weighed!.covariance[i]![i]!));
  });
});
