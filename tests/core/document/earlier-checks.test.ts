import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { withFloatCheck } from '../../../core/document/earlier-checks.ts';
import type { FloatCheck } from '../../../core/document/hull-kinds-schema.ts';
import { exampleBoat } from '../example/example-fit.ts';

const check = (takenOn: string): FloatCheck => ({
  bowMarkXM: 2,
  sternMarkXM: -2,
  alone: { bowM: 0.22, sternM: 0.22 },
  loaded: { bowM: 0.15, sternM: 0.15, massKg: 40, atXM: 0 },
  takenOn,
});
const correction = { fullness: 0.02, foreAftFullness: 0, residualM: 0.001 };

describe('a boat’s float checks', () => {
  const first = withFloatCheck(exampleBoat(), { floatCheck: check('2026-03-01'), correction });

  it('begin with one and nothing earlier', () => {
    expect(first).toEqual({ ...exampleBoat(), floatCheck: check('2026-03-01'), correction });
  });

  it('keep the one before with what it made of the hull, newest first', () => {
    const other = { ...correction, fullness: 0.03 };
    const second = withFloatCheck(first, { floatCheck: check('2026-05-01'), correction: other });
    const taken = withFloatCheck(second, { floatCheck: null, correction: null });
    expect(second.earlierFloatChecks).toEqual([{ check: check('2026-03-01'), correction }]);
    expect(taken.floatCheck).toBeNull();
    expect(taken.earlierFloatChecks?.map((one) => one.check.takenOn)).toEqual(['2026-05-01', '2026-03-01']);
    expect(boatSchema.parse(taken)).toEqual(taken);
  });

  it('replace a check by itself worked out anew', () => {
    const again = withFloatCheck(first, { floatCheck: check('2026-03-01'), correction: null });
    expect(again.earlierFloatChecks).toBeUndefined();
    expect(again.correction).toBeNull();
  });

  it('let the oldest go when there are very many', () => {
    let boat = first;
    for (let day = 1; day <= 70; day++) {
      boat = withFloatCheck(boat, {
        floatCheck: { ...check('2026-06-01'), bowMarkXM: 1 + day / 100 },
        correction,
      });
    }
    expect(boatSchema.safeParse(boat).success).toBe(true);
    expect(boat.earlierFloatChecks).toHaveLength(50);
    expect(boat.earlierFloatChecks?.[0]?.check.bowMarkXM).toBeCloseTo(1.69, 9);
  });
});
