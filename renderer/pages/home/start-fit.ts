import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { seatSchema } from '../../../core/document/seat-schema.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { USUAL_NUMBERS } from '../../../core/hull/usual-lines.ts';

/** Somebody of about mean size, in the setting that a first fit begins with: written down, so that the page need not search. */
const SEAT = seatSchema.parse({
  athlete: athleteSchema.parse({
    name: '–',
    sex: 'unspecified',
    side: 'left',
    statureM: 1.74,
    massKg: 70,
  }),
  side: 'left',
  kneePad: {
    aftM: 0.197,
    outM: 0.03,
    heightM: 0.136,
    recessTurnDeg: 12,
    recessDepthM: 0.02,
    lengthM: 0.26,
    widthM: 0.16,
    foamGiveM: 0.008,
    braced: true,
  },
  rearRest: {
    aftM: 0.641,
    outM: -0.067,
    heightM: 0.05,
    turnDeg: 20,
    tiltDeg: 60,
    widthM: 0.12,
    strap: 'releases',
  },
  frontFoot: { forwardM: 0.327, outM: -0.03, heightM: 0, toeOutDeg: 0, wedgeDeg: 0, nonSlip: true },
  paddle: { lengthM: 1.64, bladeLengthM: 0.574, lowerHandM: 0.836, bladeAngleDeg: 0, massKg: 0.75 },
});

/** The fit that the empty sheet shows: a usual single. */
export function startFit(): Fit {
  const boat = usualHull({ ...USUAL_NUMBERS.C1, name: '–' });
  return fitSchema.parse({ format: FIT_FORMAT, name: '–', boat, seats: [SEAT] });
}
