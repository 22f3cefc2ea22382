import type { StemShape, Stems } from '../document/hull-kinds-schema.ts';
import type { Hull, Station } from './hull.ts';
import { loftHull } from './loft-hull.ts';
import { loftedSection } from './section-at.ts';

/** Sections between the foot of a stem and its head. */
const SECTIONS = 8;
/** Ends that are raked by less are upright, metres. */
const LEAST_RAKE_M = 0.002;
/** Height of the stem that stays at the very end, metres: a section without height is none. */
const HEAD_M = 0.02;

/**
 * Share of its height that a stem has reached at a share of its rake (above 0): a straight line without curve, rounded forward
 * with one. With the largest curve, a quarter of the rake, the head is upright.
 */
export function stemRise({ rakeM, curveM }: StemShape, share: number): number {
  const bulge = Math.min(curveM / rakeM, 1 / 4);
  if (bulge < 1e-9) return share;
  // x(t) = t + 4 b t (1 − t), solved for t.
  const linear = 1 + 4 * bulge;
  return (linear - Math.sqrt(linear * linear - 16 * bulge * share)) / (8 * bulge);
}

/**
 * A hull whose ends are raked: within the rake its sections begin at the stem instead of at the keel line, with the same
 * breadths over their remaining height. Ends without a rake stay upright. `measured` are the first and last measured stations:
 * the keel is known there, and no rake reaches past them. Metres, boat frame; the length is as before.
 */
export function withStems(
  hull: Hull,
  { bow, stern }: Stems,
  measured: { readonly aftX: number; readonly foreX: number } | null = null,
): Hull {
  const within = (stem: StemShape, room: number) => ({ ...stem, rakeM: Math.min(stem.rakeM, room) });
  const middle = (hull.aftX + hull.foreX) / 2;
  const { aftX, foreX } = measured ?? { aftX: middle, foreX: middle };
  const raked = [
    ...(stern ? [{ stem: within(stern, aftX - hull.aftX), end: hull.aftX, sign: -1 as const }] : []),
    ...(bow ? [{ stem: within(bow, hull.foreX - foreX), end: hull.foreX, sign: 1 as const }] : []),
  ].filter(({ stem }) => stem.rakeM > LEAST_RAKE_M);
  if (raked.length === 0) return hull;
  const at = new Map<number, Station>(hull.stations.map((station) => [station.x, station]));
  for (const { stem, end, sign } of raked) {
    const foot = end - sign * stem.rakeM;
    for (const x of at.keys()) if (sign * (x - foot) > 0) at.delete(x);
    for (let k = 0; k <= SECTIONS; k++) {
      // Closer together toward the end, where a rounded stem rises fastest.
      const share = 1 - (1 - k / SECTIONS) ** 2;
      const x = k === SECTIONS ? end : foot + sign * stem.rakeM * share;
      at.set(x, { x, section: overStem(hull, x, stemRise(stem, share)) });
    }
  }
  const stations = [...at.values()].sort((a, b) => a.x - b.x);
  return loftHull({ name: hull.name, stations, between: hull.between });
}

/** The section at x, its heights from the keel to the sheer drawn together to those from the stem to the sheer. */
function overStem(hull: Hull, x: number, rise: number): Station['section'] {
  const { y, z } = loftedSection(hull, x);
  const [keel, sheer] = [z[0]!, z.at(-1)!];
  const left = Math.max(HEAD_M, (1 - rise) * (sheer - keel));
  return Array.from(y, (breadth, j) => {
    const share = (z[j]! - keel) / (sheer - keel);
    return [breadth, sheer - left * (1 - share)] as const;
  });
}
