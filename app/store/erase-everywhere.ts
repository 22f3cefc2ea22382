import { copyFileSync, existsSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { z } from 'zod';
import type { Leaves } from '../changes/record-state.ts';
import { atomicWrite } from '../shell/atomic-write.ts';
import { copiesOf, sweepLeftovers } from './copies.ts';
import { type ClearWords, type Erasure, eraseAthlete } from './erase.ts';
import { nameCleaner } from './erase-from-fit.ts';
import {
  addErased,
  type ErasedPerson,
  erasedButHere,
  erasedMark,
  erasedPerson,
  listErased,
} from './erased-people.ts';
import { damageOf } from './integrity.ts';
import { forgetErased, keepManifest } from './keep-manifest.ts';
import { syncFile } from './migrate.ts';
import { fullNames, knownIn, type Person, personSchema } from './person.ts';
import { readJson } from './read-json.ts';
import { readLeaves } from './record-rows.ts';
import type { RecordRef } from './record-versions.ts';
import { hasSums, renewSums } from './row-sums.ts';
import { atomically, type Store } from './store.ts';
import { noteChange } from './track.ts';

/** How many copies were rewritten, and which could not be. */
export interface ErasedCopies {
  readonly copiesRewritten: number;
  /** Files that still may hold something of this athlete: to be deleted by hand. */
  readonly copiesLeft: string[];
}

/** What was erased, and which files could not be rewritten. */
export interface ErasedEverywhere extends Erasure, ErasedCopies {}

/** Whom to erase, by the name in the list. */
interface Listed {
  readonly id: string;
  readonly name: string;
  /** Only from this computer: no tombstone keeps the person away, and nothing of it travels. */
  readonly takenAway?: boolean;
}

/** Says what erasing would take away, by doing it and taking it back. */
export function previewErasure({ db }: Pick<Store, 'db'>, listed: Listed): Erasure {
  const undo = new Error('a preview is taken back');
  const person = knownIn(db, { ...listed, formerNames: [], guardians: [] });
  let erasure: Erasure | null = null;
  try {
    db.transaction(() => {
      erasure = eraseAthlete(db, person, { clear: 'parts-too', touch: () => {} });
      throw undo;
    }).immediate();
  } catch (error) {
    if (error !== undo) throw error;
  }
  return erasure!;
}

/** Lies in the data folder while an erasure is under way, so that one cut short is finished at the next start. */
const UNFINISHED = 'erasure-under-way.json';
const unfinished = personSchema.extend({
  clear: z.enum(['none', 'full-names', 'parts-too']).default('full-names'),
  /** Missing in the note of an older program. */
  mark: erasedPerson.optional(),
  takenAway: z.boolean().default(false),
});

/**
 * Erases an athlete from the store and from every copy of it in the data folder. Freed pages are overwritten
 * (`secure_delete`), the log is emptied and the file is written again, so that nothing is left between the rows. What work
 * that was cut short has left behind goes first. Only a digest of the identifier stays, so that the person cannot come back
 * with an older file.
 */
export function eraseEverywhere(
  store: Store,
  listed: Listed,
  clear: ClearWords = 'full-names',
): ErasedEverywhere {
  const erasure = eraseFromStore(store, listed, clear);
  const copies = eraseFromCopies(store.folder);
  endErasure(store);
  return { ...erasure, ...copies };
}

/** The first part: from the store itself. From here on the erasure is finished at the next start if it is cut short. */
export function eraseFromStore(store: Store, listed: Listed, clear: ClearWords): Erasure {
  beginErasure(store, listed, clear);
  const erasure = eraseNoted(store);
  compact(store);
  return erasure;
}

/** Notes whom to erase. From here on the erasure is finished at the next start if it is cut short. */
export function beginErasure(store: Pick<Store, 'db' | 'folder'>, listed: Listed, clear: ClearWords): void {
  sweepLeftovers(store.folder);
  const { takenAway = false, ...named } = listed;
  const person = knownEverywhere(store, { formerNames: [], guardians: [], ...named });
  const mark = takenAway ? undefined : erasedMark(listErased(store.db), person.id);
  writeNote(store.folder, { ...person, clear, mark, takenAway });
}

/** Erases whoever the note in the folder names from this store, which may be a copy aside. */
export function eraseNoted(store: Store): Erasure {
  const { person, clear, mark } = underWay(store.folder);
  return atomically(store, () => {
    if (!mark) return eraseAthlete(store.db, person, { clear, touch: () => {} });
    addErased(store.db, mark);
    return eraseHere(store, person, clear);
  });
}

/** Finds out whether a text names whoever is being erased. */
export function namesErased(folder: string): (text: string) => boolean {
  const { person } = underWay(folder);
  const cleaned = nameCleaner(person, 'full-names');
  const quoted = fullNames(person).map((name) => JSON.stringify(name).slice(1, -1));
  return (text) =>
    text.includes(person.id) || cleaned(text) !== text || quoted.some((name) => text.includes(name));
}

function underWay(folder: string) {
  const noted = readNote(folder);
  if (!noted || (!noted.mark && !noted.takenAway)) throw new Error('no erasure is under way');
  const { clear, mark, takenAway: _, ...person } = noted;
  return { person, clear, mark };
}

/** The second part: from every copy in the folder, of whoever the note names. Edits may go on meanwhile. */
export function eraseFromCopies(folder: string): ErasedCopies {
  const { person, clear, mark } = underWay(folder);
  const copies = copiesOf(folder);
  const left = copies.filter((path) => !rewritten(path, { person, clear, mark }));
  return { copiesRewritten: copies.length - left.length, copiesLeft: left };
}

/** The last part: from the journal. The note goes last: a kill before that is finished at the next start. */
export function endErasure(store: Store): void {
  forgetErased(store);
  settleErasure(store);
}

/** The same where the journal has begun again. */
export function settleErasure(store: Store): void {
  keepManifest(store);
  rmSync(join(store.folder, UNFINISHED), { force: true });
}

function writeNote(folder: string, note: z.input<typeof unfinished>): void {
  atomicWrite(join(folder, UNFINISHED), Buffer.from(JSON.stringify(note)));
}

function readNote(folder: string): z.output<typeof unfinished> | null {
  const note = join(folder, UNFINISHED);
  return existsSync(note) ? (unfinished.safeParse(readJson(readFileSync(note, 'utf8'))).data ?? null) : null;
}

/**
 * At the start: sweeps what was left behind, finishes an erasure that a crash cut short, and erases whoever is here again
 * although they were erased. Gives the copies that could not be rewritten.
 */
export function finishErasures(store: Store): readonly string[] {
  sweepLeftovers(store.folder);
  const left: string[] = [];
  const noted = readNote(store.folder);
  if (noted) {
    const { clear, mark: _, ...person } = noted;
    left.push(...eraseEverywhere(store, person, clear).copiesLeft);
  }
  return [...left, ...eraseErased(store)];
}

/** Erases everybody who was erased elsewhere and is here; gives the copies that could not be rewritten. */
export function eraseErased(store: Store): string[] {
  return erasedButHere(store.db).flatMap((listed) => eraseEverywhere(store, listed).copiesLeft);
}

/** Erases from the open store; what changes of records that stay is an edit like any other, and travels. */
function eraseHere(store: Store, person: Person, clear: ClearWords): Erasure {
  const before = new Map<string, { ref: RecordRef; leaves: Leaves | null }>();
  const touch = (ref: RecordRef) => {
    const key = `${ref.kind} ${ref.id}`;
    if (!before.has(key)) before.set(key, { ref, leaves: readLeaves(store, ref, 'as-kept') });
  };
  const erasure = eraseAthlete(store.db, person, { clear, touch });
  for (const { ref, leaves } of before.values()) {
    const after = readLeaves(store, ref, 'as-kept');
    if (after) noteChange(store, ref, { before: leaves, after });
  }
  return erasure;
}

/** A person with the names and guardians that this store and its copies know of. */
function knownEverywhere({ db, folder }: Pick<Store, 'db' | 'folder'>, person: Person): Person {
  return copiesOf(folder).reduce(
    (known, path) => {
      let copy: Database.Database | null = null;
      try {
        copy = new Database(path, { readonly: true });
        return knownIn(copy, known);
      } catch {
        return known;
      } finally {
        copy?.close();
      }
    },
    knownIn(db, person),
  );
}

function compact({ db }: Store): void {
  db.pragma('wal_checkpoint(TRUNCATE)');
  try {
    db.exec('VACUUM');
    db.pragma('wal_checkpoint(TRUNCATE)');
  } catch {
    // No room to write the file again: the freed pages have been overwritten all the same.
  }
}

/** Rewrites one copy beside itself and puts it in its place; false leaves it exactly as it was. */
function rewritten(
  path: string,
  { person, clear, mark }: { person: Person; clear: ClearWords; mark: ErasedPerson | undefined },
): boolean {
  const beside = `${path}.part`;
  let copy: Database.Database | null = null;
  try {
    for (const ending of ['', '-wal'])
      if (existsSync(path + ending)) copyFileSync(path + ending, beside + ending);
    copy = new Database(beside);
    copy.pragma('secure_delete = ON');
    const db = copy;
    db.transaction(() => {
      eraseAthlete(db, person, { clear, touch: () => {} });
      if (mark && db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'erased_people'").get())
        addErased(db, mark);
      if (hasSums(db)) renewSums(db);
    }).immediate();
    db.pragma('journal_mode = DELETE');
    db.exec('VACUUM');
    if (damageOf(db, 'whole') !== null) return false;
    db.close();
    syncFile(beside);
    renameSync(beside, path);
    for (const ending of ['-wal', '-shm']) rmSync(path + ending, { force: true });
    return true;
  } catch {
    return false;
  } finally {
    copy?.close();
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(beside + ending, { force: true });
  }
}
