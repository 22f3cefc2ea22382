import { describe, expect, it } from 'vitest';
import { TAPE_SECTION_POINTS, TAPE_STATIONS } from '../../core/hull/hull-from-tape.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { LONG } from '../cases.ts';
import { madeHull } from '../core/hull/made-hull.ts';
import { draughtForm } from './hydro-shapes.ts';

/**
 * How fast the figures settle as stations and points are added, on a form whose lines are polynomials of high degree
 * (Wigley variant I, Journée 1992), upright, trimmed and heeled, and with its forefoot out of the water. From it come the
 * counts with which tape-measured hulls are drawn.
 */
const [L, B, T] = [3, 0.3, 0.1875];

/** Polygons as they are: fairing between their points would hide what more of them bring. */
const form = (stations: number, points: number) =>
  madeHull({ name: 'form', stations: faired(stations, points).stations, between: 'chords' });

const faired = (stations: number, points: number) =>
  draughtForm({ L, T }, { stations, points }, (x, zeta) => {
    const xi2 = ((2 * x) / L) ** 2;
    const z2 = zeta * zeta;
    return (B / 2) * ((1 - z2) * (1 - xi2) * (1 + 0.2 * xi2) + z2 * (1 - z2 ** 4) * (1 - xi2) ** 4);
  });

const attitudes = [
  { name: 'level', draft: 0.15, trim: 0, heel: 0 },
  { name: 'trimmed and heeled', draft: 0.15, trim: 0.005, heel: 0.1 },
  { name: 'forefoot out of the water', draft: 0.06, trim: 0.08, heel: 0.1 },
];

/** Relative errors of the volume for a list of counts against a far finer hull. */
function errors(
  counts: readonly number[],
  at: (typeof attitudes)[number],
  make: (count: number) => ReturnType<typeof form>,
) {
  const finest = immersedProperties(make(8 * (counts.at(-1)! - 1) + 1), at).volume;
  return counts.map((count) => Math.abs(immersedProperties(make(count), at).volume / finest - 1));
}

/** Order between the first and the last of errors at counts that double. */
const order = (all: readonly number[]) => Math.log2(all[0]! / all.at(-1)!) / (all.length - 1);

// The quick run takes one attitude.
describe.each(LONG ? attitudes : attitudes.slice(1, 2))('$name', (at) => {
  it('stations: fourth order', () => {
    const all = errors([21, 41, 81], at, (stations) => form(stations, 33));
    expect(order(all)).toBeGreaterThan(3.7);
    expect(all[1]).toBeLessThan(1e-5);
  });

  it('points of a section: second order, as polygons in curves are', () => {
    const all = errors([17, 33, 65], at, (points) => form(41, points));
    expect(order(all)).toBeGreaterThan(1.9);
    expect(order(all)).toBeLessThan(2.2);
    expect(all[1]).toBeLessThan(1e-3);
  });
});

it('the default counts of tape-measured hulls are those that this shows to be enough', () => {
  expect(TAPE_STATIONS).toBe(41);
  expect(TAPE_SECTION_POINTS).toBe(33);
});
