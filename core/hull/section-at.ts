import type { BoatPoint } from '../frame/vec3.ts';
import type { Hull, HullStation } from './hull.ts';

/** Index of the station aft of x (or the last but one), and how far x lies toward the next. */
function bracket({ stations }: Hull, x: number): { at: number; share: number } {
  let at = 0;
  while (at < stations.length - 2 && stations[at + 1]!.x < x) at++;
  const a = stations[at]!.x;
  const b = stations[at + 1]!.x;
  return { at, share: Math.min(1, Math.max(0, (x - a) / (b - a))) };
}

function blend(hull: Hull, x: number, read: (station: HullStation) => number): number {
  const { at, share } = bracket(hull, x);
  return read(hull.stations[at]!) * (1 - share) + read(hull.stations[at + 1]!) * share;
}

/** Height of the sheer at x, metres, boat frame. */
export function sheerHeight(hull: Hull, x: number): number {
  return blend(hull, x, ({ z }) => z.at(-1)!);
}

/** Height of the keel line at x, metres, boat frame. */
export function keelHeight(hull: Hull, x: number): number {
  return blend(hull, x, ({ z }) => z[0]!);
}

/** Half-breadth of a station at a height, metres; null below its keel or above its sheer. */
function stationBreadth({ y, z }: HullStation, height: number): number | null {
  const n = z.length;
  if (height < z[0]! || height > z[n - 1]!) return null;
  let k = 0;
  while (k < n - 2 && z[k + 1]! < height) k++;
  const rise = z[k + 1]! - z[k]!;
  const share = rise > 0 ? (height - z[k]!) / rise : 1;
  return y[k]! + (y[k + 1]! - y[k]!) * Math.min(1, Math.max(0, share));
}

/** Half-breadth of the hull's outer face at a place and height, metres; null below the keel or above the sheer. */
export function halfBreadth(hull: Hull, x: number, z: number): number | null {
  const { at, share } = bracket(hull, x);
  const aft = stationBreadth(hull.stations[at]!, z);
  const fore = stationBreadth(hull.stations[at + 1]!, z);
  if (aft === null || fore === null) return aft ?? fore;
  return aft * (1 - share) + fore * share;
}

/** The half-section at x as points keel to sheer, port side, blended between its neighbours. Metres, boat frame. */
export function sectionAt(hull: Hull, x: number, points = 33): BoatPoint[] {
  const low = keelHeight(hull, x);
  const high = sheerHeight(hull, x);
  return Array.from({ length: points }, (_, k) => {
    const z = low + (high - low) * (k / (points - 1)) ** 1.5;
    return { x, y: halfBreadth(hull, x, z) ?? 0, z };
  });
}
