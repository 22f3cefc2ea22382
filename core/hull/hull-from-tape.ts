import type { TapeHull } from '../fit/boat-schema.ts';
import type { Hull } from './hull.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { monotoneCubic } from './monotone-cubic.ts';

/** Points along each section and stations along the boat that a tape-measured hull is drawn through. */
const SECTION_POINTS = 25;
const STATIONS = 41;

type Measured = TapeHull['stations'][number];

/**
 * A hull from what a tape reads: at each measured station a fair monotone section through every beam, exactly; between
 * stations the same heights are faired along the boat; the ends close on the centreline at half the length, with keel
 * and sheer carried on from the last stations. Metres, boat frame.
 */
export function hullFromTape(tape: TapeHull, name = 'hull by tape'): Hull {
  const measured = tape.stations.toSorted((a, b) => a.xM - b.xM);
  const half = tape.lengthM / 2;
  const inner = measured.filter((s) => Math.abs(s.xM) < half);
  const xs = [-half, ...inner.map((s) => s.xM), half];
  const ends = <T>(value: (s: Measured) => T): [T, T] => [value(inner[0]!), value(inner.at(-1)!)];
  const along = (value: (s: Measured) => number, atEnds: [number, number]) =>
    monotoneCubic(xs, [atEnds[0], ...inner.map(value), atEnds[1]]);
  const keel = along(
    (s) => s.keelM,
    ends((s) => s.keelM),
  );
  const sheer = along(
    (s) => s.sheerM,
    ends((s) => s.sheerM),
  );
  const shares = Array.from({ length: SECTION_POINTS }, (_, k) => (k / (SECTION_POINTS - 1)) ** 1.5);
  const sections = new Map(inner.map((s) => [s, sectionThrough(s)]));
  const breadths = shares.map((share) => along((s) => sections.get(s)!(share), [0, 0]));
  const stations = stationsAt(xs).map((x) => {
    const low = keel(x);
    const high = Math.max(sheer(x), low + 1e-3);
    const section = shares.map((share, k): [number, number] => [
      Math.max(0, breadths[k]!(x)),
      low + share * (high - low),
    ]);
    return { x, section };
  });
  return hullFromOffsets({ name, stations });
}

/** Half-breadth over height share (0 keel, 1 sheer) at one measured station. */
function sectionThrough(station: Measured): (share: number) => number {
  const depth = station.sheerM - station.keelM;
  const points = station.beams
    .map(({ aboveKeelM, beamM }) => [aboveKeelM / depth, beamM / 2] as const)
    .filter(([share]) => share > 0 && share < 1)
    .sort((a, b) => a[0] - b[0]);
  const all = [[0, 0], ...points, [1, station.sheerBeamM / 2]] as [number, number][];
  const curve = monotoneCubic(
    all.map(([share]) => Math.sqrt(share)),
    all.map(([, y]) => y),
  );
  return (share) => curve(Math.sqrt(share));
}

/** Evenly spread stations with every measured one among them. */
function stationsAt(xs: readonly number[]): number[] {
  const low = xs[0]!;
  const step = (xs.at(-1)! - low) / (STATIONS - 1);
  const even = Array.from({ length: STATIONS }, (_, i) => low + i * step);
  const far = even.filter((x) => xs.every((m) => Math.abs(m - x) > step / 4));
  return [...far, ...xs].sort((a, b) => a - b);
}
