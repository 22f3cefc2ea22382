import type { Boat } from '../document/boat-schema.ts';
import type { Hull } from '../hull/hull.ts';
import { hullLengthOf } from '../hull/hull-length.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import type { FloatResult } from '../hydrostatics/afloat.ts';
import type { FormSpread } from '../hydrostatics/form-doubt.ts';
import { toRadians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';

/**
 * Standard deviations of floating values from the doubt of a hull's data: metres, radians for the angle, N·m per degree of lean
 * for the moment, kilograms per centimetre.
 */
export interface HullSpread {
  /** Water over the lowest point of the keel line amidships. */
  readonly draft: number;
  /** Bow over stern with everybody ready. */
  readonly trimRest: number;
  /** Bow over stern with everybody at the catch. */
  readonly trimCatch: number;
  /** The trim with everybody ready, as an angle. */
  readonly trimAngle: number;
  /** Sheer over water at the foremost station. */
  readonly freeboardBow: number;
  /** Sheer over water at the aftmost station. */
  readonly freeboardStern: number;
  /** Sheer over water where it is least. */
  readonly leastFreeboard: number;
  /** Height of the transverse metacentre over the centre of mass. */
  readonly transverseGm: number;
  /** What the crew must hold for each degree of lean. */
  readonly leanMoment: number;
  /** Kilograms that sink it one centimetre. */
  readonly massPerCentimetre: number;
  /** Half-breadth of the hull's face at a height. The room beside the floorboard (`boardInsideHull`) does not count it. */
  readonly halfBreadth: number;
}

/**
 * Estimates, no published source: a table of offsets against the boat as built (moulding, 2 mm of skin, sag between
 * stands) and a careful tape at five to nine stations, where the shape between the beams is guessed.
 */
const OFFSETS: FormSpread = { volume: 0.012, centre: 0.0004, height: 0.001, beam: 0.004 };
const TAPE: FormSpread = { volume: 0.035, centre: 0.0012, height: 0.003, beam: 0.012 };

/**
 * Share of what fairing adds over straight lines between the given points that is one standard deviation: nothing in a
 * table says how full the hull is between its waterlines. Ellipses, superellipses and Wigley's parabolas at waterlines
 * 5 cm apart miss their true volume by 0 to 0.47 of what was added.
 */
const FAIRED_DOUBT = 0.5;

/** Reading a freeboard in still water with a rule, metres (estimate). */
const READING = 0.0015;

/** A racing single with its paddler, where nothing floats yet: V/A_W, GM_L, BM_T, metres, and the mass afloat. */
const NOMINAL = { volumePerPlane: 0.077, longitudinalGm: 17, transverseBm: 0.1, massKg: 97 };

/**
 * How uncertain draft, trim, freeboards and GM are from the hull's data alone: an **estimate** by first-order propagation of
 * the data's own spread (offsets, tape, the doubt of a usual hull), of half of what fairing between the given points added, or
 * of reading error and what the check left over for a hull that was float-checked. `afloat` gives the sensitivities; without it
 * those of a racing single are used. `hull` avoids building the boat's hull again. Metres, radians, one standard deviation.
 * Dense offsets give about 1.4 mm in draft and 1 mm in trim for a racing single, waterlines 5 cm apart 4 mm in draft, a tape 4
 * and 4, a usual hull 8 and 9.
 */
export function hullSpread(
  boat: Boat,
  afloat: FloatResult | null = null,
  hull: Hull = hullOfBoat(boat),
): HullSpread {
  const data = dataSpread(boat, hull, afloat);
  const length = hullLengthOf(boat.hull);
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
  // Volume found too small puts the boat deeper. Where it lacks below the waterline, both BM and the centre of buoyancy then come out
  // too high; where sections are slack at every height the two all but cancel. The worse case is taken: they add.
  const transverseGm = Math.hypot(3 * data.beam * transverseBm, data.volume * transverseBm + draft / 2);
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
    // Mass over V/A_W is density times the waterplane, which is off as its beam is.
    massPerCentimetre: (0.01 * data.beam * massKg) / volumePerPlane,
    halfBreadth: data.beam * greatestHalfBreadth(hull),
  };
}

/**
 * Standard deviations of a boat's hull by the kind of its data and by what fairing between its points adds. A float check
 * measures the volume itself, as well as its readings allow.
 */
export function hullDataSpread(boat: Boat, hull: Hull): FormSpread {
  const data = dataSpread(boat, hull, null);
  if (!boat.correction) return data;
  const read = Math.hypot(READING, boat.correction.residualM) / Math.SQRT2;
  return { ...data, volume: Math.min(data.volume, read / NOMINAL.volumePerPlane) };
}

/** Standard deviations of a kind of data, with what fairing between its points adds to the doubt of the volume. */
function dataSpread(boat: Boat, hull: Hull, afloat: FloatResult | null): FormSpread {
  if (boat.hull.kind === 'tape') return TAPE;
  if (boat.hull.kind === 'usual') return { ...boat.hull.doubt, height: boat.hull.doubt.heightM };
  const volume = Math.hypot(OFFSETS.volume, FAIRED_DOUBT * fairedShare(hull, afloat));
  return { ...OFFSETS, volume };
}

/** Greatest half-breadth of a hull, metres. */
function greatestHalfBreadth({ rows }: Hull): number {
  return rows.y.subarray(0, rows.count * rows.points).reduce((most, y) => Math.max(most, y), 0);
}

/** Share of the volume under water that fairing added; at half the hull's depth where nothing floats. */
function fairedShare({ levelVolumes, chordVolumes }: Hull, afloat: FloatResult | null): number {
  const most = levelVolumes.length - 1;
  const level = afloat?.kind === 'afloat' ? levelVolumes.findIndex((v) => v >= afloat.volume) : most / 2;
  const at = level < 1 ? most : level;
  return levelVolumes[at]! > 0 ? Math.abs(1 - chordVolumes[at]! / levelVolumes[at]!) : 0;
}

/** Sensitivities of draft, trim and GM to the hull's data, metres, and the mass afloat, kilograms. */
function sensitivities(afloat: FloatResult | null) {
  if (afloat?.kind !== 'afloat') return NOMINAL;
  return {
    volumePerPlane: afloat.volume / afloat.waterplane.area,
    longitudinalGm: Math.max(afloat.longitudinalGm, 1),
    transverseBm: afloat.waterplane.transverseBm,
    massKg: afloat.massKg,
  };
}
