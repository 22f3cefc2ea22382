import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squareRootOf } from '../../../core/body/covariance-root.ts';

function summed(columns: readonly (readonly number[])[]): number[][] {
  const n = columns.length;
  return Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => columns.reduce((sum, c) => sum + c[i]! * c[j]!, 0)),
  );
}

describe('squareRootOf', () => {
  it('gives standard deviations for a diagonal matrix', () => {
    expect(
      squareRootOf([
        [4, 0],
        [0, 9],
      ]),
    ).toEqual([
      [2, 0],
      [0, 3],
    ]);
  });

  it('rebuilds any covariance from its columns, a singular one too', () => {
    const number = fc.double({ min: -2, max: 2, noNaN: true });
    const factor = fc.array(fc.array(number, { minLength: 4, maxLength: 4 }), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(factor, (rows) => {
        const covariance = summed(
          rows.length >= 4 ? rows.slice(0, 4) : [...rows, ...new Array(4 - rows.length).fill([0, 0, 0, 0])],
        );
        const rebuilt = summed(squareRootOf(covariance));
        const size = Math.max(1e-6, ...covariance.map((row, i) => row[i]!));
        covariance.forEach((row, i) => {
          row.forEach((value, j) => {
            expect(Math.abs(rebuilt[i]![j]! - value)).toBeLessThan(1e-5 * size);
          });
        });
      }),
      { seed: 11 },
    );
  });
});
