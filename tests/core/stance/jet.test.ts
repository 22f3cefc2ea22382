import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleOf,
  inner,
  inverse,
  type Jet,
  mix,
  outer,
  product,
  root,
  times,
  unknowns,
} from '../../../core/stance/jet.ts';

/** Derivative by central difference along unknown `k`. */
function slope(f: (q: readonly number[]) => number, q: readonly number[], k: number): number {
  const h = 1e-6;
  const at = (by: number) => f(q.map((v, i) => (i === k ? v + by : v)));
  return (at(h) - at(-h)) / (2 * h);
}

const parts = ({ a, b, c, d, e }: Jet) => [a, b, c, d, e];
const point = fc.array(fc.double({ min: 0.2, max: 1.5, noNaN: true }), { minLength: 5, maxLength: 5 });

/** Every operation, once, as a function of the unknowns. */
const OPERATIONS: Record<string, (q: readonly number[]) => Jet> = {
  mix: (q) => mix(2, unknowns(q)[0], -3, unknowns(q)[1]),
  times: (q) => times(unknowns(q)[2], 0.7),
  product: (q) => product(unknowns(q)[0], unknowns(q)[3]),
  inverse: (q) => inverse(unknowns(q)[4]),
  root: (q) => root(unknowns(q)[1]),
  angleOf: (q) => angleOf(unknowns(q)[2], unknowns(q)[3]),
  inner: (q) => {
    const [a, b, c, d, e] = unknowns(q);
    return inner({ x: a, y: b, z: c }, { x: c, y: d, z: e });
  },
  outer: (q) => {
    const [a, b, c, d, e] = unknowns(q);
    const n = outer({ x: a, y: b, z: c }, { x: e, y: d, z: a });
    return inner(n, n);
  },
};

describe('jets carry exact derivatives', () => {
  it.each(Object.entries(OPERATIONS))('%s', (_, operation) => {
    fc.assert(
      fc.property(point, (q) => {
        const jet = operation(q);
        parts(jet).forEach((derivative, k) => {
          const difference = slope((p) => operation(p).v, q, k);
          expect(Math.abs(derivative - difference)).toBeLessThan(1e-5 * Math.max(1, Math.abs(difference)));
        });
      }),
      { seed: 5, numRuns: 50 },
    );
  });
});
