import type Database from 'better-sqlite3';
import { type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { type ClearHow, clearWords, type WordPlace } from './clear-words.ts';
import { isOf, type LooseFit, withoutPerson } from './erase-from-fit.ts';
import { eraseMeasurings } from './erase-measurings.ts';
import { erasePhotos } from './erase-photos.ts';
import { eraseTrials, hasTrials, wordsWithoutTrials } from './erase-trials.ts';
import { dropWaitingValues, eraseVersionsOf } from './erase-versions.ts';
import { listEntry } from './fit-list-entry.ts';
import { fullNames, type Person } from './person.ts';
import { readJsonObject } from './read-json.ts';
import { withRevisionsUnlocked } from './revision-lock.ts';

/** What an erasure takes away, or took away. */
export interface Erasure {
  /** Names of the fits in which this athlete was the only one; they go whole, with their revisions and draft. */
  readonly fits: string[];
  /** Names of crew fits that stay, with this athlete's seat left empty in every revision and in the draft. */
  readonly crewFits: string[];
  readonly revisions: number;
  readonly drafts: number;
  readonly trials: number;
  /** Days on which something was measured. */
  readonly measurings: number;
  /** Photographs that show the athlete. */
  readonly photos: number;
  /** Where else the name stands, in words that stay; from there it is taken as far as was asked. */
  readonly words: WordPlace[];
}

/** How far names are cleared from words that stay: not at all, full names, or every part of a name too. */
export type ClearWords = 'none' | ClearHow['how'];

interface Kept {
  readonly table: 'revisions' | 'drafts';
  /** A revision's id; a draft's fit. */
  readonly key: string;
  readonly fitId: string;
}

/**
 * Takes every trace of an athlete out of an open database of any version: the athlete's row, fits of that athlete
 * alone, and the seat in every revision and draft of a crew. Runs inside the caller's transaction, so that a preview
 * can take it back. What cannot be read but names the athlete goes too.
 */
export function eraseAthlete(
  db: Database.Database,
  person: Person,
  { clear, touch }: { clear: ClearWords; touch: ClearHow['touch'] },
): Erasure {
  const touched = keptWith(db, person);
  const fitIds = [...new Set(touched.map(({ fitId }) => fitId))];
  const alone = fitIds.filter((fitId) => isAlone(db, fitId, person));
  const crews = fitIds.filter((fitId) => !alone.includes(fitId));
  for (const id of crews) touch({ kind: 'fit', id });
  const gone = eraseTrials(db, person, { alone, crews, touch });
  const erasure = {
    fits: namesOf(db, alone),
    crewFits: namesOf(db, crews),
    revisions: touched.filter(({ table }) => table === 'revisions').length,
    drafts: touched.filter(({ table }) => table === 'drafts').length,
    trials: gone.length,
    measurings: eraseMeasurings(db, person),
    photos: erasePhotos(db, person),
  };
  withRevisionsUnlocked({ db }, revisionIds(db, fitIds), () => {
    for (const fitId of alone) eraseFit(db, fitId);
    for (const kept of touched) if (crews.includes(kept.fitId)) eraseFromKept(db, kept, person);
    for (const fitId of crews) clearRevisionWords(db, fitId, person);
    for (const fitId of crews) renewListEntry(db, fitId);
    wordsWithoutTrials(db, crews, { person, gone });
  });
  db.prepare('DELETE FROM athletes WHERE id = ?').run(person.id);
  eraseVersionsOf(db, 'athlete', [person.id]);
  eraseVersionsOf(db, 'fit', alone);
  eraseVersionsOf(db, 'trial', gone);
  const mentions = [person.id, ...fullNames(person).map(jsonInside)];
  dropWaitingValues(db, mentions);
  db.prepare(
    `DELETE FROM quarantine WHERE (table_name = 'athletes' AND row_id = ?)
       OR EXISTS (SELECT 1 FROM json_each(?) AS one WHERE instr(raw, one.value))`,
  ).run(person.id, JSON.stringify(mentions));
  const words = clear === 'none' ? [] : clearWords(db, person, { how: clear, touch });
  const renamed = new Set(words.flatMap(({ kind, id }) => (kind === 'fit' ? [id] : [])));
  for (const fitId of renamed) renewListEntry(db, fitId);
  return { ...erasure, words };
}

/** Every revision and draft that names the athlete, by identifier or, where it has none, by name. */
function keptWith(db: Database.Database, person: Person): Kept[] {
  const mentions = JSON.stringify([person.id, ...[person.name, ...person.formerNames].map(jsonInside)]);
  const rows = (table: Kept['table'], key: string) => {
    const found: Kept[] = [];
    const named = db.prepare<[string], { key: string; fitId: string; text: string }>(
      `SELECT ${key} AS key, fit_id AS fitId, fit AS text FROM ${table}
       WHERE EXISTS (SELECT 1 FROM json_each(?) AS one WHERE instr(fit, one.value))`,
    );
    // One by one, and only what it is called is kept: all texts together do not fit into memory.
    for (const { key, fitId, text } of named.iterate(mentions)) {
      const fit = looseFit(text);
      const isTheirs = fit === null || seatsOf(fit).some((seat) => isOf(seat, person));
      if (isTheirs) found.push({ table, key, fitId });
    }
    return found;
  };
  return [...rows('revisions', 'id'), ...rows('drafts', 'fit_id')];
}

function isAlone(db: Database.Database, fitId: string, person: Person): boolean {
  const texts = db
    .prepare<{ fitId: string }, string>(
      'SELECT fit FROM revisions WHERE fit_id = @fitId UNION ALL SELECT fit FROM drafts WHERE fit_id = @fitId',
    )
    .pluck()
    .iterate({ fitId });
  for (const text of texts) {
    const fit = looseFit(text);
    if (fit !== null && seatsOf(fit).some((seat) => seat.athlete && !isOf(seat, person))) return false;
  }
  return true;
}

function eraseFit(db: Database.Database, fitId: string): void {
  const words = 'DELETE FROM revision_words WHERE revision_id IN (SELECT id FROM revisions WHERE fit_id = ?)';
  for (const sql of [
    ...(hasTrials(db) ? [words] : []),
    'DELETE FROM drafts WHERE fit_id = ?',
    'DELETE FROM revisions WHERE fit_id = ?',
    'DELETE FROM fits WHERE id = ?',
  ]) {
    db.prepare(sql).run(fitId);
  }
}

function eraseFromKept(db: Database.Database, kept: Kept, person: Person): void {
  const key = kept.table === 'revisions' ? 'id' : 'fit_id';
  const text = db
    .prepare<[string], string>(`SELECT fit FROM ${kept.table} WHERE ${key} = ?`)
    .pluck()
    .get(kept.key)!;
  const fit = looseFit(text);
  if (!fit) {
    db.prepare(`DELETE FROM ${kept.table} WHERE ${key} = ?`).run(kept.key);
    return;
  }
  db.prepare(`UPDATE ${kept.table} SET fit = ? WHERE ${key} = ?`).run(
    JSON.stringify(withoutPerson(fit, person)),
    kept.key,
  );
}

/** The words of all revisions of a crew fit, without the athlete's name. */
function clearRevisionWords(db: Database.Database, fitId: string, person: Person): void {
  const words = db
    .prepare<[string], { id: string; name: string; reason: string }>(
      'SELECT id, name, reason FROM revisions WHERE fit_id = ?',
    )
    .all(fitId);
  const update = db.prepare('UPDATE revisions SET name = ?, reason = ? WHERE id = ?');
  for (const { id, name, reason } of words) {
    update.run(withoutPerson({ name }, person).name, withoutPerson({ name: reason }, person).name, id);
  }
}

/** The list entry of a fit as its newest state now says. */
function renewListEntry(db: Database.Database, fitId: string): void {
  const newest = db
    .prepare<{ fitId: string }, string>(
      `SELECT fit FROM drafts WHERE fit_id = @fitId UNION ALL
       SELECT fit FROM (SELECT fit FROM revisions WHERE fit_id = @fitId ORDER BY number DESC)`,
    )
    .pluck()
    .iterate({ fitId });
  let readable: Fit | null = null;
  for (const text of newest) {
    readable = fitSchema.safeParse(looseFit(text)).data ?? null;
    if (readable) break;
  }
  const entry = readable
    ? listEntry(readable)
    : { name: '(erased)', boatName: '', athleteNames: '[]', athleteIds: '[]', search: '' };
  db.prepare(
    `UPDATE fits SET name = @name, boat_name = @boatName, athlete_names = @athleteNames, search = @search
       ${hasTrials(db) ? ', athlete_ids = @athleteIds' : ''}
     WHERE id = @fitId`,
  ).run({ fitId, ...entry });
}

function namesOf(db: Database.Database, fitIds: readonly string[]): string[] {
  const name = db.prepare<[string], string>('SELECT name FROM fits WHERE id = ?').pluck();
  return fitIds.map((id) => String(name.get(id)));
}

function revisionIds(db: Database.Database, fitIds: readonly string[]): string[] {
  const ids = db.prepare<[string], string>('SELECT id FROM revisions WHERE fit_id = ?').pluck();
  return fitIds.flatMap((id) => ids.all(id));
}

function looseFit(text: string): LooseFit | null {
  return readJsonObject(text) as LooseFit | null;
}

function seatsOf(fit: LooseFit) {
  return Array.isArray(fit.seats)
    ? fit.seats.filter((seat) => typeof seat === 'object' && seat !== null)
    : [];
}

/** A text as it stands between the quotes of a JSON document. */
function jsonInside(text: string): string {
  return JSON.stringify(text).slice(1, -1);
}
