import type { Hull } from '../hull/hull.ts';
import { loftedInto } from '../hull/section-at.ts';
import type { Attitude, ImmersedProperties } from '../hydrostatics/afloat.ts';

/** Stations and depths that a hull is read at for its waves. */
export interface GridSize {
  /** Places along the boat, ends included. */
  readonly stations: number;
  /** Levels under water, surface included. */
  readonly depths: number;
}

/**
 * The immersed half-hull read at stations and depths, for waves. `area[i · depths + j]` is the half-section's area at
 * station i below depth j, square metres: it is smoother than half-breadths where a bottom is flat. Depths are metres below
 * the water plane, 0 last, negative before. Stations stand closer at the ends, alike on both sides of the middle; depths closer
 * at the surface.
 */
export interface ImmersedGrid {
  /** Place along the boat, metres. */
  readonly x: Float64Array;
  /** Depths from the deepest to the surface, metres, none above 0. */
  readonly z: Float64Array;
  /** Areas station by station, each from the deepest depth to the surface, m². */
  readonly area: Float64Array;
}

/** Reads the hull at one attitude. Heel is left out: at a few degrees a slender hull's waves hardly know it. Metres, boat frame. */
export function immersedGrid(
  hull: Hull,
  { attitude, immersed, size }: { attitude: Attitude; immersed: ImmersedProperties; size: GridSize },
): ImmersedGrid {
  const { aftEnd, foreEnd } = immersed.waterplane;
  const slope = Math.tan(attitude.trim);
  const x = Float64Array.from(
    { length: size.stations },
    (_, i) =>
      (aftEnd + foreEnd) / 2 - ((foreEnd - aftEnd) / 2) * Math.cos((Math.PI * i) / (size.stations - 1)),
  );
  const { points } = hull.loft;
  const lofted = new Float64Array(2 * points * size.stations);
  const sections = Array.from(x, (at, i) => {
    const from = 2 * points * i;
    const y = lofted.subarray(from, from + points);
    return loftedInto(hull, at, { y, z: lofted.subarray(from + points, from + 2 * points) });
  });
  const waterAt = (i: number) => attitude.draft - slope * x[i]!;
  const deepest = sections.reduce((most, section, i) => Math.max(most, waterAt(i) - section.z[0]!), 0);
  const z = Float64Array.from({ length: size.depths }, (_, j) => -deepest * (1 - j / (size.depths - 1)) ** 2);
  const area = new Float64Array(size.stations * size.depths);
  sections.forEach(({ y, z: heights }, i) => {
    const areas = area.subarray(i * size.depths, (i + 1) * size.depths);
    fillAreas({ y, heights, water: waterAt(i), z }, areas);
  });
  return { x, z, area };
}

/** One section as lofted, and its breadths at the grid's levels. */
interface WetSection {
  readonly y: Float64Array;
  readonly heights: Float64Array;
  /** Height of the water at this station, metres, boat frame. */
  readonly water: number;
  readonly z: Float64Array;
}

/** ∫ y dz from the keel up to each depth of `z`, into `areas`. Above the sheer the last half-breadth holds. */
function fillAreas({ y, heights, water, z }: WetSection, areas: Float64Array): void {
  let total = 0;
  let k = 1;
  for (let j = 0; j < z.length; j++) {
    const level = water + z[j]!;
    while (k < y.length && heights[k]! <= level) {
      total += ((y[k - 1]! + y[k]!) / 2) * (heights[k]! - heights[k - 1]!);
      k++;
    }
    areas[j] = Math.max(0, total + partBelow({ y, heights, k, level }));
  }
}

/** The area between point k − 1 and a level under point k, or over the sheer. */
function partBelow({
  y,
  heights,
  k,
  level,
}: {
  y: Float64Array;
  heights: Float64Array;
  k: number;
  level: number;
}) {
  const from = heights[k - 1]!;
  if (level <= from) return 0;
  if (k >= y.length) return y[k - 1]! * (level - from);
  const share = (level - from) / (heights[k]! - from);
  return ((y[k - 1]! + y[k - 1]! + share * (y[k]! - y[k - 1]!)) / 2) * (level - from);
}
