import type { Boat } from '../fit/boat-schema.ts';
import type { FloatResult } from '../float/afloat.ts';
import { toRadians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';

/**
 * Standard deviations that a hull's own data bring to what is computed afloat: metres, radians for the angle, N·m per degree
 * of lean for the moment.
 */
export interface HullSpread {
  readonly draft: number;
  readonly trimRest: number;
  readonly trimCatch: number;
  readonly trimAngle: number;
  readonly freeboardBow: number;
  readonly freeboardStern: number;
  readonly leastFreeboard: number;
  readonly transverseGm: number;
  readonly leanMoment: number;
}

/** How truly a hull's data describe it, one standard deviation. */
interface DataSpread {
  /** Volume under a given draft, relative. */
  readonly volume: number;
  /** Centre of buoyancy fore and aft, share of the length. */
  readonly centre: number;
  /** Height of keel or sheer at one place, metres. */
  readonly height: number;
  /** Beam at the water, relative; BM goes with its cube. */
  readonly beam: number;
}

/**
 * Estimates, no published source: a table of offsets against the boat as built (moulding, 2 mm of skin, sag between
 * stands) and a careful tape at five to nine stations, where the shape between the beams is guessed.
 */
const OFFSETS: DataSpread = { volume: 0.012, centre: 0.0004, height: 0.001, beam: 0.004 };
const TAPE: DataSpread = { volume: 0.035, centre: 0.0012, height: 0.003, beam: 0.012 };

/** Reading a freeboard in still water with a rule, metres (estimate). */
const READING = 0.0015;

/** A racing single with its paddler, where nothing floats yet: V/A_W, GM_L, BM_T, metres, and the mass afloat. */
const NOMINAL = { volumePerPlane: 0.077, longitudinalGm: 17, transverseBm: 0.1, massKg: 97 };

/**
 * How uncertain draft, trim, freeboards and GM are from the hull's data alone: an **estimate** by first-order
 * propagation of the data's own spread (offsets, tape), or of reading error and what the check left over for a hull
 * that was float-checked. `afloat` gives the sensitivities; without it those of a racing single are taken. Metres,
 * radians, one standard deviation. Offsets give about 1.4 mm in draft and 1 mm in trim for a racing single, a tape 4 and 4.
 */
export function hullSpread(boat: Boat, afloat: FloatResult | null = null): HullSpread {
  const data = boat.hull.kind === 'offsets' ? OFFSETS : TAPE;
  const length = lengthOf(boat);
  const { volumePerPlane, longitudinalGm, transverseBm, massKg } = sensitivities(afloat);
  // Volume short by a share sinks the boat by that share of V/A_W; a centre of buoyancy off by d trims it by d/GM_L.
  let draft = Math.hypot(data.volume * volumePerPlane, data.height);
  let trim = Math.hypot((length * data.centre * length) / longitudinalGm, data.height);
  if (boat.correction) {
    const read = Math.hypot(READING, boat.correction.residualM);
    const marks = boat.floatCheck ? boat.floatCheck.bowMarkXM - boat.floatCheck.sternMarkXM : length;
    draft = Math.min(draft, read / Math.SQRT2);
    trim = Math.min(trim, (read * length) / Math.max(marks, length / 4));
  }
  const end = Math.hypot(draft, trim / 2, data.height);
  const transverseGm = Math.hypot(3 * data.beam * transverseBm, data.volume * transverseBm, draft / 2);
  return {
    draft,
    trimRest: trim,
    trimCatch: trim,
    trimAngle: trim / length,
    freeboardBow: end,
    freeboardStern: end,
    leastFreeboard: Math.hypot(draft, data.height),
    transverseGm,
    leanMoment: transverseGm * massKg * GRAVITY * toRadians(1),
  };
}

/** Length between the hull's ends, metres, without making the hull. */
function lengthOf({ hull }: Boat): number {
  if (hull.kind === 'tape') return hull.lengthM;
  const places = hull.stations.map((s) => s.xM);
  return Math.max(...places) - Math.min(...places);
}

/** How draft, trim and GM answer to the hull's data, metres, and the mass afloat, kilograms. */
function sensitivities(afloat: FloatResult | null) {
  if (afloat?.kind !== 'afloat') return NOMINAL;
  return {
    volumePerPlane: afloat.volume / afloat.waterplane.area,
    longitudinalGm: Math.max(afloat.longitudinalGm, 1),
    transverseBm: afloat.waterplane.transverseBm,
    massKg: afloat.massKg,
  };
}
