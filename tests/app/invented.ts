import { type Athlete, athleteSchema } from '../../core/document/athlete-schema.ts';
import { type Boat, boatSchema } from '../../core/document/boat-schema.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { type StockPaddleDocument, stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';

/** An invented athlete; a name may be given. */
export function inventedAthlete(name = 'Žofie Łęcka', more: Partial<Athlete> = {}): Athlete {
  return athleteSchema.parse({ name, sex: 'female', side: 'left', statureM: 1.68, massKg: 61, ...more });
}

/** An invented single, measured by tape. */
export function inventedBoat(name = 'Grey Heron', more: Partial<Boat> = {}): Boat {
  const stations = [-2.4, -1.2, 0, 1.2, 2.4].map((xM) => ({
    xM,
    keelM: 0.02 * Math.abs(xM),
    sheerM: 0.3,
    sheerBeamM: 0.5 - 0.15 * Math.abs(xM),
    beams: [{ aboveKeelM: 0.1, beamM: 0.4 - 0.12 * Math.abs(xM) }],
  }));
  return boatSchema.parse({
    name,
    massKg: 15,
    hull: { kind: 'tape', lengthM: 5.2, stations },
    floorboard: { heightM: 0.06, widthM: 0.25, aftEndXM: -1.2, foreEndXM: 1 },
    seats: [{ stationM: 0 }],
    ...more,
  });
}

/** A complete fit of one invented athlete in one invented boat. */
export function inventedFit(more: { name?: string; athlete?: Athlete | null; padAftM?: number } = {}): Fit {
  const { name = 'First try', athlete = inventedAthlete(), padAftM = 0.1 } = more;
  return fitSchema.parse({
    format: FIT_FORMAT,
    name,
    boat: inventedBoat(),
    seats: [
      {
        athlete,
        side: 'left',
        kneePad: { aftM: padAftM, outM: 0.03, heightM: 0.09 },
        rearRest: { aftM: 0.6, outM: -0.02, heightM: 0.1 },
        frontFoot: { forwardM: 0.3, outM: -0.08 },
        paddle: { lengthM: 1.6, bladeLengthM: 0.5, lowerHandM: 0.9 },
      },
    ],
  });
}

/** An invented paddle of the club. */
export function inventedPaddle(name = 'Reed', more: Partial<StockPaddleDocument> = {}): StockPaddleDocument {
  return stockPaddleSchema.parse({ name, lengthM: 1.62, bladeLengthM: 0.54, ...more });
}

/** The smallest whole PNG: one white pixel. */
export function inventedPicture(): Buffer {
  return Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsTj2FAAAAABJRU5ErkJggg==',
    'base64',
  );
}

/** A JPEG of 16 by 12 pixels, red above and blue below. */
export function inventedJpeg(): Buffer {
  const lines = [
    '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywtQFdB',
    'RkxOUlNSMj5aYVpQYEpRUk//2wBDAQ4ODhMREyYVFSZPNS01T09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09P',
    'T09PT09PT09PT09PT0//wAARCAAMABADASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAAAAUG/8QAGRAAAQUAAAAAAAAA',
    'AAAAAAAAAAISFFFh/8QAFQEBAQAAAAAAAAAAAAAAAAAABQb/xAAXEQADAQAAAAAAAAAAAAAAAAAAAxUW/9oADAMBAAIRAxEA',
    'PwDLSNEjSa9Vh6rKPPqFbbD/2Q==',
  ];
  return Buffer.from(lines.join(''), 'base64');
}
