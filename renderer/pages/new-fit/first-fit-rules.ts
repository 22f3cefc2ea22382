import { z } from 'zod';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { usualHullSource } from '../../../core/document/hull-kinds-schema.ts';
import type { UsualClass } from '../../../core/document/usual-classes.ts';
import type { Side } from '../../../core/frame/mirror.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { USUAL_NUMBERS } from '../../../core/hull/usual-lines.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';

/** The few entries of a first fit. Metres, kilograms. */
export interface FirstFitValues {
  readonly name: string;
  readonly side: Side | null;
  readonly statureM: number | null;
  readonly massKg: number | null;
  readonly boatClass: UsualClass;
  readonly lengthM: number | null;
  readonly beamM: number | null;
  readonly boatMassKg: number | null;
}

/** Name under which unfinished entries are kept. */
export const FIRST_FIT = 'first-fit';

const numbersOf = (boatClass: UsualClass) => {
  const { lengthM, beamM, massKg } = USUAL_NUMBERS[boatClass];
  return { boatClass, lengthM, beamM, boatMassKg: massKg };
};

export const FIRST_FIT_START: FirstFitValues = {
  name: '',
  side: null,
  statureM: null,
  massKg: null,
  ...numbersOf('C1'),
};

/** A class fills in its numbers. */
export function withClassNumbers(
  values: FirstFitValues,
  part: Partial<FirstFitValues>,
): Partial<FirstFitValues> {
  const { boatClass } = part;
  return boatClass && boatClass !== values.boatClass ? { ...part, ...numbersOf(boatClass) } : part;
}

const { name, side, statureM, massKg } = athleteSchema.shape;
const { lengthM, beamM } = usualHullSource.shape;

/** Limits of the entries. */
const FIELDS = z.object({
  name,
  side,
  statureM,
  massKg,
  boatClass: usualHullSource.shape.boatClass,
  lengthM,
  beamM,
  boatMassKg: boatSchema.shape.massKg,
});

/** An athlete and a usual boat out of the entries. */
export const FIRST_FIT_RULES: FormRules<FirstFitValues, z.infer<typeof FIELDS>> = {
  schema: FIELDS,
};

/** The athlete and the boat that the entries describe. */
export function athleteAndBoat(entered: z.infer<typeof FIELDS>) {
  const { boatClass, boatMassKg } = entered;
  return {
    athlete: athleteSchema.parse({
      name: entered.name,
      side: entered.side,
      statureM: entered.statureM,
      massKg: entered.massKg,
      sex: 'unspecified',
      measuredOn: today(),
    }),
    boat: usualHull({
      boatClass,
      lengthM: entered.lengthM,
      beamM: entered.beamM,
      massKg: boatMassKg,
      name: say(`boat.usual.name.${boatClass}`),
    }),
  };
}
