import type { BodyEstimate } from '../body/body.ts';
import { type Athlete, athleteSchema } from '../document/athlete-schema.ts';
import type { Boat } from '../document/boat-schema.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../document/fit-schema.ts';
import { freeCoordinates } from '../document/fitting-coordinate.ts';
import { createEvaluator, type Evaluator } from '../evaluation/evaluator.ts';
import type { Finding } from '../evaluation/finding.ts';
import type { SeatFrame, Side } from '../frame/mirror.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import { floorHeightAt } from '../parts/floor-height.ts';
import { middleEdges } from './edges.ts';
import { isSerious, placeable } from './objective.ts';
import { withOffersTaken } from './offers-taken.ts';
import { propose } from './propose.ts';
import { inBoat } from './room-in-boat.ts';
import { beginning, smallestChange } from './smallest-change.ts';
import { fromSingle, type SeatSetting, usualSetting } from './usual-setting.ts';

/** Settings are whole millimetres. */
const WOOD_STEP = 0.001;

/** Input of a first setting: body, boat, the seat's datum (boat frame, metres) and side. */
export interface FirstGiven {
  readonly body: BodyEstimate;
  readonly boat: Boat;
  /** Forward of amidships. */
  readonly stationX: number;
  readonly side: Side;
  /** The paddler's setting in a single, which a seat in a crew begins from. */
  readonly single?: SeatSetting;
  /** The athlete's own limits and bands, which the setting keeps like all others. */
  readonly own?: Pick<Athlete, 'limits' | 'bands'>;
}

/**
 * Fittings to begin a seat with: the middle of what holds for this body in this boat. From the usual places scaled by the body
 * (`usualSetting`), or in a crew from the paddler's own single, brought into the boat (`inBoat`), the smallest moves are made that
 * bring every judged value as far inside its band as its doubt asks (`middleEdges`): clearances, holes and floorboard, posture,
 * support, and in a single the trim. In a single no check is then left that a change would clear (`withOffersTaken`). A crew's trim is that of all its seats: `levelledFit`. Everything of a `Seat` but the
 * athlete: metres and degrees from the seat's datum. Deterministic.
 */
export function firstSetting(given: FirstGiven): SeatSetting {
  const { body, boat, stationX, side, single } = given;
  const hull = hullOfBoat(boat);
  const frame: SeatFrame = { stationX, floorZ: floorHeightAt(boat.floorboard, stationX), side };
  const usual = single
    ? fromSingle(single, body, { crew: boat.seats.length, side })
    : usualSetting(body, boat.seats.length, side);
  const placed = inBoat(usual, { boat, hull, frame, footLength: body.lengths.footLength.value });
  return middleOf(inMillimetres(placed), given);
}

/** A setting moved to the middle of what holds. */
function middleOf(setting: SeatSetting, { body, boat, stationX, own }: FirstGiven): SeatSetting {
  const index = Math.max(
    0,
    boat.seats.findIndex(({ stationM }) => stationM === stationX),
  );
  const evaluator = createEvaluator(() => body);
  const seats = boat.seats.map((_, i) => ({
    ...setting,
    bands: own?.bands ?? setting.bands,
    athlete: i === index ? somebody(body, setting.side, own) : null,
  }));
  const stations = boat.seats.map((seat, i) => (i === index ? { ...seat, stationM: stationX } : seat));
  const fit: Fit = fitSchema.parse({
    format: FIT_FORMAT,
    name: '–',
    boat: { ...boat, seats: stations },
    seats,
  });
  const held = evaluator.evaluate(fit);
  const places = freeCoordinates(fit.seats[index]!).map((coordinate) => ({ seat: index, coordinate }));
  const search = { evaluator, fit, held, places };
  const asked = boat.seats.length === 1 ? () => true : (f: Finding) => f.seat !== null;
  const found = smallestChange(search, middleEdges(held, asked), { from: beginning(search), measurings: 1 });
  const middle = clearedOf(evaluator, found.here.fit, index);
  const settled = boat.seats.length === 1 ? withOffersTaken({ evaluator, fit: middle, places }) : middle;
  const { athlete: _, ...moved } = settled.seats[index]!;
  return { ...moved, bands: setting.bands };
}

/** A setting that still leaves something to change or stop, as a hard personal limit may, is changed like any fit. */
function clearedOf(evaluator: Evaluator, fit: Fit, index: number): Fit {
  const { findings } = evaluator.evaluate(fit);
  const serious = placeable(findings).filter((f) => f.seat === index && isSerious(f));
  return serious.length > 0 ? propose(evaluator, fit, [index]).fit : fit;
}

/** A stand-in athlete for a body while it is evaluated. */
function somebody({ stature, mass }: BodyEstimate, side: Side, own: FirstGiven['own']) {
  const limits = own?.limits ?? [];
  return athleteSchema.parse({
    name: '–',
    sex: 'unspecified',
    side,
    statureM: stature,
    massKg: mass,
    limits,
  });
}

/** Every place written in whole millimetres. */
function inMillimetres(setting: SeatSetting): SeatSetting {
  const { kneePad, rearRest, frontFoot, paddle } = setting;
  return {
    ...setting,
    kneePad: {
      ...kneePad,
      aftM: whole(kneePad.aftM),
      outM: whole(kneePad.outM),
      heightM: whole(kneePad.heightM),
    },
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

/** Rounded to the step that wood is worked to, metres. */
const whole = (metres: number) => Number((Math.round(metres / WOOD_STEP) * WOOD_STEP).toFixed(3));
