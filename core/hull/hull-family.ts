import type { SectionPoint, Station } from './hull.ts';

/** One hull of this project's own family of canoe lines: metres, and shape numbers without dimension. */
export interface FamilyLines {
  /** Between the ends. */
  readonly lengthM: number;
  /** Full beam at the sheer, greatest. */
  readonly beamM: number;
  /** Keel to sheer amidships, and how much the sheer rises to bow and stern. */
  readonly depthM: number;
  /** Sheer at the bow over the sheer amidships. */
  readonly bowRiseM: number;
  /** Sheer at the stern over the sheer amidships. */
  readonly sternRiseM: number;
  /** How high the keel line stands at its ends. */
  readonly rockerM: number;
  /** Fullness of the plan ahead of mid-length and abaft it: 2 is a parabola, more is fuller toward the end. */
  readonly planFore: number;
  /** As `planFore`, abaft mid-length. */
  readonly planAft: number;
  /** Superellipse exponents: bottom flatness and turn of the bilge. */
  readonly flatness: number;
  /** Exponent of the turn of the bilge; no unit. */
  readonly bilge: number;
  /** Share of straight flare in a half-section, 0–1. */
  readonly flare: number;
}

/** Stations along the boat. */
const STATIONS = 41;
/** Points of each half-section, keel and sheer included; closer together at the keel, where it turns fastest. */
const POINTS = 25;
/** Power of the spacing; 1 would space the heights evenly. */
const CROWDING = 2.6;

/**
 * Stations of a hull of the family, aftmost first, keel to sheer: metres, boat frame, keel amidships at height 0. The
 * plan is 1 − |ξ|ⁿ with an exponent of its own fore and aft, sections are superellipses with some straight flare above; every
 * section and every fore-and-aft line is convex. This project's own drawing: no existing boat was measured.
 */
export function familyStations(lines: FamilyLines): Station[] {
  return Array.from({ length: STATIONS }, (_, i) => {
    const xi = -1 + (2 * i) / (STATIONS - 1);
    return { x: (xi * lines.lengthM) / 2, section: familySection(lines, xi) };
  });
}

/** The half-section at a share of half the length, −1 stern to 1 bow. */
function familySection(lines: FamilyLines, xi: number): SectionPoint[] {
  const plan = 1 - Math.abs(xi) ** (xi > 0 ? lines.planFore : lines.planAft);
  const halfBeam = (lines.beamM / 2) * plan;
  const keel = lines.rockerM * xi ** 4;
  const sheer = lines.depthM + (xi > 0 ? lines.bowRiseM : lines.sternRiseM) * xi * xi;
  return Array.from({ length: POINTS }, (_, k): SectionPoint => {
    const height = (k / (POINTS - 1)) ** CROWDING;
    const round = (1 - (1 - height) ** lines.bilge) ** (1 / lines.flatness);
    return [halfBeam * ((1 - lines.flare) * round + lines.flare * height), keel + (sheer - keel) * height];
  });
}
