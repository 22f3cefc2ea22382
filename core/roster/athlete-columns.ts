import { TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import type { Words } from '../text/words.ts';
import { LENGTH_UNITS, type LengthUnit } from '../units/length-text.ts';
import { MASS_UNITS, type MassUnit } from '../units/mass-text.ts';
import { HEADING_ALIASES, SPREAD_WORDS, TAKEN_WORDS, TAPE_ALIASES } from './heading-aliases.ts';

/** What a column of a table of athletes holds. */
export type AthleteField =
  | { readonly of: 'id' | 'name' | 'side' | 'sex' | 'bornOn' | 'measuredOn' }
  | { readonly of: 'stature' }
  | { readonly of: 'mass' }
  /** A tape measure's value, its standard deviation, or the day it was taken. */
  | { readonly of: 'tape' | 'spread' | 'takenOn'; readonly measure: TapeMeasure };

/** One column as it is written: its name, and the unit that its bare numbers are in (null for words and dates). */
export interface AthleteColumn {
  readonly field: AthleteField;
  /** As the file's own format writes it, in English on every computer. */
  readonly name: string;
  /** Null for words and dates. */
  readonly unit: LengthUnit | MassUnit | null;
}

/** A column of words or dates: without a unit. */
const word = (of: 'id' | 'name' | 'side' | 'sex' | 'bornOn' | 'measuredOn', name: string): AthleteColumn => ({
  field: { of },
  name,
  unit: null,
});

/** Headings of tape measures: part of the file's format, so that a table reads on every computer. */
const TAPE_HEADS: Readonly<Record<TapeMeasure, string>> = {
  kneeHeightSitting: 'Knee height, sitting',
  buttockKneeLength: 'Buttock to knee',
  shoulderHeight: 'Shoulder height',
  armSpan: 'Arm span',
  footLength: 'Foot length',
  kneelingHeight: 'Kneeling height',
  crotchHeight: 'Crotch height',
  tibialHeight: 'Tibial height',
  poplitealHeight: 'Hollow of the knee',
  sittingHeight: 'Sitting height',
  biacromialBreadth: 'Shoulder breadth',
  kneeToHipLength: 'Knee to hip',
};

/** A tape measure's three columns: value, spread and day. */
function tapeColumns(measure: TapeMeasure): AthleteColumn[] {
  const name = TAPE_HEADS[measure];
  return [
    { field: { of: 'tape', measure }, name, unit: 'cm' },
    { field: { of: 'spread', measure }, name: `${name}: spread`, unit: 'mm' },
    { field: { of: 'takenOn', measure }, name: `${name}: taken on`, unit: null },
  ];
}

/** Every column that a table of athletes may have, in the order in which it is written. */
export const ATHLETE_COLUMNS: readonly AthleteColumn[] = [
  word('name', 'Name'),
  word('side', 'Side'),
  word('sex', 'Sex'),
  word('bornOn', 'Born on'),
  { field: { of: 'stature' }, name: 'Stature', unit: 'cm' },
  { field: { of: 'mass' }, name: 'Mass', unit: 'kg' },
  word('measuredOn', 'Measured on'),
  ...TAPE_MEASURES.flatMap(tapeColumns),
  word('id', 'Identifier'),
];

/** Messages that name a column on screen and in a table that is exported. */
const NAMES: Readonly<Record<Exclude<AthleteField['of'], 'tape' | 'spread' | 'takenOn'>, string>> = {
  id: 'table.head.id',
  name: 'athletes.name',
  side: 'athletes.side',
  sex: 'athlete.sex',
  bornOn: 'athlete.born',
  measuredOn: 'athlete.measured',
  stature: 'athlete.stature',
  mass: 'athlete.mass',
};

/** A column's name in a language. */
export function columnName({ field }: AthleteColumn, words: Words): string {
  if (field.of === 'tape') return words.say(`tape.${field.measure}.name`);
  if (field.of !== 'spread' && field.of !== 'takenOn') return words.say(NAMES[field.of]);
  const name = words.say(`tape.${field.measure}.name`);
  return words.say(field.of === 'spread' ? 'table.head.spread' : 'table.head.taken', { name });
}

/** A column's heading with its unit: `Stature [cm]`; in a language where one is given, else in the format's own words. */
export function headingOf(column: AthleteColumn, words?: Words): string {
  const name = words ? columnName(column, words) : column.name;
  return column.unit ? `${name} [${column.unit}]` : name;
}

/** Why a heading was not taken. */
export type HeadingProblem = 'unknown' | 'unknown-unit' | 'twice';

/** One heading of a table as read: a column with the heading's own unit, or why it is none. */
export type ReadHeading =
  | { readonly ok: true; readonly column: AthleteColumn }
  | { readonly ok: false; readonly text: string; readonly problem: HeadingProblem };

/**
 * Reads the headings of a table of athletes: letter case, spaces and marks aside, in any order; a unit in brackets at the
 * end, `[cm]`, `(m)`, is what the bare numbers below it are in. A blank heading reads as null.
 */
export function readHeadings(cells: readonly string[]): (ReadHeading | null)[] {
  const taken = new Set<string>();
  return cells.map((text) => {
    if (text.trim() === '') return null;
    const read = readHeading(text);
    if (!read.ok) return read;
    const { name } = read.column;
    if (taken.has(name)) return { ok: false, text, problem: 'twice' };
    taken.add(name);
    return read;
  });
}

/** One heading: its name without the unit, then the unit if it has one. */
function readHeading(text: string): ReadHeading {
  const [, name = text, unit] = /^(.*?)\s*[[(]\s*([^\])]*?)\s*[\])]\s*$/.exec(text) ?? [];
  const column = COLUMN_OF.get(plain(name));
  if (!column) return { ok: false, text, problem: 'unknown' };
  if (unit === undefined || column.unit === null) return { ok: true, column };
  const said = unitNamed(unit.toLowerCase(), column.unit);
  return said
    ? { ok: true, column: { ...column, unit: said } }
    : { ok: false, text, problem: 'unknown-unit' };
}

/** A column's own name and what clubs call it besides. */
function namesOf({ name, field }: AthleteColumn): readonly string[] {
  if (field.of !== 'tape' && field.of !== 'spread' && field.of !== 'takenOn')
    return [name, ...HEADING_ALIASES[field.of]];
  const measures = [TAPE_HEADS[field.measure], ...TAPE_ALIASES[field.measure]];
  if (field.of === 'tape') return measures;
  const ends = field.of === 'spread' ? SPREAD_WORDS : TAKEN_WORDS;
  return measures.flatMap((measure) => ends.map((end) => `${measure}: ${end}`));
}

/** The column that each plain name stands for. A name that two columns share is the first one's. */
const COLUMN_OF: ReadonlyMap<string, AthleteColumn> = new Map(
  [...ATHLETE_COLUMNS]
    .reverse()
    .flatMap((column) => namesOf(column).map((name): [string, AthleteColumn] => [plain(name), column])),
);

/** The unit of that name, if it measures the same thing as `like`. */
function unitNamed(name: string, like: LengthUnit | MassUnit): LengthUnit | MassUnit | null {
  const units: Readonly<Record<string, number>> = like in MASS_UNITS ? MASS_UNITS : LENGTH_UNITS;
  return Object.hasOwn(units, name) ? (name as LengthUnit | MassUnit) : null;
}

/** Letters and digits alone, in lower case: `Knee height, sitting` and `knee-height sitting` are one. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');
}
