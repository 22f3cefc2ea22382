import type { BodyEstimate } from '../body/body.ts';
import type { Boat } from '../fit/boat-schema.ts';
import type { Seat } from '../fit/seat-schema.ts';
import type { Side } from '../frame/mirror.ts';

/**
 * Fittings to begin a seat with, from the body's proportions in the middle of the usual bands (common practice, no
 * source): everything of a `Seat` but the athlete. Metres and degrees, from the seat's datum.
 */
export function firstSetting(given: {
  body: BodyEstimate;
  boat: Boat;
  stationX: number;
  side: Side;
}): Omit<Seat, 'athlete'> {
  const { body, boat, side } = given;
  const length = (name: keyof BodyEstimate['lengths']) => body.lengths[name].value;
  const millimetre = (value: number) => Math.round(value * 1000) / 1000;
  const crew = boat.seats.length;
  const aftM = 0.175;
  const heightM = crew === 1 ? 0.11 : crew === 4 ? 0.15 : 0.13;
  const outM = crew === 1 ? 0.035 : 0.07;
  const reach = Math.sqrt(Math.max(0.01, length('shank') ** 2 - 0.01));
  const forwardM = 0.62 * (length('thigh') + length('shank')) - length('heelToAnkle') - aftM + 0.14;
  const paddle = millimetre(body.stature - 0.1);
  return {
    side,
    kneePad: {
      aftM,
      outM,
      heightM,
      recessTurnDeg: 12,
      recessDepthM: 0.02,
      lengthM: 0.26,
      widthM: 0.16,
      foamGiveM: 0.008,
      braced: true,
    },
    rearRest: {
      aftM: millimetre(aftM + reach),
      outM: millimetre(outM - 0.135),
      heightM: 0.05,
      turnDeg: 20,
      tiltDeg: 60,
      widthM: 0.12,
      strap: 'releases',
    },
    frontFoot: {
      forwardM: millimetre(forwardM),
      outM: millimetre(outM - 0.095),
      heightM: 0,
      toeOutDeg: 0,
      wedgeDeg: 0,
      nonSlip: true,
    },
    paddle: {
      lengthM: paddle,
      bladeLengthM: millimetre(0.35 * paddle),
      lowerHandM: millimetre(0.41 * paddle),
      bladeAngleDeg: 0,
      massKg: 0.75,
    },
    pins: {},
    locks: [],
    bands: [],
    stroke: {},
  };
}
