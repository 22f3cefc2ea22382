import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';

/** Beam at a share of half the length from midships, for a plain tapered test hull of no particular boat. */
function tapeHull(lengthM: number, beamM: number, depthM: number) {
  const shares = [-0.8, -0.55, -0.3, 0, 0.3, 0.55, 0.8];
  return {
    kind: 'tape' as const,
    lengthM,
    stations: shares.map((share) => {
      const fullness = 1 - share ** 2;
      return {
        xM: (share * lengthM) / 2,
        keelM: 0.03 * share ** 4,
        sheerM: depthM + 0.02 * share ** 2,
        sheerBeamM: beamM * (0.25 + 0.75 * fullness),
        beams: [
          { aboveKeelM: 0.06, beamM: 0.72 * beamM * fullness },
          { aboveKeelM: 0.12, beamM: 0.9 * beamM * fullness },
        ],
      };
    }),
  };
}

/** Width of the test hull 6 cm above its keel, at a share of half its length. */
const widthLow = (beamM: number, share: number) => 0.72 * beamM * (1 - share ** 2);

/** A floorboard that lies in that hull: 23 cm wide at most, 5 cm narrower than the hull at its height. */
function tapered(lengthM: number, beamM: number) {
  const endM = lengthM / 2 - 1;
  const outline = [-1, -0.8, -0.6, -0.4, 0.4, 0.6, 0.8, 1].map((part) => {
    const xM = part * endM;
    return { xM, widthM: Math.min(0.23, widthLow(beamM, (2 * xM) / lengthM) - 0.05) };
  });
  return { heightM: 0.06, widthM: 0.23, aftEndXM: -endM, foreEndXM: endM, outline };
}

/** A made-up boat with one to four seats, 1.15 m apart. */
export function exampleBoat(seats = 1) {
  const length = seats === 1 ? 5.2 : seats === 2 ? 6.5 : 9;
  const beam = seats === 4 ? 0.52 : 0.44;
  const stations = Array.from({ length: seats }, (_, i) => ({ stationM: 1.15 * ((seats - 1) / 2 - i) }));
  return boatSchema.parse({
    name: 'Example hull',
    massKg: [14, 20, 25, 30][seats - 1],
    hull: tapeHull(length, beam, seats === 4 ? 0.34 : 0.3),
    floorboard: tapered(length, beam),
    seats: stations,
  });
}

/** A made-up paddler. */
export function exampleAthlete(more: Record<string, unknown> = {}) {
  return athleteSchema.parse({
    name: 'Example paddler',
    sex: 'male',
    side: 'left',
    statureM: 1.8,
    massKg: 80,
    ...more,
  });
}

/** Fittings in the middle of the usual bands. */
export function exampleSeat(more: Partial<Seat> = {}): Seat {
  const athlete = more.athlete === undefined ? exampleAthlete() : more.athlete;
  return {
    athlete,
    side: 'left',
    kneePad: {
      aftM: 0.175,
      outM: 0.035,
      heightM: 0.11,
      recessTurnDeg: 12,
      recessDepthM: 0.02,
      lengthM: 0.26,
      widthM: 0.16,
      foamGiveM: 0.008,
      braced: true,
    },
    rearRest: {
      aftM: 0.62,
      outM: -0.1,
      heightM: 0.05,
      turnDeg: 20,
      tiltDeg: 60,
      widthM: 0.14,
      strap: 'releases',
    },
    frontFoot: { forwardM: 0.4, outM: -0.06, heightM: 0, toeOutDeg: 0, wedgeDeg: 0, nonSlip: true },
    paddle: { lengthM: 1.7, bladeLengthM: 0.6, lowerHandM: 0.7, bladeAngleDeg: 0, massKg: 0.75 },
    pins: {},
    locks: [],
    bands: [],
    stroke: {},
    ...more,
  };
}

/** A made-up fit with the given seats (one in a single by default). */
export function exampleFit(seats: Seat[] = [exampleSeat()]): Fit {
  return fitSchema.parse({
    format: 'kneelwright-fit/1',
    name: 'Example',
    boat: exampleBoat(seats.length),
    seats,
  });
}
