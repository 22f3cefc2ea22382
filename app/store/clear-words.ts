import type Database from 'better-sqlite3';
import { documentWords, type ListedDocument } from './document-words.ts';
import { type NamesMeant, nameCleaner } from './erase-from-fit.ts';
import { fullNames, type Person } from './person.ts';
import { readJsonObject } from './read-json.ts';
import type { RecordRef } from './record-versions.ts';
import { withRevisionsUnlocked } from './revision-lock.ts';
import { searchText } from './search-text.ts';
import { trialWords } from './trials.ts';

/** A place where a person's name stands in words that stay when the person goes. */
export interface WordPlace extends RecordRef {
  /** The words as they stand. */
  readonly text: string;
  /** Whether the full name stands there; else only a part of it, which may be somebody else's. */
  readonly full: boolean;
}

/** How far words are cleared, and who is told of each record before it changes. */
export interface ClearHow {
  readonly how: NamesMeant;
  readonly touch: (ref: RecordRef) => void;
}

interface Column {
  readonly table: string;
  readonly key: string;
  readonly column: string;
  readonly ref: (row: Row) => RecordRef;
}

interface Row {
  readonly key: string;
  readonly fitId: string;
  readonly text: string;
}

const own = (kind: RecordRef['kind']) => (row: Row) => ({ kind, id: row.key });
const ofFit = ({ fitId }: Row): RecordRef => ({ kind: 'fit', id: fitId });

/** Every column that holds words of people: documents as JSON, and two plain texts. */
const COLUMNS: readonly Column[] = [
  { table: 'athletes', key: 'id', column: 'athlete', ref: own('athlete') },
  { table: 'boats', key: 'id', column: 'boat', ref: own('boat') },
  { table: 'paddles', key: 'id', column: 'paddle', ref: own('paddle') },
  { table: 'trials', key: 'id', column: 'trial', ref: own('trial') },
  { table: 'boat_photos', key: 'id', column: 'caption', ref: own('photo') },
  { table: 'drafts', key: 'fit_id', column: 'fit', ref: ofFit },
  { table: 'revisions', key: 'id', column: 'fit', ref: ofFit },
  { table: 'revisions', key: 'id', column: 'name', ref: ofFit },
  { table: 'revisions', key: 'id', column: 'reason', ref: ofFit },
];

/** Fields of documents in which a person writes what they like. A guardian of somebody else (`by`) is that one's own. */
export const FREE_TEXT_FIELDS = ['name', 'notes', 'note', 'reason', 'caption'];

/**
 * Takes a person's names and guardians out of every free text of a database of any version, and gives the places where they
 * stood. Names of other people are left: somebody else may be called the same. Inside the caller's transaction.
 */
export function clearWords(db: Database.Database, person: Person, { how, touch }: ClearHow): WordPlace[] {
  // In SQL, so that a store of a hundred thousand revisions is not read into memory at once.
  const clean = nameCleaner(person, how);
  const fully = nameCleaner(person, 'full-names');
  const quoted = fullNames(person).map((name) => JSON.stringify(name).slice(1, -1));
  const mentions = (text: string) => clean(text) !== text || quoted.some((name) => text.includes(name));
  db.function('mentions', { deterministic: true }, (text: unknown) => Number(mentions(String(text))));
  const places = COLUMNS.filter(({ table }) => hasTable(db, table)).flatMap((column) =>
    keysOf(db, column).flatMap((key) => {
      const row = rowOf(db, column, key);
      const cleaned = cleanedText(column, row.text, clean);
      if (cleaned.text === row.text) return [];
      touch(column.ref(row));
      write(db, column, { ...row, text: cleaned.text });
      return cleaned.stood.map((text) => ({
        ...column.ref(row),
        text,
        full: fully(text) !== text,
      }));
    }),
  );
  return [...new Map(places.map((place) => [`${place.kind} ${place.id} ${place.text}`, place])).values()];
}

function hasTable(db: Database.Database, table: string): boolean {
  return db.prepare('SELECT 1 FROM sqlite_schema WHERE name = ?').get(table) !== undefined;
}

/** Only the keys: the texts of a hundred thousand revisions do not fit into memory. */
function keysOf(db: Database.Database, { table, key, column }: Column): string[] {
  return db.prepare<[], string>(`SELECT ${key} FROM ${table} WHERE mentions(${column})`).pluck().all();
}

function rowOf(db: Database.Database, { table, key, column }: Column, at: string): Row {
  const fitId = table === 'revisions' || table === 'drafts' ? 'fit_id' : "''";
  return db
    .prepare<[string], Row>(
      `SELECT ${key} AS key, ${fitId} AS fitId, ${column} AS text FROM ${table} WHERE ${key} = ?`,
    )
    .get(at)!;
}

/** A column's text without the words, and the texts in it in which they stood. What does not read as JSON is left. */
function cleanedText(
  { table, column }: Column,
  text: string,
  clean: (text: string) => string,
): { text: string; stood: string[] } {
  const stood: string[] = [];
  const cleaned = (one: string) => {
    const left = clean(one);
    if (left !== one) stood.push(one);
    return left;
  };
  if (column === 'caption' || column === 'name' || column === 'reason') return { text: cleaned(text), stood };
  const document = readJsonObject(text);
  if (!document) return { text, stood };
  const left = walked(document, { inAthlete: table === 'athletes', clean: cleaned });
  return { text: stood.length > 0 ? JSON.stringify(left) : text, stood };
}

function walked(
  value: unknown,
  { inAthlete, clean }: { inAthlete: boolean; clean: (text: string) => string },
): unknown {
  if (Array.isArray(value)) return value.map((one) => walked(one, { inAthlete: false, clean }));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, held]) => {
      const isText =
        typeof held === 'string' && FREE_TEXT_FIELDS.includes(name) && !(inAthlete && name === 'name');
      return [name, isText ? clean(held as string) : walked(held, { inAthlete: name === 'athlete', clean })];
    }),
  );
}

function write(db: Database.Database, { table, key, column }: Column, row: Row): void {
  const update = () =>
    db.prepare(`UPDATE ${table} SET ${column} = ? WHERE ${key} = ?`).run(row.text, row.key);
  if (table === 'revisions') withRevisionsUnlocked({ db }, [row.key], update);
  else update();
  renewSearch(db, table, row);
}

/** The words by which a row is found, as they now stand in it. */
function renewSearch(db: Database.Database, table: string, { key, text }: Row): void {
  if (table === 'athletes' || table === 'boats' || table === 'paddles') {
    const document = readJsonObject(text) as ListedDocument;
    db.prepare(`UPDATE ${table} SET name = ?, search = ? WHERE id = ?`).run(
      document.name,
      documentWords(document),
      key,
    );
  } else if (table === 'trials') {
    db.prepare('UPDATE trials SET search = ? WHERE id = ?').run(
      trialWords(readJsonObject(text) as never),
      key,
    );
  } else if (table === 'revisions' && hasTable(db, 'revision_words')) {
    const words = db.prepare<[string], { name: string; reason: string }>(
      'SELECT name, reason FROM revisions WHERE id = ?',
    );
    const { name, reason } = words.get(key)!;
    withRevisionsUnlocked({ db }, [key], () =>
      db
        .prepare('UPDATE revision_words SET search = ? WHERE revision_id = ?')
        .run(searchText(name, reason), key),
    );
  }
}
