import { ARCHIVE } from './english/archive.ts';
import { ATHLETES_TABLE } from './english/athletes-table.ts';
import { BENCH } from './english/bench.ts';
import { BOAT } from './english/boat.ts';
import { BOAT_KEPT } from './english/boat-kept.ts';
import { CREW } from './english/crew.ts';
import { DRAWING } from './english/drawing.ts';
import { FIELDS } from './english/fields.ts';
import { FULL_SIZE } from './english/full-size.ts';
import { GROWTH } from './english/growth.ts';
import { HULL } from './english/hull.ts';
import { MEASURING_WORDS } from './english/measuring.ts';
import { PADDLE } from './english/paddle.ts';
import { PROPOSAL } from './english/proposal.ts';
import { REACH } from './english/reach.ts';
import { ROSTER } from './english/roster.ts';
import { SET_OUT } from './english/set-out.ts';
import { SHEET } from './english/sheet.ts';
import { SHOW } from './english/show.ts';
import { STROKE } from './english/stroke.ts';
import { TRANSFER } from './english/transfer.ts';
import { TRIAL } from './english/trial.ts';
import { VALUES } from './english/values.ts';

/**
 * Every text that a person reads in the page, in one catalogue. A translation is a second object of the same keys.
 * `{name}` stands for a value given by the caller. Texts that count come in pairs `….one` and `….other`.
 * (What is said of findings and quantities is made by core's `findings/sentences.ts`.)
 */
export const MESSAGES = {
  ...SHEET,
  ...FIELDS,
  ...ROSTER,
  ...ATHLETES_TABLE,
  ...MEASURING_WORDS,
  ...BOAT,
  ...BOAT_KEPT,
  ...BENCH,
  ...ARCHIVE,
  ...CREW,
  ...HULL,
  ...FULL_SIZE,
  ...DRAWING,
  ...SET_OUT,
  ...SHOW,
  ...STROKE,
  ...PROPOSAL,
  ...PADDLE,
  ...VALUES,
  ...TRIAL,
  ...GROWTH,
  ...TRANSFER,
  ...REACH,
} as const;

export type MessageKey = keyof typeof MESSAGES;

type PlacesIn<T extends string> = T extends `${string}{${infer Place}}${infer Rest}`
  ? Place | PlacesIn<Rest>
  : never;

/** Keys of texts that need no value: a heading, a button. */
export type PlainKey = {
  [K in MessageKey]: [PlacesIn<(typeof MESSAGES)[K]>] extends [never] ? K : never;
}[MessageKey];

/** What a message needs to be told; nothing for most. */
export type MessageValues<K extends MessageKey> = [PlacesIn<(typeof MESSAGES)[K]>] extends [never]
  ? []
  : [values: Readonly<Record<PlacesIn<(typeof MESSAGES)[K]>, string | number>>];

/** A text of the catalogue with its places filled: `say('bench.undo', { step: 'move the pad' })`. */
export function say(key: PlainKey): string;
export function say<K extends MessageKey>(key: K, ...values: MessageValues<K>): string;
export function say(key: MessageKey, given?: Readonly<Record<string, string | number>>): string {
  const text: string = MESSAGES[key];
  return given ? text.replace(/\{(\w+)\}/g, (place, name: string) => String(given[name] ?? place)) : text;
}

/** Keys of texts that count, without their `.one` or `.other`. */
export type CountedKey = MessageKey extends infer K
  ? K extends `${infer Base}.other`
    ? Base
    : never
  : never;

const plurals = new Intl.PluralRules('en');

/** A text that counts: `sayCount('fits.revisions', 3)` is "3 revisions". */
export function sayCount(key: CountedKey, count: number): string {
  const form = plurals.select(count) === 'one' ? 'one' : 'other';
  const text: string = MESSAGES[`${key}.${form}` as MessageKey];
  return text.replaceAll('{count}', String(count));
}
