import type { Boat } from '../fit/boat-schema.ts';
import { frontFootOutline, padOutline, REST_DEPTH, restOutline } from '../fit/fitting-outlines.ts';
import { insideHull } from '../fit/inside-hull.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import type { Hull } from '../hull/hull.ts';
import { toRadians } from '../units/angle.ts';
import type { SeatSetting } from './usual-setting.ts';

/** Where a seat's fittings must find room. Metres. */
export interface Place {
  readonly boat: Boat;
  readonly hull: Hull;
  readonly frame: SeatFrame;
  readonly footLength: number;
}

/** Room that a first setting leaves to the hull's inner face: 95 % of placing to 2 mm and turning to 1.5°. */
const ROOM = 0.006;

/** How far inside the hull's face a crew's pad stands at most: it rests partly on the hull (this project's reading). */
const PAD_ON_HULL = 0.013;

/** A crew's knee goes no farther to the side than this for it, metres: well inside its band of 4 to 12 cm. */
const FARTHEST_KNEE = 0.095;

/** Share of a rest's width in its middle that the foot bears on and that needs floor under it (estimate). */
const BEARING_HALF = 0.5;

/** Places across are tried in steps of a millimetre. */
const STEP = 0.001;

/**
 * A setting brought onto the floorboard, inside the hull and into the hardware's holes. Rear rest and front foot stand on the
 * floor, between its ends and sides (a rest at least with the half that bears); nothing stands in the hull's face; a pad may
 * overhang the floor's side, and a crew's is brought out to rest partly on the hull. What finds no room stands where there is
 * most: the findings then say so.
 */
export function inBoat(setting: SeatSetting, place: Place): SeatSetting {
  const { kneePad, rearRest, frontFoot } = alongFloor(setting, place);
  return {
    ...setting,
    kneePad: padInBoat(kneePad, place),
    rearRest: restInBoat(rearRest, place),
    frontFoot: footInBoat(frontFoot, place),
  };
}

/** Front foot and rear rest between the floorboard's ends, pad and rest in the hardware's holes. */
function alongFloor({ kneePad, rearRest, frontFoot }: SeatSetting, { boat, frame, footLength }: Place) {
  const { hardware, floorboard } = boat;
  const turn = toRadians(rearRest.turnDeg);
  const behindRest = REST_DEPTH * Math.cos(turn) + (rearRest.widthM / 2) * Math.abs(Math.sin(turn));
  const restFarthest = frame.stationX - floorboard.aftEndXM - behindRest;
  const footFarthest = floorboard.foreEndXM - frame.stationX - footLength;
  const [near, far] = hardware.restTravelM;
  const restTravel = [near, Math.min(far, restFarthest)] as const;
  return {
    kneePad: { ...kneePad, aftM: inHole(kneePad.aftM, hardware.padTravelM, hardware.padHolePitchM) },
    rearRest: { ...rearRest, aftM: inHole(rearRest.aftM, restTravel, hardware.restHolePitchM) },
    frontFoot: { ...frontFoot, forwardM: Math.min(frontFoot.forwardM, footFarthest) },
  };
}

/** The hole (or millimetre) nearest to `at` within a travel; the nearer end of a travel that holds no hole. */
function inHole(at: number, travel: readonly [number, number], pitch: number | null): number {
  const [low, high] = [Math.min(...travel), Math.max(...travel)];
  const grain = pitch ?? STEP;
  const [least, most] = [Math.ceil(low / grain - 1e-6), Math.floor(high / grain + 1e-6)];
  if (least > most) return Math.min(high, Math.max(low, at));
  return grain * Math.min(most, Math.max(least, Math.round(at / grain)));
}

function padInBoat(pad: SeatSetting['kneePad'], { boat, hull, frame }: Place): SeatSetting['kneePad'] {
  const toHull = (outM: number) => insideHull(padOutline({ ...pad, outM }, frame), hull, boat.skinM);
  const outM =
    boat.seats.length > 1
      ? ontoHull(toHull, pad.outM)
      : firstWithRoom((tried) => toHull(tried) - ROOM, pad.outM);
  return { ...pad, outM };
}

function restInBoat(rest: SeatSetting['rearRest'], { boat, hull, frame }: Place): SeatSetting['rearRest'] {
  const room = (outM: number) => {
    const toHull = insideHull(restOutline({ ...rest, outM }, frame), hull, boat.skinM);
    const toFloorSide = boat.floorboard.widthM / 2 - Math.abs(outM) - BEARING_HALF * (rest.widthM / 2);
    return Math.min(toHull - ROOM, toFloorSide);
  };
  return { ...rest, outM: firstWithRoom(room, rest.outM) };
}

function footInBoat(
  foot: SeatSetting['frontFoot'],
  { boat, hull, frame, footLength }: Place,
): SeatSetting['frontFoot'] {
  const room = (outM: number) => {
    const print = frontFootOutline({ ...foot, outM }, footLength, frame);
    const toFloorSide = boat.floorboard.widthM / 2 - Math.max(...print.map(({ y }) => Math.abs(y)));
    return Math.min(insideHull(print, hull, boat.skinM) - ROOM, toFloorSide);
  };
  return { ...foot, outM: firstWithRoom(room, foot.outM) };
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

/** A crew's pad brought out until it rests partly on the hull, as far as the knee may go. */
function ontoHull(toHull: (outM: number) => number, from: number): number {
  let at = from;
  while (at < FARTHEST_KNEE - STEP / 2 && toHull(at) > PAD_ON_HULL) at += STEP;
  return at;
}
