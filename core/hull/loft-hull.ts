import { openedSections } from './common-points.ts';
import { fairSections } from './fair-sections.ts';
import type { Hull, Offsets, Station } from './hull.ts';
import { immersedSums } from './immersed-sums.ts';
import { loftLines } from './loft.ts';
import { SUM, sectionRows } from './section-rows.ts';

/** Level water planes at which volumes are kept to start a solve from; more gains no iteration. */
const LEVELS = 17;

/**
 * The hull of stations that are already checked, or computed from another hull. `hullFromOffsets` checks them. Metres, in the
 * frame of the stations; the hull keeps copies.
 */
export function loftHull({ name, stations, between = 'curves' }: Offsets): Hull {
  const sorted: Station[] = stations
    .map(({ x, section }) => ({ x, section: section.map(([y, z]) => [y, z] as const) }))
    .sort((a, b) => a.x - b.x);
  const loft = loftLines(sorted, fairSections(sorted, between));
  const { rows, scratch } = sectionRows(loft);
  const aftX = sorted[0]!.x;
  const foreX = sorted[sorted.length - 1]!.x;
  const hull: Hull = {
    kind: 'hull',
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
  const chords = added ? loftHull({ name, stations: sorted, between: 'chords' }) : hull;
  hull.chordVolumes.set(chords.levelVolumes);
  return hull;
}

/** Points that the fullest section has without any added to it, its start on the centreline counted. */
function mostPoints(stations: readonly Station[]): number {
  return openedSections(stations).reduce((most, section) => Math.max(most, section.length), 2);
}
