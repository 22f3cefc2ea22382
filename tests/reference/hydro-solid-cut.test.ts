import fc from 'fast-check';
import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Hull } from '../../core/hull/hull.ts';
import { immersedProperties } from '../../core/hydrostatics/immersed-properties.ts';
import { cases } from '../cases.ts';
import { sampleHull } from './hydro-sample-hulls.ts';
import { cosinePlaces, ellipsoid, wigley } from './hydro-shapes.ts';
import { loftedSections, solidGeometry, solidOf, solidUnder } from './hydro-solid.ts';

/**
 * The same hulls as polyhedral solids, cut at random planes by an outside solid-geometry library. The solids of the
 * sample hulls run through 8 lofted sections between stations; those of the ellipsoid and the Wigley form are drawn from
 * the formula at far more stations than the hull has, so that the lofting itself is under test too.
 */
const SEED = 20260415;
const CASES = cases(3, 200);
const VOLUME = 1e-3;
const CENTROID_M = 0.5e-3;

const stationsOf = (hull: Hull) => loftedSections(hull, 1);

const subjects = [
  ...(['single', 'pair', 'four', 'training'] as const).map((name) => ({
    name,
    hull: sampleHull(name),
    sections: () => loftedSections(sampleHull(name), 8),
  })),
  {
    name: 'ellipsoid',
    hull: ellipsoid(cosinePlaces(2.5, 41), 81),
    sections: () => stationsOf(ellipsoid(cosinePlaces(2.5, 321), 81)),
  },
  {
    name: 'Wigley',
    hull: wigley({ L: 5.2, B: 0.42, T: 0.25 }, { stations: 41, points: 41 }),
    sections: () => stationsOf(wigley({ L: 5.2, B: 0.42, T: 0.25 }, { stations: 321, points: 41 })),
  },
];

describe(`solid cut at random planes, seed ${SEED}`, () => {
  let geometry: ManifoldToplevel;
  const made = new Map<number, Manifold>();
  /** The solid of a subject, made when it is first cut: it takes a fifth of a second. */
  const solid = (which: number): Manifold => {
    const found = made.get(which) ?? solidOf(geometry, subjects[which]!.sections());
    made.set(which, found);
    return found;
  };

  beforeAll(async () => {
    geometry = await solidGeometry();
  });

  it(`${CASES} cases: volume within 1e-3, centroid within 0.5 mm`, () => {
    const share = fc.double({ min: 0.12, max: 0.9, noNaN: true });
    const slope = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
    fc.assert(
      fc.property(fc.nat(subjects.length - 1), share, slope(0.02), slope(0.45), (which, depth, k, t) => {
        const { hull } = subjects[which]!;
        expect(solid(which).status()).toBe('NoError');
        const draft = hull.lowestZ + depth * (hull.highestZ - hull.lowestZ);
        const ours = immersedProperties(hull, { draft, trim: Math.atan(k), heel: Math.atan(t) });
        const theirs = solidUnder(solid(which), { draft, alongSlope: k, acrossSlope: t });
        const [x, y, z] = theirs.centroid;
        expect(Math.abs(ours.volume / theirs.volume - 1)).toBeLessThan(VOLUME);
        expect(Math.hypot(ours.centroid.x - x, ours.centroid.y - y, ours.centroid.z - z)).toBeLessThan(
          CENTROID_M,
        );
      }),
      { seed: SEED, numRuns: CASES },
    );
  });
});
