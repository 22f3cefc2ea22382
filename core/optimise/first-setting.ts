import type { BodyEstimate } from '../body/body.ts';
import type { Boat } from '../document/boat-schema.ts';
import { type BoatState, boatState, floatCrew } from '../evaluation/boat-state.ts';
import { solveSeat } from '../evaluation/seat-state.ts';
import type { SeatFrame, Side } from '../frame/mirror.ts';
import { floorHeightAt } from '../parts/floor-height.ts';
import { inBoat } from './room-in-boat.ts';
import { movedAft, type SeatSetting, usualSetting } from './usual-setting.ts';

/** Bow over stern at rest that a single begins with, metres: slightly high, by about its doubt with a body not measured. */
const WANTED_TRIM = 0.007;

/** A single's knee begins no nearer an edge of its band (15 to 20 cm aft) than this, metres. */
const KNEE_AFT = { least: 0.16, most: 0.19 } as const;

/** Move over which the trim's answer to a paddler's place is measured, metres. */
const TRIED_MOVE = 0.01;

/** Settings are whole millimetres. */
const GRAIN = 0.001;

/**
 * Fittings to begin a seat with, from athlete and boat alone: the usual places for this body (`usualSetting`); in a
 * single moved aft or forward together, within the knee's band, toward a bow slightly higher than the stern; then brought onto
 * the floorboard, inside the hull and into holes (`inBoat`). A crew's trim is that of all its seats and is left to a proposal.
 * Everything of a `Seat` but the athlete: metres and degrees from the seat's datum at `stationX` (boat frame). A man of 1.80 m
 * begins with his knee 12.5 cm over the floor.
 */
export function firstSetting(given: {
  body: BodyEstimate;
  boat: Boat;
  stationX: number;
  side: Side;
}): SeatSetting {
  const { body, boat, stationX, side } = given;
  const state = boatState({ boat, water: { kind: 'fresh', temperatureC: 15 }, heelDeg: 0 });
  const frame: SeatFrame = { stationX, floorZ: floorHeightAt(boat.floorboard, stationX), side };
  const usual = usualSetting(body, boat.seats.length, side);
  const placed = boat.seats.length === 1 ? trimmed(usual, { body, frame, state }) : usual;
  const place = { boat, hull: state.hull, frame, footLength: body.lengths.footLength.value };
  return inMillimetres(inBoat(placed, place));
}

/** A single's setting moved along the boat toward the wanted trim; as it was where the boat does not float. */
function trimmed(
  usual: SeatSetting,
  { body, frame, state }: { body: BodyEstimate; frame: SeatFrame; state: BoatState },
): SeatSetting {
  const trimAt = (by: number): number | null => {
    const seat = solveSeat({ seat: { ...movedAft(usual, by), athlete: null }, body, frame });
    const afloat = floatCrew(state, [seat], { phase: 'ready' });
    return afloat.kind === 'afloat' ? afloat.bowOverStern : null;
  };
  const [here, there] = [trimAt(0), trimAt(TRIED_MOVE)];
  if (here === null || there === null || there === here) return usual;
  const wanted = (TRIED_MOVE * (WANTED_TRIM - here)) / (there - here);
  const { aftM } = usual.kneePad;
  return movedAft(usual, Math.min(KNEE_AFT.most - aftM, Math.max(KNEE_AFT.least - aftM, wanted)));
}

/** Every place written in whole millimetres. */
function inMillimetres(setting: SeatSetting): SeatSetting {
  const { kneePad, rearRest, frontFoot, paddle } = setting;
  return {
    ...setting,
    kneePad: { ...kneePad, aftM: whole(kneePad.aftM), outM: whole(kneePad.outM) },
    rearRest: { ...rearRest, aftM: whole(rearRest.aftM), outM: whole(rearRest.outM) },
    frontFoot: { ...frontFoot, forwardM: whole(frontFoot.forwardM), outM: whole(frontFoot.outM) },
    paddle: {
      ...paddle,
      lengthM: whole(paddle.lengthM),
      bladeLengthM: whole(paddle.bladeLengthM),
      lowerHandM: whole(paddle.lowerHandM),
    },
  };
}

const whole = (metres: number) => Number((Math.round(metres / GRAIN) * GRAIN).toFixed(3));
