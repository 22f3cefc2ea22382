import type { FoundThing } from '../contract/trials.ts';
import { searchPattern, searchText } from './search-text.ts';
import type { Store } from './store.ts';

/** What is found by a search of one kind of thing: a row for `FoundThing`, `archived` as a number. */
type Row = Omit<FoundThing, 'archived'> & { readonly archived: 0 | 1 };

/** Only this many words of a search are used. */
const MOST_WORDS = 8;

/** Longest line of notes that is given back with a thing that was found, characters. */
const WORDS_LENGTH = 240;

/** One query for each kind; `@words` takes the conditions on its `search` column, `@ofFit` on its own and its fit's. */
const named = (kind: string, table: string, of: string) =>
  `SELECT '${kind}' AS kind, id, NULL AS fitId, name AS title, NULL AS number, NULL AS heldOn, ${of} AS "of",
     '' AS words, archived_at IS NOT NULL AS archived, changed_at AS at
   FROM ${table} WHERE @words ORDER BY archived_at IS NOT NULL, changed_at DESC LIMIT @limit`;

/** A trial or revision holds at least one of the words itself; the others may be its fit's. */
const TRIALS = `SELECT 'trial' AS kind, trials.id, fits.id AS fitId, '' AS title, NULL AS number,
    json_extract(trials.trial, '$.heldOn') AS heldOn, fits.name AS "of",
    substr(coalesce(json_extract(trials.trial, '$.notes'), ''), 1, ${WORDS_LENGTH}) AS words,
    trials.archived_at IS NOT NULL AS archived, trials.changed_at AS at
  FROM trials JOIN fits ON fits.id = fit_id WHERE @ofFit
  ORDER BY trials.archived_at IS NOT NULL, trials.changed_at DESC LIMIT @limit`;

/** Revisions are many: their words are looked through first, and only what is found is fetched. */
const REVISIONS = `SELECT 'revision' AS kind, revisions.id, fits.id AS fitId, revisions.name AS title, number,
    NULL AS heldOn, fits.name AS "of", substr(reason, 1, ${WORDS_LENGTH}) AS words,
    fits.archived_at IS NOT NULL AS archived, revisions.saved_at AS at
  FROM revision_words CROSS JOIN revisions ON revisions.id = revision_id CROSS JOIN fits ON fits.id = fit_id
  WHERE @ofFit ORDER BY revision_words.rowid DESC LIMIT @limit`;

const LATELY = [
  named('fit', 'fits', 'boat_name'),
  named('athlete', 'athletes', "''"),
  named('boat', 'boats', "''"),
  named('paddle', 'paddles', "''"),
  TRIALS,
];

/**
 * Everything in the store that holds every word of `text`, those in use before archived ones, things whose name begins
 * with the text first, then the last changed. With no words: what was changed last, revisions left out, for their fits
 * stand for them.
 */
export function findThings(store: Store, { text, limit }: { text: string; limit: number }): FoundThing[] {
  const words = searchText(text).split(/\s+/).filter(Boolean).slice(0, MOST_WORDS);
  const queries = words.length > 0 ? [...LATELY, REVISIONS] : LATELY;
  const begins = searchText(text).trim();
  const rank = (thing: FoundThing) =>
    (thing.archived ? 2 : 0) + (begins !== '' && searchText(thing.title).startsWith(begins) ? 0 : 1);
  return queries
    .flatMap((query) => rowsOf(store, query, { words, limit }))
    .filter(({ archived }) => words.length > 0 || !archived)
    .sort((a, b) => rank(a) - rank(b) || (a.at < b.at ? 1 : -1))
    .slice(0, limit);
}

function rowsOf(
  store: Store,
  query: string,
  { words, limit }: { words: readonly string[]; limit: number },
): FoundThing[] {
  const like = (table: string, i: number) => `${table}search LIKE @word${i} ESCAPE '\\'`;
  const all = (condition: (i: number) => string) => words.map((_, i) => condition(i)).join(' AND ') || '1';
  const own = query === TRIALS ? 'trials.' : 'revision_words.';
  const oneOwn = words.map((_, i) => like(own, i)).join(' OR ') || '1';
  const conditions = all((i) => like('', i));
  const ofFit = `(${oneOwn}) AND ${all((i) => `(${like(own, i)} OR ${like('fits.', i)})`)}`;
  const values = Object.fromEntries(words.map((word, i) => [`word${i}`, searchPattern(word)]));
  return store.db
    .prepare<[object], Row>(query.replace('@words', conditions).replace('@ofFit', ofFit))
    .all({ ...values, limit })
    .map((row) => ({ ...row, archived: row.archived === 1 }));
}
