import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LeastSquares, minimise, STEP_TOLERANCE } from '../../../core/posture/minimise.ts';
import { normalEquations } from '../../../core/posture/normal-equations.ts';
import { cases } from '../../cases.ts';

type Row = (q: readonly number[]) => number;

/** A problem from its residuals, with slopes by central differences, so that no derivative is written twice. */
function problemOf(rows: readonly Row[]): LeastSquares {
  let at: number[] = [];
  return {
    terms: rows.length,
    residualsAt(q, into) {
      at = [...q];
      rows.forEach((row, i) => {
        into[i] = row(at);
      });
    },
    equationsThere(into, residuals) {
      const h = 1e-6;
      const slopes = new Float64Array(at.length * rows.length);
      at.forEach((_, k) => {
        const moved = (by: number) => at.map((v, i) => (i === k ? v + by : v));
        rows.forEach((row, i) => {
          slopes[k * rows.length + i] = (row(moved(h)) - row(moved(-h))) / (2 * h);
        });
      });
      normalEquations(into, { slopes, residuals });
    },
  };
}

const solve = (rows: readonly Row[], start: readonly number[], free = start.map(() => true)) =>
  minimise(problemOf(rows), { start, free });

describe('minimise', () => {
  it('keeps what it found when another search follows, and searches within a search', () => {
    const line: Row[] = [([x]) => x! - 0.3, ([x]) => 2 * (x! - 0.3)];
    const first = solve(line, [0]);
    const within = solve([([x]) => x! - solve(line, [0.1]).q[0]!, () => 0], [1]);
    expect([first.q[0], within.q[0]]).toEqual([expect.closeTo(0.3, 9), expect.closeTo(0.3, 9)]);
  });

  it('solves a linear problem at once: the line through three points by hand', () => {
    // y = a + b·x through (0, 0.1), (1, 0.3), (2, 0.35): b = 0.125, a = 0.125.
    const points = [
      [0, 0.1],
      [1, 0.3],
      [2, 0.35],
    ] as const;
    const { q, iterations, converged } = solve(
      points.map(
        ([x, y]) =>
          ([a, b]) =>
            a! + b! * x - y,
      ),
      [0, 0],
    );
    expect(q[0]).toBeCloseTo(0.125, 9);
    expect(q[1]).toBeCloseTo(0.125, 9);
    expect(converged).toBe(true);
    expect(iterations).toBeLessThan(6);
  });

  it('finds the bottom of a bent valley (Rosenbrock 1960, scaled into the range of angles)', () => {
    const { q, cost } = solve([([x, y]) => 10 * (y! - x! * x!), ([x]) => 1 - x!], [-1.2, 1]);
    expect(q[0]).toBeCloseTo(1, 6);
    expect(q[1]).toBeCloseTo(1, 6);
    expect(cost).toBeLessThan(1e-12);
  });

  it('ends soon where the true curvature is twice the linearised, and whole steps would only swing to and fro', () => {
    // Σ r² = q² + (2 + q²/4)² has its least at 0 and curvature 4 there, where 2 JᵀJ has 2.
    const { q, iterations } = solve([([x]) => x!, ([x]) => 2 + (x! * x!) / 4], [0.9]);
    expect(Math.abs(q[0]!)).toBeLessThan(10 * STEP_TOLERANCE);
    expect(iterations).toBeLessThan(50);
  });

  it('holds what is not free, to the last bit, and solves the rest around it', () => {
    const rows: Row[] = [([x, y]) => x! + y! - 1, ([x]) => 0.5 * x!];
    const { q } = solve(rows, [0.3, 0.123456789], [true, false]);
    expect(q[1]).toBe(0.123456789);
    expect(q[0]).toBeCloseTo((1 - 0.123456789) / 1.25, 7);
  });

  it('takes nothing free as solved', () => {
    const { q, converged, cost } = solve([([x]) => x! - 5], [0.25], [false]);
    expect([...q]).toEqual([0.25]);
    expect(converged).toBe(true);
    expect(cost).toBeCloseTo(4.75 ** 2, 9);
  });

  it('keeps unknowns within 1.4 rad of upright', () => {
    const { q } = solve([([x]) => x! - 9], [0]);
    expect(q[0]).toBe(1.4);
  });

  it('knows the cost where an unknown that hardly matters is stopped there', () => {
    const rows: Row[] = [([x]) => Math.sin(3 * x!), ([x, y]) => Math.cos(2 * y!) * x! - 3.5e-5];
    const { q, cost } = solve(rows, [0, -0.8273]);
    expect(q[1]).toBe(-1.4);
    expect(cost).toBeCloseTo(
      rows.reduce((sum, row) => sum + row([...q]) ** 2, 0),
      17,
    );
  });

  it('stays finite where slopes vanish or residuals are huge', () => {
    for (const rows of [[() => 3], [([x]: readonly number[]) => 1e12 * x! + 1e15]] as const) {
      const { q, cost } = solve(rows, [0.2]);
      expect(Number.isFinite(q[0]! + cost)).toBe(true);
    }
  });

  it('reports the cost of where it ends, and never ends above where it began', () => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(number, { minLength: 6, maxLength: 6 }), number, number, (c, x0, y0) => {
        const rows: Row[] = [
          ([x, y]) => Math.sin(3 * x! + c[0]!) + c[1]! * y!,
          ([x, y]) => c[2]! + Math.cos(2 * y!) * x! - c[3]!,
          ([x, y]) => c[4]! * x! * y! + c[5]!,
        ];
        const began = rows.reduce((sum, row) => sum + row([x0, y0]) ** 2, 0);
        const { q, cost } = solve(rows, [x0, y0]);
        expect(cost).toBeCloseTo(
          rows.reduce((sum, row) => sum + row([...q]) ** 2, 0),
          12,
        );
        expect(cost).toBeLessThanOrEqual(began + 1e-12);
      }),
      { seed: 41, numRuns: cases(34, 100) },
    );
  });
});
