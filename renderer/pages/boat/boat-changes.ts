import { boatSchema } from '../../../core/document/boat-schema.ts';
import { usualHullSource } from '../../../core/document/hull-kinds-schema.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { USUAL_NUMBERS } from '../../../core/hull/usual-lines.ts';
import { type BoatValues, boatValues, marksForSeats } from './boat-values.ts';

/** What a usual boat's numbers fill in besides its lines. */
type FilledIn = Pick<BoatValues, 'floorboard' | 'seatsFromSternM'>;

/** Seats of each racing class: the class is named for them. */
const SEATS = { C1: 1, C2: 2, C4: 4 } as const;

const TO_BE_MEASURED = {
  lengthM: null,
  massKg: null,
  floorboard: { heightM: null, widthM: null, thicknessM: 0.008, aftFromSternM: null, foreFromSternM: null },
  seatsFromSternM: [null],
} as const;

/**
 * Everything that changes with a change of a boat's form. A class of the usual lines fills in its numbers; floorboard and
 * seats follow the numbers as long as nobody has set them. A new boat that is measured after all begins from empty entries.
 * A racing class sets the number of seats.
 */
export function withBoatChange(
  values: BoatValues,
  part: Partial<BoatValues>,
  isNew: boolean,
): Partial<BoatValues> {
  const next = { ...values, ...part };
  if (part.hullKind && part.hullKind !== 'usual' && values.hullKind === 'usual') {
    return isNew ? { ...part, ...TO_BE_MEASURED, boatClass: racingClassOf(values) } : part;
  }
  if (next.hullKind !== 'usual') return withClassSeats(values, part);
  if (next.usualClass !== values.usualClass || values.hullKind !== 'usual') {
    const { lengthM, beamM, massKg } = USUAL_NUMBERS[next.usualClass];
    const filled = { ...next, lengthM, beamM, massKg };
    return { ...part, lengthM, beamM, massKg, ...filledIn(filled) };
  }
  const drawnAnew = next.lengthM !== values.lengthM || next.beamM !== values.beamM;
  return drawnAnew && isUntouched(values) ? { ...part, ...filledIn(next) } : part;
}

const racingClassOf = ({ usualClass }: BoatValues) => (usualClass === 'training' ? 'none' : usualClass);

function withClassSeats(values: BoatValues, part: Partial<BoatValues>): Partial<BoatValues> {
  const { boatClass } = part;
  if (!boatClass || boatClass === 'none' || boatClass === values.boatClass) return part;
  return { ...part, seatsFromSternM: marksForSeats(values, SEATS[boatClass]) };
}

/** Floorboard and seats of a usual boat of these numbers; null while a number is missing or out of range. */
function filledIn({ usualClass: boatClass, lengthM, beamM, massKg }: BoatValues): FilledIn | null {
  const { shape } = usualHullSource;
  const length = shape.lengthM.safeParse(lengthM);
  const beam = shape.beamM.safeParse(beamM);
  const mass = boatSchema.shape.massKg.safeParse(massKg);
  if (!length.success || !beam.success) return null;
  const made = usualHull({
    boatClass,
    lengthM: length.data,
    beamM: beam.data,
    ...(mass.success ? { massKg: mass.data } : {}),
  });
  const { floorboard, seatsFromSternM } = boatValues(made);
  return { floorboard, seatsFromSternM };
}

/** Floorboard and seats are those that the numbers filled in, or cannot have been filled in. */
function isUntouched(values: BoatValues): boolean {
  const { floorboard, seatsFromSternM } = values;
  const filled = filledIn(values);
  return !filled || JSON.stringify(filled) === JSON.stringify({ floorboard, seatsFromSternM });
}
