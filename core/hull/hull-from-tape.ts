import type { TapeHull } from '../document/hull-kinds-schema.ts';
import type { Hull, SectionPoint, Station } from './hull.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { loftHull } from './loft-hull.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import type { NoHull } from './no-hull.ts';
import { loftedSection } from './section-at.ts';

/** Points along each half-section. The polygon then holds 0.05 % less than the curve (error falls as 1/n²). */
export const TAPE_SECTION_POINTS = 33;

/** Stations along the boat, as a count for the whole length; more changes the volume by a few millionths (error falls as 1/n⁴). */
export const TAPE_STATIONS = 41;

/** A station nearer to an end than this, metres, counts as the end. */
const AT_END = 1e-3;

/** Least height of the sheer over the keel where the ends are carried on, metres. */
const LEAST_STEM = 0.02;

/** A measured station. */
type Measured = TapeHull['stations'][number];

/**
 * A hull from what a tape reads. At each measured station a fair monotone half-section runs exactly through every beam;
 * from station to station the same shares of depth are faired along the boat; at half the length, if no station
 * stands there, the hull closes to a stem on the centreline whose keel and sheer carry on from the last two stations.
 * Metres, boat frame. Stations beyond the length are left out.
 *
 * Near the keel a half-section follows the root of the height above it, as a round bottom does (a V is a straight line
 * in the same terms); a station with no beams but the sheer's becomes a parabola, which holds two thirds of its box.
 * A `NoHull` when too little is left to make a hull of.
 */
export function hullFromTape(tape: TapeHull, name = 'tape'): Hull | NoHull {
  const half = tape.lengthM / 2;
  const measured = tape.stations
    .filter(({ xM, sheerM, keelM }) => Math.abs(xM) <= half + AT_END && sheerM > keelM)
    .sort((a, b) => a.xM - b.xM);
  const stations = withClosedEnds(measured, half).map(
    ({ x, station }): Station => ({ x, section: fairSection(station) }),
  );
  const coarse = hullFromOffsets({ name, stations, between: 'chords' });
  return coarse.kind === 'hull' ? withMoreStations(coarse) : coarse;
}

/** A measured station, or a computed end, at its place along the boat. */
interface Placed {
  /** Forward of amidships, metres. */
  readonly x: number;
  readonly station: Measured;
}

/** The measured stations with a closed stem at each end that was not measured itself. */
function withClosedEnds(measured: readonly Measured[], half: number): Placed[] {
  const placed = measured.map((station): Placed => ({ x: station.xM, station }));
  if (placed.length < 2) return placed;
  const [aft, fore] = [placed[0]!, placed[placed.length - 1]!];
  const stern = closedEnd(-half, aft.station, measured[1]!);
  const bow = closedEnd(half, fore.station, measured[measured.length - 2]!);
  return [
    ...(aft.x > -half + AT_END ? [{ x: -half, station: stern }] : []),
    ...placed,
    ...(fore.x < half - AT_END ? [{ x: half, station: bow }] : []),
  ];
}

/** A section without breadth at x, its keel and sheer on the straight lines through the two nearest stations. */
function closedEnd(x: number, near: Measured, next: Measured): Measured {
  const share = (x - near.xM) / (near.xM - next.xM);
  const sheerM = Math.max(near.sheerM + share * (near.sheerM - next.sheerM), near.keelM + LEAST_STEM);
  const keelM = Math.min(near.keelM + share * (near.keelM - next.keelM), sheerM - LEAST_STEM);
  return { xM: x, keelM: Math.max(keelM, Math.min(near.keelM, 0)), sheerM, sheerBeamM: 0, beams: [] };
}

/** A half-section through every measured beam: monotone cubic in the root of the height share, points closer low down. */
function fairSection({ keelM, sheerM, sheerBeamM, beams }: Measured): SectionPoint[] {
  const depth = sheerM - keelM;
  const inner = beams
    .filter(({ aboveKeelM }) => aboveKeelM < depth)
    .sort((a, b) => a.aboveKeelM - b.aboveKeelM)
    .filter(({ aboveKeelM }, i, all) => i === 0 || aboveKeelM > all[i - 1]!.aboveKeelM);
  const roots = [0, ...inner.map((b) => Math.sqrt(b.aboveKeelM / depth)), 1];
  const curve = monotoneCubic(roots, [0, ...inner.map((b) => b.beamM / 2), sheerBeamM / 2]);
  return sampledRoots(roots).map((root): SectionPoint => [curve(root), keelM + root * root * depth]);
}

/** Even steps from 0 to 1. Each measured place replaces the free step nearest to it, so the section contains it exactly. */
function sampledRoots(measured: readonly number[]): number[] {
  const last = TAPE_SECTION_POINTS - 1;
  const roots = Array.from({ length: TAPE_SECTION_POINTS }, (_, k) => k / last);
  let taken = 0;
  for (const root of measured.slice(1, -1)) {
    taken = Math.min(last - 1, Math.max(taken + 1, Math.round(root * last)));
    roots[taken] = root;
  }
  return roots.sort((a, b) => a - b);
}

/** The same surface with stations lofted between the measured ones, close enough for integration. */
function withMoreStations(coarse: Hull): Hull {
  const spacing = coarse.length / (TAPE_STATIONS - 1);
  const stations: Station[] = [];
  coarse.stations.forEach((station, i) => {
    stations.push(station);
    const next = coarse.stations[i + 1];
    if (!next) return;
    const steps = Math.ceil((next.x - station.x) / spacing - 1e-9);
    for (let k = 1; k < steps; k++) {
      const x = station.x + ((next.x - station.x) * k) / steps;
      const { y, z } = loftedSection(coarse, x);
      stations.push({ x, section: Array.from(y, (breadth, j) => [breadth, z[j]!] as const) });
    }
  });
  return loftHull({ name: coarse.name, stations, between: 'chords' });
}
