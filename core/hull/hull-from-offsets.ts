import { checkOffsets } from '../document/check-offsets.ts';
import { openedSections } from './common-points.ts';
import { fairSections } from './fair-sections.ts';
import type { Hull, Offsets, Station } from './hull.ts';
import { immersedSums } from './immersed-sums.ts';
import { loftLines } from './loft.ts';
import { NoHull } from './no-hull.ts';
import { SUM, sectionRows } from './section-rows.ts';

/** Level water planes at which volumes are kept to start a solve from; more gains no iteration. */
const LEVELS = 17;

/**
 * Prepares a hull from a table of offsets: stations in any order, each a half-section from keel to sheer (y ≥ 0).
 * Metres, in whatever frame the table has; the boat frame for a boat. The hull keeps copies and is immutable.
 *
 * Between the given points a half-section is a fair curve (`sectionCurve`), kept as a polyline within 0.1 mm of it:
 * chords between waterlines 5 cm apart would float a racing single 10 mm too deep. Straight runs and knuckles stay; a
 * point given twice in succession is always a knuckle. `between: 'chords'` takes the points as a polyline, as they are.
 * A box 5 × 0.5 × 0.4 m is three stations of [[0.25, 0], [0.25, 0.4]].
 * @throws NoHull, a RangeError, with the first problem when the table is no hull; `checkOffsets` lists them all beforehand.
 */
export function hullFromOffsets({ name, stations, between = 'curves' }: Offsets): Hull {
  const [problem] = checkOffsets(stations);
  if (problem) throw new NoHull(problem);
  const sorted: Station[] = stations
    .map(({ x, section }) => ({ x, section: section.map(([y, z]) => [y, z] as const) }))
    .sort((a, b) => a.x - b.x);
  const loft = loftLines(sorted, fairSections(sorted, between));
  const { rows, scratch } = sectionRows(loft);
  const aftX = sorted[0]!.x;
  const foreX = sorted[sorted.length - 1]!.x;
  const hull: Hull = {
    name,
    aftX,
    foreX,
    length: foreX - aftX,
    lowestZ: loft.z.reduce((least, z) => Math.min(least, z), Number.POSITIVE_INFINITY),
    highestZ: loft.z.reduce((most, z) => Math.max(most, z), Number.NEGATIVE_INFINITY),
    stations: sorted,
    between,
    loft,
    rows,
    scratch,
    levelVolumes: new Float64Array(LEVELS),
    chordVolumes: new Float64Array(LEVELS),
  };
  hull.levelVolumes.forEach((_, i) => {
    const draft = hull.lowestZ + ((hull.highestZ - hull.lowestZ) * i) / (LEVELS - 1);
    hull.levelVolumes[i] = immersedSums(hull, { draft, alongSlope: 0, acrossSlope: 0 })[SUM.volume]!;
  });
  const added = loft.points > mostPoints(sorted);
  const chords = added ? hullFromOffsets({ name, stations: sorted, between: 'chords' }) : hull;
  hull.chordVolumes.set(chords.levelVolumes);
  return hull;
}

/** Points that the fullest section has without any added to it, its start on the centreline counted. */
function mostPoints(stations: readonly Station[]): number {
  return openedSections(stations).reduce((most, section) => Math.max(most, section.length), 2);
}
