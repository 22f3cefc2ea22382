import { beforeAll, describe, expect, it } from 'vitest';
import type { Solve } from '../../../core/drilling/best-drilling.ts';
import { type Condition, leastMoves } from '../../../core/optimise/least-moves.ts';
import { cases } from '../../cases.ts';
import { uniform } from '../../random32.ts';
import { exactSolver } from '../drilling/highs-solver.ts';

interface Program {
  readonly conditions: readonly Condition[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** A seeded random program: some moves fixed, most slopes zero, some conditions out of reach. */
function programOf(seed: number): Program {
  const next = uniform(seed);
  const n = 1 + Math.floor(10 * next());
  const low = Array.from({ length: n }, () => -4 * next());
  const high = low.map((least) => (next() < 0.2 ? least : Math.max(0, 4 * next())));
  const conditions = Array.from({ length: Math.floor(16 * next()) }, () => ({
    slopes: low.map(() => (next() < 0.4 ? 0 : 2 * next() - 1)),
    sign: next() < 0.5 ? (1 as const) : (-1 as const),
    scale: 0.2 + next(),
    least: 6 * next() - 3,
    weight: next() < 0.5 ? 50 : 0.3 + next(),
  }));
  return { conditions, low, high };
}

const term = (value: number, name: string) =>
  `${value < 0 ? '-' : '+'} ${Math.abs(value).toFixed(12)} ${name}`;

/** The same program in the text form that general solvers read: forward and backward parts, and what is missing. */
function textOf({ conditions, low, high }: Program): string {
  const cost = [
    ...low.flatMap((_, j) => [`+ 1 p${j}`, `+ 1 m${j}`]),
    ...conditions.map(({ weight }, k) => term(weight!, `s${k}`)),
  ];
  const rows = conditions.map(({ slopes, sign, scale, least }, k) => {
    const sum = slopes.map(
      (a, j) => `${term((sign * a) / scale, `p${j}`)} ${term((-sign * a) / scale, `m${j}`)}`,
    );
    return `c${k}: ${sum.join(' ')} + 1 s${k} >= ${least.toFixed(12)}`;
  });
  const box = low.flatMap((least, j) => [
    `l${j}: + 1 p${j} - 1 m${j} >= ${least.toFixed(12)}`,
    `h${j}: + 1 p${j} - 1 m${j} <= ${high[j]!.toFixed(12)}`,
  ]);
  return ['Minimize', ` obj: ${cost.join(' ')}`, 'Subject To', ...rows, ...box, 'End'].join('\n');
}

describe('leastMoves', () => {
  let solve: Solve;
  beforeAll(async () => {
    solve = await exactSolver();
  });

  it('costs what a general linear-programming library (HiGHS) finds to be the least', () => {
    for (let seed = 1; seed <= cases(10, 1000); seed++) {
      const program = programOf(seed);
      const { x, size, missing } = leastMoves(program.conditions, program);
      const best = solve(textOf(program));
      if (typeof best === 'string') throw new Error(`seed ${seed}: ${best}`);
      expect(size + missing, `seed ${seed}`).toBeCloseTo(best.bound, 5);
      x.forEach((d, j) => {
        expect(d, `seed ${seed}`).toBeGreaterThanOrEqual(program.low[j]! - 1e-7);
        expect(d, `seed ${seed}`).toBeLessThanOrEqual(program.high[j]! + 1e-7);
      });
    }
  });

  it('moves nothing where nothing is missing', () => {
    const condition = { slopes: [1, 0], sign: 1, scale: 1, least: -1, weight: 50 } as const;
    expect(leastMoves([condition], { low: [-2, -2], high: [2, 2] })).toEqual({
      x: [0, 0],
      size: 0,
      missing: 0,
    });
  });

  it('weighs what cannot be met against the moves', () => {
    const condition = { slopes: [1], sign: 1, scale: 1, least: 3, weight: 50 } as const;
    expect(leastMoves([condition], { low: [-2], high: [2] })).toEqual({ x: [2], size: 2, missing: 50 });
    // A move that costs more than it is worth is not made.
    expect(leastMoves([{ ...condition, weight: 0.5 }], { low: [-2], high: [2] }).x).toEqual([0]);
  });
});
