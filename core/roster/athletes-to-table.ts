import type { Athlete } from '../document/athlete-schema.ts';
import type { Words } from '../text/words.ts';
import { LENGTH_UNITS } from '../units/length-text.ts';
import { ATHLETE_COLUMNS, type AthleteColumn, type AthleteField, headingOf } from './athlete-columns.ts';

/** Decimals kept in a written number: a hundredth of a micrometre in centimetres, so that nothing is lost on the way. */
const DECIMALS = 6;

/** Columns that are written even when nobody has anything in them: those that a new athlete needs. */
const ALWAYS: readonly AthleteField['of'][] = [
  'name',
  'side',
  'sex',
  'bornOn',
  'stature',
  'mass',
  'measuredOn',
];

/**
 * Athletes as the rows of a table, heading first: lengths in centimetres, spreads in millimetres, masses in kilograms, dates
 * `YYYY-MM-DD`. Tape measures that nobody has are left out. Headings, sides and sexes are in the language of `words`, numbers
 * for a machine; `athletesFromTable` reads it back to the same athletes, whatever the language.
 */
export function athletesToTable(athletes: readonly Athlete[], words?: Words): string[][] {
  const columns = ATHLETE_COLUMNS.filter(
    ({ field }) => ALWAYS.includes(field.of) || athletes.some((athlete) => cellOf(athlete, field) !== ''),
  );
  return [
    columns.map((column) => headingOf(column, words)),
    ...athletes.map((athlete) => rowOf(athlete, columns, words)),
  ];
}

/** An athlete's cells in the order of the columns. */
function rowOf(athlete: Athlete, columns: readonly AthleteColumn[], words?: Words): string[] {
  return columns.map(({ field }) => cellOf(athlete, field, words));
}

/** One cell: numbers with a decimal point in the column's unit, choices in the reader's language. */
function cellOf(athlete: Athlete, field: AthleteField, words?: Words): string {
  switch (field.of) {
    case 'stature':
      return written(athlete.statureM, LENGTH_UNITS.cm);
    case 'mass':
      return written(athlete.massKg, 1);
    case 'tape':
      return written(athlete.tape[field.measure]?.valueM, LENGTH_UNITS.cm);
    case 'spread':
      return written(athlete.tape[field.measure]?.sdM, LENGTH_UNITS.mm);
    case 'takenOn':
      return athlete.tape[field.measure]?.takenOn ?? '';
    case 'side':
      return words?.say(`side.${athlete.side}`) ?? athlete.side;
    case 'sex':
      return words?.say(`athlete.sex.${athlete.sex}`) ?? athlete.sex;
    default:
      return athlete[field.of] ?? '';
  }
}

/** A number in its unit, without digits that conversion alone has made; empty where there is none. */
function written(value: number | undefined, unit: number): string {
  return value === undefined ? '' : String(Number((value / unit).toFixed(DECIMALS)));
}
