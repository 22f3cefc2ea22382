import type { Boat } from '../document/boat-schema.ts';
import { type PartRoom, partRoom } from '../evaluation/part-clearances.ts';
import { partsOfSeat } from '../evaluation/parts-of.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import type { Hull } from '../hull/hull.ts';
import { innerSkin } from '../hull/inner-skin.ts';
import { PART_LIMITS } from '../parts/limits.ts';
import { footprintOf, type PartName } from '../parts/part.ts';
import type { SeatSetting } from './usual-setting.ts';

/** Where a seat's fittings must find room. Metres. */
export interface Place {
  readonly boat: Boat;
  readonly hull: Hull;
  readonly frame: SeatFrame;
  /** Heel to toe, of the paddler. */
  readonly footLength: number;
}

/** Room that a first setting leaves to every limit, metres: 95 % of placing to 2 mm and turning to 1.5°. */
const ROOM = 0.006;

/** The same for the limits of holes and overhangs, which are marked on the board itself, metres (estimate). */
const MARKED = 0.002;

/** How far inside the hull's face a crew's pad stands at most: it rests partly on the hull (our estimate). */
const PAD_ON_HULL = 0.013;

/** A crew's knee goes no farther to the side than this for it, metres: well inside its band of 4 to 12 cm. */
const FARTHEST_KNEE = 0.095;

/** Places across are tried in steps of a millimetre. */
const STEP = 0.001;

/**
 * A setting brought onto the floorboard, inside the hull and into the hardware's holes: every part within the limits of
 * `PART_LIMITS`, base, top and holes, and a crew's pad brought out to rest partly on the hull. A part without room goes where
 * there is most: the findings then say so.
 */
export function inBoat(setting: SeatSetting, place: Place): SeatSetting {
  const along = alongFloor(setting, place);
  const pad = padInBoat(along, place);
  const rest = movedOut(pad, 'rearRest', (outM) => restRoom(pad, outM, place));
  return movedOut(rest, 'frontFoot', (outM) => footRoom(rest, outM, place));
}

/** Front foot and rear rest between the floorboard's ends, pad and rest in the hardware's holes. */
function alongFloor(setting: SeatSetting, place: Place): SeatSetting {
  const { kneePad, rearRest, frontFoot } = setting;
  const { boat, frame, footLength } = place;
  const { hardware, floorboard } = boat;
  const rest = partsIn(setting, place).rearRest;
  const behindRest = rest.place.x - Math.min(...footprintOf(rest).map(({ x }) => x));
  const restFarthest = frame.stationX - floorboard.aftEndXM - behindRest;
  const footFarthest = floorboard.foreEndXM - frame.stationX - footLength;
  const [near, far] = hardware.restTravelM;
  const restTravel = [near, Math.min(far, restFarthest)] as const;
  return {
    ...setting,
    kneePad: { ...kneePad, aftM: inHole(kneePad.aftM, hardware.padTravelM, hardware.padHolePitchM) },
    rearRest: { ...rearRest, aftM: inHole(rearRest.aftM, restTravel, hardware.restHolePitchM) },
    frontFoot: { ...frontFoot, forwardM: Math.min(frontFoot.forwardM, footFarthest) },
  };
}

/** The setting's parts as solids in the boat. */
function partsIn(setting: SeatSetting, { boat, frame, footLength }: Place) {
  return partsOfSeat(boat, setting, { index: 0, frame, footLength });
}

/** The same setting with one part's place across set. */
function atOut<P extends PartName>(setting: SeatSetting, part: P, outM: number): SeatSetting {
  return { ...setting, [part]: { ...setting[part], outM } };
}

/** The room of one part of a setting where it stands at another place across. */
function roomAt(
  setting: SeatSetting,
  part: PartName,
  { outM, place }: { outM: number; place: Place },
): PartRoom {
  const { hull, boat } = place;
  const tried = partsIn(atOut(setting, part, outM), place)[part];
  return partRoom(tried, { skin: innerSkin(hull, boat.skinM), board: boat.floorboard });
}

/** What is left of a part's room within its limits, metres; negative outside them. Ends of the board are left to `alongFloor`. */
function left(room: PartRoom, limits: { bevel: number; overhang: number }): number {
  return Math.min(
    room.insideHull + limits.bevel - ROOM,
    room.holesToSkin - PART_LIMITS.holeToSkin - MARKED,
    room.holesOnBoard - PART_LIMITS.holeOnBoard - MARKED,
    room.onBoard + limits.overhang - MARKED,
  );
}

/** The pad at the nearest place across where it fits; in a crew it is brought out onto the hull. */
function padInBoat(setting: SeatSetting, place: Place): SeatSetting {
  const crew = place.boat.seats.length > 1;
  const overhang = crew ? PART_LIMITS.crewPadOverhang : PART_LIMITS.padOverhang;
  const roomOf = (outM: number) => roomAt(setting, 'kneePad', { outM, place });
  const inLimits = (outM: number) => left(roomOf(outM), { bevel: PART_LIMITS.padBevel, overhang });
  const found = firstWithRoom(inLimits, setting.kneePad.outM);
  const outM = crew ? ontoHull((at) => roomOf(at).insideHull, inLimits, found) : found;
  return atOut(setting, 'kneePad', outM);
}

/** Room that the rest has at a place across; negative where it has none. */
function restRoom(setting: SeatSetting, outM: number, place: Place): number {
  const { restBevel: bevel, restOverhang: overhang } = PART_LIMITS;
  return left(roomAt(setting, 'rearRest', { outM, place }), { bevel, overhang });
}

/** A foot is not cut to the hull: it keeps its room whole. */
function footRoom(setting: SeatSetting, outM: number, place: Place): number {
  const { footOverhang: overhang } = PART_LIMITS;
  return left(roomAt(setting, 'frontFoot', { outM, place }), { bevel: 0, overhang });
}

/** A part at the first place across with room. */
function movedOut(
  setting: SeatSetting,
  part: 'rearRest' | 'frontFoot',
  room: (outM: number) => number,
): SeatSetting {
  return atOut(setting, part, firstWithRoom(room, setting[part].outM));
}

/** The hole (or millimetre) nearest to `at` within a travel, metres; the nearer end of a travel that holds no hole. */
export function inHole(at: number, travel: readonly [number, number], pitch: number | null): number {
  const [low, high] = [Math.min(...travel), Math.max(...travel)];
  const step = pitch ?? STEP;
  const [least, most] = [Math.ceil(low / step - 1e-6), Math.floor(high / step + 1e-6)];
  if (least > most) return Math.min(high, Math.max(low, at));
  return step * Math.min(most, Math.max(least, Math.round(at / step)));
}

/**
 * Of places a step apart, from `from` toward the centreline and past it as far again: the first with room, else the one with
 * the most. Metres.
 */
function firstWithRoom(room: (outM: number) => number, from: number): number {
  let best = { at: from, room: room(from) };
  const sign = from > 0 ? -1 : 1;
  for (let by = STEP; best.room < 0 && by <= 2 * Math.abs(from) + STEP; by += STEP) {
    const at = from + sign * by;
    const there = room(at);
    if (there > best.room) best = { at, room: there };
  }
  return best.at;
}

/** A crew's pad brought out until it rests partly on the hull, as far as its limits and the knee's allow. */
function ontoHull(
  toHull: (outM: number) => number,
  inLimits: (outM: number) => number,
  from: number,
): number {
  let at = from;
  while (at < FARTHEST_KNEE - STEP / 2 && toHull(at) > PAD_ON_HULL && inLimits(at + STEP) >= 0) at += STEP;
  return at;
}
