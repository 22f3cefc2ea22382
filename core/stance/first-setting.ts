import type { BodyEstimate } from '../body/body.ts';
import type { Boat } from '../fit/boat-schema.ts';
import type { Seat } from '../fit/seat-schema.ts';
import type { Side } from '../frame/mirror.ts';

/**
 * Fittings to begin a seat with, from the body's proportions inside the usual bands (common practice, no source),
 * where proposals for invented paddlers of all sizes ended on average: everything of a `Seat` but the athlete. Metres and degrees, from the seat's datum.
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
  const single = crew === 1;
  const aftM = single ? 0.19 : 0.155;
  const heightM = single ? 0.14 : 0.15;
  const outM = single ? 0.028 : 0.07;
  const reach = Math.sqrt(Math.max(0.01, length('shank') ** 2 - 0.01)) + (single ? 0.03 : 0.015);
  const legs = 0.62 * (length('thigh') + length('shank'));
  const forwardM = legs - length('heelToAnkle') - aftM + (single ? 0.065 : 0.08);
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
      outM: millimetre(outM - (single ? 0.12 : 0.16)),
      heightM: 0.05,
      turnDeg: 20,
      tiltDeg: 60,
      widthM: 0.12,
      strap: 'releases',
    },
    frontFoot: {
      forwardM: millimetre(forwardM),
      outM: millimetre(outM - (single ? 0.038 : 0.11)),
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
