import type { SeatFrame } from '../frame/mirror.ts';
import type { Board } from './board.ts';
import { BOLT_CLEARANCE, boltsAcross, type Fixed, holeAt, PILOT, screwsAt } from './fixing-holes.ts';
import { type FixingHole, type Part, type PlanPoint, solidPart } from './part.ts';
import {
  type FootSizes,
  footShape,
  type PadSizes,
  padShape,
  type RestSizes,
  restShape,
  type Shaped,
} from './part-shapes.ts';
import { boltsOnRails, type RailPair } from './rails.ts';

/** Foam that lines a recess where neither pad nor stock gives one, metres (common practice, no source). */
export const USUAL_FOAM = 0.01;

/** Usual diameter of a bolt, metres: M6 (common practice, no source). */
export const USUAL_BOLT = 0.006;

/** A seat's fittings as the document has them. */
export interface SeatFittings {
  readonly kneePad: PadSizes;
  readonly rearRest: RestSizes;
  readonly frontFoot: FootSizes;
}

/** What the parts of a seat stand on and are fixed with. Metres. */
export interface PartsPlace {
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly frame: SeatFrame;
  /** Heel to toe, of the paddler. */
  readonly footLength: number;
  readonly board: Board;
  /** Pitch of the hardware's holes; null for screws that may go anywhere. */
  readonly padHolePitchM: number | null;
  /** As `padHolePitchM`, for the rear rest. */
  readonly restHolePitchM: number | null;
  /** Diameter of the bolts; 6 mm unless given. */
  readonly boltM?: number | undefined;
  /** Rails that fittings are bolted to. */
  readonly rails?: readonly RailPair[] | undefined;
}

/** The three parts of one seat. */
export interface SeatParts {
  readonly kneePad: Part;
  readonly rearRest: Part;
  readonly frontFoot: Part;
}

/**
 * Knee pad, rear rest and front foot of a seat as solids with their fixing holes, boat frame, metres. This is the one geometry
 * that clearances, drawing, sheets and templates use. A front foot has no holes of its own: sheet and wedge are glued.
 */
export function seatParts({ kneePad, rearRest, frontFoot }: SeatFittings, place: PartsPlace): SeatParts {
  const { frame, footLength } = place;
  const pad = padShape(kneePad, frame);
  const rest = restShape(rearRest, frame);
  return {
    kneePad: part('kneePad', pad, { place, holes: padHoles(pad, place, kneePad) }),
    rearRest: part('rearRest', rest, { place, holes: restHoles(rest, place) }),
    frontFoot: part('frontFoot', footShape(frontFoot, footLength, frame), { place, holes: [] }),
  };
}

/** One part of the seat with its holes. */
function part(
  name: Part['part'],
  shaped: Shaped,
  { place, holes }: { place: PartsPlace; holes: readonly FixingHole[] },
): Part {
  const { seat, board, frame } = place;
  return { ...solidPart({ seat, part: name }, shaped, { board, floorZ: frame.floorZ }), holes };
}

/** Bolts of the pad straight across under the knee's bearing point, or screws near its four corners. */
function padHoles(
  { place, shape }: Shaped,
  { board, padHolePitchM, boltM, rails }: PartsPlace,
  pad: PadSizes,
): FixingHole[] {
  // No bolt comes up into the recess: its deepest place is the bottom of the cut for the foam.
  const solidM = Math.max(0, pad.heightM - (pad.foamM ?? USUAL_FOAM));
  const fixed = { place, shape, board, solidM };
  const onRails = railHoles(fixed, { rails, fitting: 'kneePad', along: 0 });
  if (onRails) return onRails;
  const { baseFore, baseAft, half } = shape;
  if (padHolePitchM !== null) {
    const base = { along: 0, halfLength: Math.min(baseFore, -baseAft), half };
    return holes(fixed, boltsAcross(fixed, base), boltHole(boltM));
  }
  const corners = [
    { along: baseFore, across: half },
    { along: baseFore, across: -half },
    { along: baseAft, across: -half },
    { along: baseAft, across: half },
  ];
  return holes(fixed, screwsAt(fixed, corners), PILOT);
}

/** Bolts of the rest straight across under the middle of its base, or screws along its middle near its ends. */
function restHoles(
  { place, shape }: Shaped,
  { board, restHolePitchM, boltM, rails }: PartsPlace,
): FixingHole[] {
  const fixed = { place, shape, board };
  const { baseFore, baseAft, half } = shape;
  const middle = (baseFore + baseAft) / 2;
  const onRails = railHoles(fixed, { rails, fitting: 'rearRest', along: middle });
  if (onRails) return onRails;
  if (restHolePitchM !== null) {
    const base = { along: middle, halfLength: (baseFore - baseAft) / 2, half };
    return holes(fixed, boltsAcross(fixed, base), boltHole(boltM));
  }
  const ends = [half, -half].map((across) => ({ along: middle, across }));
  return holes(fixed, screwsAt(fixed, ends), PILOT);
}

/** Bolts of a fitting in its rails; null where it has none. */
function railHoles(
  fixed: Fixed,
  { rails = [], fitting, along }: { rails: PartsPlace['rails']; fitting: RailPair['fitting']; along: number },
): FixingHole[] | null {
  const pair = rails.find((one) => one.fitting === fitting);
  if (!pair) return null;
  return holes({ ...fixed, raisedM: pair.heightM }, boltsOnRails(fixed, pair, along), pair.holeM);
}

/** The hole that a bolt goes through with clearance. */
const boltHole = (boltM = USUAL_BOLT) => boltM + BOLT_CLEARANCE;

/** Holes of a part at the given places. */
function holes(fixed: Fixed, places: readonly PlanPoint[], diameterM: number): FixingHole[] {
  return places.map((at) => holeAt(fixed, at, diameterM));
}
