import { describe, expect, it } from 'vitest';
import { innerSkin, leastInside } from '../../../core/hull/inner-skin.ts';
import { straightEdges } from '../example/straight-edges.ts';
import { madeHull } from './made-hull.ts';

/** A hull of the same half-section all along, 4 m long. */
const prism = (section: readonly (readonly [number, number])[]) =>
  madeHull({
    name: 'prism',
    stations: [-2, -1, 0, 1, 2].map((x) => ({ x, section: straightEdges(section) })),
  });

const box = prism([
  [0, 0],
  [0.25, 0],
  [0.25, 0.3],
]);
/** Sides that rise at 45° from the keel. */
const vee = prism([
  [0, 0],
  [0.3, 0.3],
]);
/** A bulge inward: the side comes in to 15 cm half-way up and goes out again. */
const waist = prism([
  [0, 0],
  [0.2, 0],
  [0.15, 0.15],
  [0.2, 0.3],
]);

describe('innerSkin', () => {
  const inBox = innerSkin(box, 0.004);

  it('is the distance to the nearest face, side, bottom or end, less the skin', () => {
    expect(inBox({ x: 0, y: 0.1, z: 0.2 })).toBeCloseTo(0.146, 12);
    expect(inBox({ x: 0, y: -0.1, z: 0.05 })).toBeCloseTo(0.046, 12);
    expect(inBox({ x: 1.97, y: 0, z: 0.2 })).toBeCloseTo(0.026, 12);
  });

  it('goes on evenly through the skin and out', () => {
    expect(inBox({ x: 0, y: 0.25, z: 0.2 })).toBeCloseTo(-0.004, 12);
    expect(inBox({ x: 0, y: 0.26, z: 0.2 })).toBeCloseTo(-0.014, 12);
    expect(inBox({ x: 0, y: 0, z: -0.01 })).toBeCloseTo(-0.014, 12);
    expect(inBox({ x: 2.05, y: 0, z: 0.2 })).toBeCloseTo(-0.054, 12);
  });

  it('takes the side as going straight up over the sheer', () => {
    expect(inBox({ x: 0, y: 0.1, z: 0.5 })).toBeCloseTo(0.146, 12);
    expect(inBox({ x: 0, y: 0.3, z: 0.5 })).toBeCloseTo(-0.054, 12);
  });

  it('is square to a sloping side', () => {
    // From (0.1, 0.2) the side z = y lies 0.1 / √2 away; from (0.2, 0.1) as far on its other side.
    const inVee = innerSkin(vee, 0);
    expect(inVee({ x: 0, y: 0.1, z: 0.2 })).toBeCloseTo(0.1 / Math.SQRT2, 12);
    expect(inVee({ x: 0, y: -0.2, z: 0.1 })).toBeCloseTo(-0.1 / Math.SQRT2, 12);
  });

  it('closes a bottom that does not come to the centreline', () => {
    const flat = innerSkin(
      prism([
        [0.1, 0],
        [0.25, 0.3],
      ]),
      0,
    );
    expect(flat({ x: 0, y: 0.02, z: 0.03 })).toBeCloseTo(0.03, 12);
    expect(flat({ x: 0, y: 0.02, z: -0.03 })).toBeCloseTo(-0.03, 12);
  });
});

describe('leastInside', () => {
  it('finds a bulge between two ends that stand clear, within its stated miss', () => {
    const upright = [
      { x: 0, y: 0.14, z: 0.02 },
      { x: 0, y: 0.14, z: 0.28 },
    ] as const;
    const distance = innerSkin(waist, 0);
    // The nearest point of the bulge is its tip, 1 cm away.
    expect(Math.min(distance(upright[0]), distance(upright[1]))).toBeGreaterThan(0.015);
    const least = leastInside(distance, { vertices: upright, edges: [[0, 1]] });
    expect(least).toBeGreaterThanOrEqual(0.01 - 1e-12);
    expect(least).toBeLessThan(0.011);
  });

  it('finds how far a block’s base corner is through a hull whose top corner is inside', () => {
    const corner = (z: number) => ({ x: 0, y: 0.12, z });
    const distance = innerSkin(vee, 0.004);
    expect(distance(corner(0.17))).toBeGreaterThan(0.03);
    // The base lies at 10 cm, 2 cm beside the side of z = y.
    const upright = { vertices: [corner(0.1), corner(0.17)], edges: [[0, 1]] as const };
    expect(leastInside(distance, upright)).toBeCloseTo(-0.02 / Math.SQRT2 - 0.004, 12);
  });
});

it('an edge along a hull that is narrow amidships is nearest there, not at its ends', () => {
  const stations = [-2, -1, 0, 1, 2].map((x) => {
    const half = 0.2 + 0.05 * x ** 2;
    return {
      x,
      section: straightEdges([
        [0, 0],
        [half, 0],
        [half, 0.5],
      ]),
    };
  });
  const skin = innerSkin(madeHull({ name: 'waisted', stations }), 0);
  const ends = [-1, 1].map((x) => ({ x, y: 0.15, z: 0.3 }));
  expect(leastInside(skin, { vertices: ends, edges: [] })).toBeCloseTo(0.1, 3);
  expect(leastInside(skin, { vertices: ends, edges: [[0, 1]] })).toBeCloseTo(0.05, 3);
});
