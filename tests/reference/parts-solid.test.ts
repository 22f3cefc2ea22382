import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import { partsOfSeat } from '../../core/evaluation/parts-of.ts';
import { along } from '../../core/frame/vec3.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { innerSkin, leastInside } from '../../core/hull/inner-skin.ts';
import type { Part } from '../../core/parts/part.ts';
import { cases } from '../cases.ts';
import { exampleAthlete, exampleBoat, exampleSeat } from '../core/example/example-fit.ts';
import { madeHull } from '../core/hull/made-hull.ts';
import { notEmpty } from '../not-empty.ts';
import { uniform } from '../random32.ts';
import { loftedSections, solidGeometry, solidOf } from './hydro-solid.ts';

/**
 * Parts and clearances against an outside solid-geometry library (manifold): every part is a watertight solid of its volume,
 * and what the program says of its distance to the hull is what the library finds between the two solids.
 */

/** Fits tried. */
const FITS = cases(2, 100);
/** The library counts in single precision: 2⁻²⁴ of a metre, and a mesh of chords between lofted sections; and the program's millimetre. */
const MESH_M = 1.2e-3;
/** Distances in a section pass those in space by the slope of the side along the boat: to 12° here. */
const SLOPE_SHARE = 0.025;
const PER_INTERVAL = 3;

let solids: ManifoldToplevel;
beforeAll(async () => {
  solids = await solidGeometry();
});

/** A canoe 5 m long: round or flared sections, its beam, depth and flare by chance. */
function chanceHull(next: () => number): Hull {
  const [beam, depth, flare] = [0.4 + 0.5 * next(), 0.26 + 0.08 * next(), 0.3 * next()];
  const stations = Array.from({ length: 11 }, (_, i) => {
    const share = i / 5 - 1;
    const fullness = Math.max(0.02, 1 - share ** 2);
    const section = Array.from({ length: 19 }, (_, j): [number, number] => {
      const t = (Math.PI / 2) * (j / 18);
      const up = 1 - Math.cos(t);
      const out = Math.sin(t) * (1 - flare * Math.sin(2 * t) * up);
      return [(beam / 2) * fullness * out, 0.04 * share ** 4 + depth * up];
    });
    return { x: 2.5 * share, section };
  });
  return madeHull({ name: 'by chance', stations });
}

function chanceSeat(next: () => number): Seat {
  const between = (a: number, b: number) => a + (b - a) * next();
  const usual = exampleSeat();
  return {
    ...usual,
    side: next() < 0.5 ? 'left' : 'right',
    kneePad: {
      ...usual.kneePad,
      aftM: between(-0.2, 0.5),
      outM: between(-0.03, 0.1),
      heightM: between(0.05, 0.17),
      recessTurnDeg: between(-5, 40),
    },
    rearRest: {
      ...usual.rearRest,
      aftM: between(0.4, 1.1),
      outM: between(-0.2, 0.1),
      heightM: between(0.02, 0.14),
      turnDeg: between(0, 45),
      tiltDeg: between(20, 90),
    },
    frontFoot: {
      ...usual.frontFoot,
      forwardM: between(0, 0.6),
      outM: between(-0.2, 0),
      heightM: between(0, 0.1),
      toeOutDeg: between(-10, 35),
      wedgeDeg: between(0, 25),
    },
  };
}

/** A part's faces, two triangles each, as a solid of the library. */
function solidOfPart(part: Part): Manifold {
  const triangles = part.faces.flatMap(([a, b, c, d]) => [a!, b!, c!, a!, c!, d!]);
  return new solids.Manifold(
    new solids.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(part.vertices.flatMap(({ x, y, z }) => [x, y, z])),
      triVerts: Uint32Array.from(triangles),
    }),
  );
}

/** Volume of a prism by its profile's area (the shoelace rule). */
function prismVolume({ shape }: Part): number {
  const { baseFore, baseAft, topFore, topAft, half, foreHeight, aftHeight } = shape;
  const ring = [
    [baseFore, 0],
    [topFore, foreHeight],
    [topAft, aftHeight],
    [baseAft, 0],
  ] as const;
  const twice = ring.reduce((sum, [x, z], k) => {
    const [nextX, nextZ] = ring[(k + 1) % 4]!;
    return sum + x * nextZ - nextX * z;
  }, 0);
  return half * twice;
}

const edgesOf = ({ vertices, edges }: Part) => edges.map(([a, b]) => [vertices[a]!, vertices[b]!] as const);

describe('parts as solids', () => {
  const boat = exampleBoat();
  const footLength = bodyOfAthlete(exampleAthlete()).lengths.footLength.value;

  function tried(seed: number) {
    const next = uniform(seed);
    const hull = chanceHull(next);
    const parts = Object.values(partsOfSeat(boat, chanceSeat(next), { index: 0, footLength })) as Part[];
    return { hull, parts };
  }

  it('are watertight, and have the volume of their profile times their width', () => {
    for (let seed = 1; seed <= FITS; seed++) {
      for (const part of notEmpty(tried(seed).parts)) {
        const solid = solidOfPart(part);
        expect(solid.status()).toBe('NoError');
        expect(solid.genus()).toBe(0);
        expect(solid.volume() / prismVolume(part)).toBeCloseTo(1, 4);
        solid.delete();
      }
    }
  });

  it('stand as far from the hull, or as far through it, as the library finds', () => {
    let [clear, through] = [0, 0];
    for (let seed = 1; seed <= FITS; seed++) {
      const { hull, parts } = tried(seed);
      const inside = solidOf(solids, loftedSections(hull, PER_INTERVAL));
      const outside = solids.Manifold.cube([8, 2, 2], true).subtract(inside).trimByPlane([0, 0, -1], -0.25);
      for (const part of parts) {
        // Over the sheer the library's solid has a deck, and the program an open side.
        if (Math.max(...part.vertices.map(({ z }) => z)) > 0.24) continue;
        const solid = solidOfPart(part);
        const said = leastInside(innerSkin(hull, 0), part);
        const lost = solid.subtract(inside).volume();
        const where = `seed ${seed} ${part.part}`;
        if (said > MESH_M) {
          clear++;
          expect(lost, where).toBeLessThan(1e-9);
          const gap = solid.minGap(outside, said + 2 * MESH_M);
          expect(gap, where).toBeLessThan(said + MESH_M);
          expect(gap, where).toBeGreaterThan(said * (1 - SLOPE_SHARE) - MESH_M);
        } else if (said < -MESH_M) {
          through++;
          expect(lost, where).toBeGreaterThan(0);
          const depth = deepest(part, inside);
          expect(depth, where).toBeLessThan(-said + MESH_M);
          expect(depth, where).toBeGreaterThan(-said * (1 - SLOPE_SHARE) - MESH_M);
        }
        solid.delete();
      }
    }
    expect(Math.min(clear, through)).toBeGreaterThan(FITS / 4);
  });
});

/** How far a part's edges are from a solid at most: a speck at each eighth of them, and the library's gap to the solid. */
function deepest(part: Part, inside: Manifold): number {
  let most = 0;
  for (const [a, b] of edgesOf(part)) {
    for (let k = 0; k < 8; k++) {
      const { x, y, z } = along(a, b, k / 8);
      const speck = solids.Manifold.cube([1e-5, 1e-5, 1e-5], true).translate([x, y, z]);
      most = Math.max(most, speck.minGap(inside, 0.5));
      speck.delete();
    }
  }
  return most;
}
