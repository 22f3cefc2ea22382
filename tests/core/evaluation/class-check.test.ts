import { describe, expect, it } from 'vitest';
import { classCheck } from '../../../core/evaluation/class-check.ts';
import { CLASS_LIMITS } from '../../../core/evaluation/class-limits.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { exampleBoat, exampleFit } from '../example/example-fit.ts';

const single = (massKg: number, lengthM = 5.2) => {
  const boat = exampleBoat(1);
  if (boat.hull.kind !== 'tape') throw new Error('the example is by tape');
  return { ...boat, boatClass: 'C1' as const, massKg, hull: { ...boat.hull, lengthM } };
};

describe('the check of a boat’s class', () => {
  it('is none for a boat of no class', () => {
    expect(classCheck(exampleBoat(1))).toEqual([]);
  });

  it('holds length and mass against the class, by how much', () => {
    expect(classCheck(single(13.8, 5.3))).toMatchObject([
      { rule: 'greatest-length', value: 5.3, limit: 5.2, kept: false },
      { rule: 'least-mass', value: 13.8, limit: 14, kept: false },
    ]);
    const [length, mass] = classCheck(single(13.8, 5.3));
    expect(length?.within).toBeCloseTo(-0.1, 12);
    expect(mass?.within).toBeCloseTo(-0.2, 12);
  });

  it('counts what stands on the limit as kept', () => {
    expect(classCheck(single(14, 5.2)).every(({ kept }) => kept)).toBe(true);
    expect(classCheck(single(14, 5.2004))[0]?.kept).toBe(true);
    expect(classCheck(single(14, 5.201))[0]?.kept).toBe(false);
  });

  it.each(['C1', 'C2', 'C4'] as const)('has limits of %s that allow a boat at all', (boatClass) => {
    const { greatestLengthM, leastMassKg } = CLASS_LIMITS[boatClass];
    const boat = { ...single(leastMassKg, greatestLengthM), boatClass };
    expect(classCheck(boat).map(({ kept }) => kept)).toEqual([true, true]);
  });

  it('agrees with what the bench finds of the same boat', () => {
    const fit = { ...exampleFit(), boat: single(13.8) };
    const finding = evaluateFit(fit).findings.find(({ quantity }) => quantity === 'boatMass');
    expect(finding?.severity).not.toBe('good');
    expect(classCheck(fit.boat)[1]?.kept).toBe(false);
  });
});
