import { athleteSchema, tapeReadingSchema } from '../document/athlete-schema.ts';
import { isoDate, label } from '../document/measure-schema.ts';
import { type LengthUnit, parseLength } from '../units/length-text.ts';
import { type MassUnit, parseMass } from '../units/mass-text.ts';
import type { MeasureProblem, ParsedMeasure } from '../units/measure-text.ts';
import type { AthleteColumn } from './athlete-columns.ts';

/** What is wrong with one cell, and what would be allowed. Sentences belong to whoever shows them. */
export type CellProblem =
  | { readonly code: 'needed' }
  | { readonly code: 'measure'; readonly problem: MeasureProblem }
  /** A measure outside its limits, all three in metres or kilograms. */
  | {
      readonly code: 'outside';
      readonly value: number;
      readonly min: number;
      readonly max: number;
      readonly kind: 'length' | 'mass';
    }
  | { readonly code: 'choice'; readonly allowed: readonly string[] }
  | { readonly code: 'date' }
  /** 3/4/2012: which is the month cannot be told. */
  | { readonly code: 'date-unclear' }
  /** A day that has not come yet. */
  | { readonly code: 'date-ahead' }
  | { readonly code: 'too-long'; readonly most: number }
  /** No athlete here has this identifier. */
  | { readonly code: 'unknown-identifier' }
  /** Several athletes here have this name; the identifier must say which. */
  | { readonly code: 'several-of-this-name' }
  /** The same athlete stands in an earlier row of the table. */
  | { readonly code: 'same-as-row'; readonly row: number };

/** A cell as read: a text or a number in SI, nothing, or what is wrong. */
export type ReadCell =
  | { readonly ok: true; readonly value: string | number | null }
  | { readonly ok: false; readonly problem: CellProblem };

/** A cell that was read. */
const good = (value: string | number | null): ReadCell => ({ ok: true, value });
const bad = (problem: CellProblem): ReadCell => ({ ok: false, problem });

/** Reads one cell of a table of athletes; lengths come in metres, masses in kilograms, an empty cell as null. */
export function readAthleteCell(text: string, { field, unit }: AthleteColumn): ReadCell {
  const said = text.trim();
  if (said === '') return good(null);
  switch (field.of) {
    case 'name':
      return readName(said);
    case 'id':
      return good(said.toLowerCase());
    case 'side':
      return readChoice(said, SIDES);
    case 'sex':
      return readChoice(said, SEXES);
    case 'bornOn':
    case 'measuredOn':
    case 'takenOn':
      return readDate(said);
    case 'mass':
      return within(parseMass(said, { defaultUnit: unit as MassUnit }), athleteSchema.shape.massKg, 'mass');
    case 'stature':
      return readLength(said, unit, athleteSchema.shape.statureM);
    case 'tape':
      return readLength(said, unit, tapeReadingSchema.shape.valueM);
    case 'spread':
      return readLength(said, unit, tapeReadingSchema.shape.sdM.unwrap());
  }
}

/**
 * Table programs take a cell that begins with one of these for a formula; such a cell is written with an apostrophe before
 * it, which does not belong to the name.
 */
const GUARDED = /^'(?=[=+\-@\t\r])/;

/** A name, without the apostrophe that guards it from being read as a formula. */
function readName(said: string): ReadCell {
  const read = label.safeParse(said.replace(GUARDED, ''));
  return read.success ? good(read.data) : bad({ code: 'too-long', most: label.maxLength ?? 0 });
}

/** Words for the choices, in the languages of the headings. */
const SIDES = {
  left: ['left', 'l', 'links', 'bal', 'izquierda', 'izquierdo', 'lewa', 'lewy', '左'],
  right: ['right', 'r', 'rechts', 'jobb', 'derecha', 'derecho', 'prawa', 'prawy', '右'],
} as const;
/** What clubs write for each sex, in six languages. */
const SEXES = {
  female: ['female', 'f', 'w', 'weiblich', 'nő', 'mujer', 'femenino', 'kobieta', 'żeńska', 'k', '女'],
  male: ['male', 'm', 'männlich', 'férfi', 'hombre', 'masculino', 'mężczyzna', 'męska', '男'],
  unspecified: [
    ...['unspecified', 'unsaid', 'x', '-', '–', 'not given', 'keine angabe', 'nincs megadva'],
    ...['sin indicar', 'no indicado', 'nie podano', '未填写', '未填'],
  ],
} as const;

/** A word out of a fixed list, in any letter case. */
function readChoice(said: string, choices: Readonly<Record<string, readonly string[]>>): ReadCell {
  const chosen = Object.keys(choices).find((choice) => choices[choice]!.includes(said.toLowerCase()));
  return chosen ? good(chosen) : bad({ code: 'choice', allowed: Object.keys(choices) });
}

/** `2012-03-04`, `4.3.2012`, and with slashes only where no month can be meant by the other number. */
function readDate(said: string): ReadCell {
  const [, dotDay, dotMonth, dotYear] = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(said) ?? [];
  const [, first, second, year] = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(said) ?? [];
  const date = dotYear ? iso(dotYear, dotMonth!, dotDay!) : year ? slashed(year, first!, second!) : said;
  if (date === null) return bad({ code: 'date-unclear' });
  return isoDate.safeParse(date).success ? good(date) : bad({ code: 'date' });
}

/**
 * A date with slashes: told only where day and month are equal or one of them is over 12; else null, for a guess
 * may be wrong.
 */
function slashed(year: string, first: string, second: string): string | null {
  if (first === second || Number(second) > 12) return iso(year, first, second);
  return Number(first) > 12 ? iso(year, second, first) : null;
}

/** `YYYY-MM-DD`. */
function iso(year: string, month: string, day: string): string {
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

/** The least and the most that a schema allows, SI. */
type Limited = { readonly minValue: number | null; readonly maxValue: number | null };

/** A length in any unit, or a bare number in the column's. */
function readLength(said: string, unit: AthleteColumn['unit'], limits: Limited): ReadCell {
  return within(parseLength(said, { defaultUnit: unit as LengthUnit }), limits, 'length');
}

/** Dust of the decimal point's way through a unit does not belong in a value: a tenth of a micrometre, of a milligram. */
const TIDY_DECIMALS = 7;

/** A measure inside its limits, tidied of what conversion leaves behind. */
function within(parsed: ParsedMeasure, limits: Limited, kind: 'length' | 'mass'): ReadCell {
  if (!parsed.ok) return bad({ code: 'measure', problem: parsed.problem });
  const value = Number(parsed.value.toFixed(TIDY_DECIMALS));
  const [min, max] = [
    limits.minValue ?? Number.NEGATIVE_INFINITY,
    limits.maxValue ?? Number.POSITIVE_INFINITY,
  ];
  return value < min || value > max ? bad({ code: 'outside', value, min, max, kind }) : good(value);
}
