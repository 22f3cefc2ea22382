import { copyFileSync, existsSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { z } from 'zod';
import { writeWhole } from '../shell/write-whole.ts';
import { type Erasure, eraseAthlete } from './erase.ts';
import type { Person } from './erase-from-fit.ts';
import { damageOf } from './integrity.ts';
import { syncFile } from './migrate.ts';
import { atomically, type Store } from './store.ts';

/** Folders beside the store that hold older copies of it. */
const COPY_FOLDERS = ['backups', 'before-upgrade', 'set-aside'];

/** What was erased, and which files could not be rewritten. */
export interface ErasedEverywhere extends Erasure {
  readonly copiesRewritten: number;
  /** Files that still may hold something of this athlete: to be deleted by hand. */
  readonly copiesLeft: string[];
}

/** Says what erasing would take away, by doing it and taking it back. */
export function previewErasure(store: Store, person: Person): Erasure {
  const undo = new Error('a preview is taken back');
  let erasure: Erasure = { fits: [], crewFits: [], revisions: 0, drafts: 0, trials: 0, measurings: 0 };
  try {
    atomically(store, () => {
      erasure = eraseAthlete(store.db, person);
      throw undo;
    });
  } catch (error) {
    if (error !== undo) throw error;
  }
  return erasure;
}

/** Lies in the data folder while an erasure is under way, so that one cut short is finished at the next start. */
const UNFINISHED = 'erasure-under-way.json';
const unfinished = z.strictObject({ id: z.string(), name: z.string() });

/**
 * Erases an athlete from the store and from every copy of it in the data folder. Freed pages are overwritten
 * (`secure_delete`), the log is emptied and the file is written anew, so that nothing is left between the rows.
 */
export function eraseEverywhere(store: Store, person: Person): ErasedEverywhere {
  const note = join(store.folder, UNFINISHED);
  writeWhole(note, Buffer.from(JSON.stringify(person)));
  const erasure = atomically(store, () => eraseAthlete(store.db, person));
  compact(store);
  const copies = copiesOf(store.folder);
  const left = copies.filter((path) => !rewritten(path, person));
  rmSync(note, { force: true });
  return { ...erasure, copiesRewritten: copies.length - left.length, copiesLeft: left };
}

/** Finishes an erasure that a crash cut short; gives the copies that could not be rewritten. */
export function finishErasures(store: Store): readonly string[] {
  const note = join(store.folder, UNFINISHED);
  if (!existsSync(note)) return [];
  const person = unfinished.safeParse(JSON.parse(readFileSync(note, 'utf8')));
  return person.success ? eraseEverywhere(store, person.data).copiesLeft : [];
}

function compact({ db }: Store): void {
  db.pragma('wal_checkpoint(TRUNCATE)');
  try {
    db.exec('VACUUM');
    db.pragma('wal_checkpoint(TRUNCATE)');
  } catch {
    // No room to write the file anew: the freed pages have been overwritten all the same.
  }
}

function copiesOf(folder: string): string[] {
  return COPY_FOLDERS.map((name) => join(folder, name))
    .filter((place) => existsSync(place))
    .flatMap((place) => readdirSync(place).map((name) => join(place, name)))
    .filter((path) => path.endsWith('.db'));
}

/** Rewrites one copy beside itself and puts it in its place; false leaves it exactly as it was. */
function rewritten(path: string, person: Person): boolean {
  const beside = `${path}.part`;
  let copy: Database.Database | null = null;
  try {
    for (const ending of ['', '-wal'])
      if (existsSync(path + ending)) copyFileSync(path + ending, beside + ending);
    copy = new Database(beside);
    copy.pragma('secure_delete = ON');
    const db = copy;
    db.transaction(() => eraseAthlete(db, person)).immediate();
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
