import type Database from 'better-sqlite3';
import type { z } from 'zod';
import { revisionAnswers } from '../contract/records.ts';
import {
  type Incoming,
  type IncomingFit,
  incomingAthlete,
  incomingBoat,
  incomingDraft,
  incomingFit,
  incomingMeasuring,
  incomingPaddle,
  incomingPhoto,
  incomingRevision,
  incomingTrial,
  type RemovedPhoto,
  removedPhoto,
} from './incoming.ts';
import { readSubject } from './photos.ts';
import { readJson } from './read-json.ts';
import { type RecordRef, type RecordVersions, readVersions } from './record-versions.ts';

type Row = Record<string, unknown>;

/** How much of another store was read, and how many of its rows were not. */
export interface ReadIncoming {
  readonly items: readonly Incoming[];
  /** Rows that were reached but do not parse. */
  readonly unreadable: number;
  /** Tables that broke off before their end was reached from either side. */
  readonly brokenTables: readonly string[];
}

/**
 * Reads everything that can be read out of another store's file, sound or damaged. Each table is read from its start
 * and, where that breaks off, from its end back; a row that does not parse is counted and left.
 */
export function readIncoming(db: Database.Database): ReadIncoming {
  const brokenTables: string[] = [];
  let unreadable = 0;

  function rows(table: string): Row[] {
    if (!hasTable(db, table)) return [];
    const read = readTable(db, table);
    if (read.broken) brokenTables.push(table);
    return read.rows;
  }
  function parsed<S extends z.ZodType>(schema: S, row: Row): z.output<S>[] {
    const result = schema.safeParse(row);
    if (!result.success) unreadable += 1;
    return result.success ? [result.data] : [];
  }

  const measurings = grouped(rows('measurings'), 'athlete_id', (row) =>
    parsed(incomingMeasuring, measuringRow(row)),
  );
  const athletes = rows('athletes').flatMap((row) =>
    parsed(incomingAthlete, {
      ...document(db, row, 'athlete'),
      measurings: measurings.get(String(row.id)) ?? [],
    }),
  );
  const boats = rows('boats').flatMap((row) => parsed(incomingBoat, document(db, row, 'boat')));
  const paddles = rows('paddles').flatMap((row) => parsed(incomingPaddle, document(db, row, 'paddle')));
  const answers = new Map(rows('revision_words').map((row) => [row.revision_id, row.answers]));
  const revisions = grouped(rows('revisions'), 'fit_id', (row) =>
    parsed(incomingRevision, revisionOf({ ...row, answers: answers.get(row.id) })),
  );
  const drafts = grouped(rows('drafts'), 'fit_id', (row) => parsed(incomingDraft, draftOf(row)));
  const trials = grouped(rows('trials'), 'fit_id', (row) => parsed(incomingTrial, trialOf(db, row)));
  const fits = new Map(rows('fits').map((row) => [String(row.id), row]));
  const ids = new Set([...fits.keys(), ...revisions.keys(), ...drafts.keys()]);
  const whole = [...ids].flatMap((id) => {
    const inOrder = (revisions.get(id) ?? []).sort((a, b) => a.number - b.number);
    const parts = { revisions: inOrder, draft: drafts.get(id)?.[0] ?? null };
    const dates = datesOf(fits.get(id), parts);
    const versions = versionsOf(db, { kind: 'fit', id });
    return parsed(incomingFit, { id, ...dates, ...parts, trials: trials.get(id) ?? [], versions });
  });
  return {
    items: [
      ...athletes.map((item) => ({ kind: 'athlete', item }) as const),
      ...boats.map((item) => ({ kind: 'boat', item }) as const),
      ...paddles.map((item) => ({ kind: 'paddle', item }) as const),
      ...whole.map((item) => ({ kind: 'fit', item }) as const),
    ],
    unreadable,
    brokenTables,
  };
}

/** All athletes of a sound store with their measurings, one at a time, those that do not read left out. */
export function* readIncomingAthletes(db: Database.Database): Generator<z.output<typeof incomingAthlete>> {
  const measuringsOf = db.prepare<[unknown], Row>(
    'SELECT * FROM measurings WHERE athlete_id = ? ORDER BY taken_on',
  );
  for (const row of rowsByAge(db, 'athletes')) {
    const measurings = measuringsOf
      .all(row.id)
      .flatMap((one) => incomingMeasuring.safeParse(measuringRow(one)).data ?? []);
    const read = incomingAthlete.safeParse({ ...document(db, row, 'athlete'), measurings });
    if (read.success) yield read.data;
  }
}

/** All boats of a sound store, with what is known of their photographs but for the pictures; likewise. */
export function* readIncomingBoats(db: Database.Database): Generator<z.output<typeof incomingBoat>> {
  const photosOf = db.prepare<[unknown], Row>(
    `SELECT id, caption, mime, added_at AS addedAt, athlete_id AS athleteId, fit_id AS fitId, study FROM boat_photos
     WHERE boat_id = ? ORDER BY added_at, id`,
  );
  for (const row of rowsByAge(db, 'boats')) {
    const photos = photosOf.all(row.id).flatMap((photo) => {
      const versions = versionsOf(db, { kind: 'photo', id: String(photo.id) });
      return incomingPhoto.safeParse({ ...readSubject(photo), versions }).data ?? [];
    });
    const read = incomingBoat.safeParse({ ...document(db, row, 'boat'), photos });
    if (read.success) yield read.data;
  }
}

/** All of the club's paddles of a sound store; likewise. */
export function* readIncomingPaddles(db: Database.Database): Generator<z.output<typeof incomingPaddle>> {
  for (const row of rowsByAge(db, 'paddles')) {
    const read = incomingPaddle.safeParse(document(db, row, 'paddle'));
    if (read.success) yield read.data;
  }
}

/** The rows of a table, oldest first. Only their keys are in memory together. */
function* rowsByAge(db: Database.Database, table: 'athletes' | 'boats' | 'paddles'): Generator<Row> {
  const ids = db.prepare<[], string>(`SELECT id FROM ${table} ORDER BY created_at, id`).pluck().all();
  const one = db.prepare<[unknown], Row>(`SELECT * FROM ${table} WHERE id = ?`);
  for (const id of ids) yield one.get(id)!;
}

/** Photographs that were removed from a sound store. */
export function readRemovedPhotos(db: Database.Database): RemovedPhoto[] {
  return db
    .prepare<[], string>(
      "SELECT DISTINCT record_id FROM field_versions WHERE kind = 'photo' AND record_id NOT IN (SELECT id FROM boat_photos)",
    )
    .pluck()
    .all()
    .flatMap(
      (id) => removedPhoto.safeParse({ id, versions: versionsOf(db, { kind: 'photo', id }) }).data ?? [],
    );
}

/**
 * One fit of a sound store; null if nothing of it reads. With all of its revisions, oldest first, and trials, or with those that
 * are given; `more`: others follow.
 */
export function readIncomingFit(
  db: Database.Database,
  id: string,
  given?: Pick<IncomingFit, 'revisions' | 'trials'> & { more: boolean },
): IncomingFit | null {
  const row = db.prepare<[string], Row>('SELECT * FROM fits WHERE id = ?').get(id);
  const idsIn = (table: string, order: string) =>
    db
      .prepare<[string], string>(`SELECT id FROM ${table} WHERE fit_id = ? ORDER BY ${order}`)
      .pluck()
      .all(id);
  const revisions = given?.revisions ?? readRevisions(db, idsIn('revisions', 'number'));
  const trials = given?.trials ?? readTrials(db, idsIn('trials', 'created_at, id'));
  const kept = db.prepare<[string], Row>('SELECT * FROM drafts WHERE fit_id = ?').get(id);
  const draft = (kept && incomingDraft.safeParse(draftOf(kept)).data) ?? null;
  const parts = { revisions, draft };
  const versions = versionsOf(db, { kind: 'fit', id });
  const whole = { id, ...datesOf(row, parts), ...parts, trials, versions };
  return incomingFit.safeParse(given?.more ? { ...whole, more: true } : whole).data ?? null;
}

/** Revisions of a sound store by their identifiers, in the order of their numbers; those that do not read are left out. */
export function readRevisions(db: Database.Database, ids: readonly string[]): IncomingFit['revisions'] {
  const one = db.prepare<[string], Row>(
    `SELECT revisions.*, answers FROM revisions LEFT JOIN revision_words ON revision_id = revisions.id
     WHERE revisions.id = ?`,
  );
  return ids
    .flatMap((id) => incomingRevision.safeParse(revisionOf(one.get(id) ?? {})).data ?? [])
    .sort((a, b) => a.number - b.number);
}

/** Trials likewise, in the order in which they are asked for. */
export function readTrials(db: Database.Database, ids: readonly string[]): IncomingFit['trials'] {
  const one = db.prepare<[string], Row>('SELECT * FROM trials WHERE id = ?');
  return ids.flatMap((id) => incomingTrial.safeParse(trialOf(db, one.get(id) ?? {})).data ?? []);
}

function readTable(db: Database.Database, table: string): { rows: Row[]; broken: boolean } {
  const rows = new Map<unknown, Row>();
  const read = (order: 'ASC' | 'DESC'): boolean => {
    try {
      const all = db.prepare<[], Row>(`SELECT rowid AS row_number, * FROM ${table} ORDER BY rowid ${order}`);
      for (const row of all.iterate()) rows.set(row.row_number, row);
      return true;
    } catch {
      return false;
    }
  };
  const broken = !read('ASC');
  if (broken) read('DESC');
  return { rows: [...rows.values()], broken };
}

function document(db: Database.Database, row: Row, column: 'athlete' | 'boat' | 'paddle'): Row {
  const versions = versionsOf(db, { kind: column, id: String(row.id) });
  const joined = column === 'athlete' ? { joinedInto: row.joined_into ?? null } : {};
  return { id: row.id, [column]: readJson(row[column]), ...datesOf(row), ...joined, versions };
}

/** None where the store is older, or damaged there: its values then count as written without ancestors. */
function versionsOf(db: Database.Database, ref: RecordRef): RecordVersions | undefined {
  try {
    return readVersions({ db }, ref) ?? undefined;
  } catch {
    return undefined;
  }
}

function measuringRow({ saved_at, measuring }: Row): Row {
  return { savedAt: saved_at, measuring: readJson(measuring) };
}

function revisionOf(row: Row): Row {
  const { id, number, name, reason, saved_at } = row;
  // What a revision answers is beside it; lost or unreadable, it must not take the revision with it.
  const answers = revisionAnswers.safeParse(readJson(row.answers)).data ?? [];
  return { id, number, name, reason, savedAt: saved_at, fit: readJson(row.fit), answers };
}

function trialOf(db: Database.Database, row: Row): Row {
  const { id, revision_id, athlete_id } = row;
  return {
    id,
    revisionId: revision_id,
    athleteId: athlete_id,
    trial: readJson(row.trial),
    ...datesOf(row),
    versions: versionsOf(db, { kind: 'trial', id: String(id) }),
  };
}

/** An older version has fewer tables; one that should be there and cannot be read is found out by reading it. */
function hasTable(db: Database.Database, table: string): boolean {
  if (!LATER_TABLES.includes(table)) return true;
  try {
    return db.prepare('SELECT 1 FROM sqlite_schema WHERE name = ?').get(table) !== undefined;
  } catch {
    return true;
  }
}

const LATER_TABLES = ['trials', 'revision_words', 'measurings'];

function draftOf(row: Row): Row {
  return { savedAt: row.saved_at, fit: readJson(row.fit) };
}

/** A fit whose own row is lost takes its dates from what is left of it. */
function datesOf(
  row: Row | undefined,
  parts?: { revisions: { savedAt: string }[]; draft: { savedAt: string } | null },
): Row {
  if (row) return { createdAt: row.created_at, changedAt: row.changed_at, archivedAt: row.archived_at };
  const instants = [...(parts?.revisions ?? []), ...(parts?.draft ? [parts.draft] : [])]
    .map((part) => part.savedAt)
    .sort();
  return { createdAt: instants[0], changedAt: instants.at(-1), archivedAt: null };
}

function grouped<T>(rows: readonly Row[], by: string, read: (row: Row) => T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const key = String(row[by]);
    const group = groups.get(key);
    if (group) group.push(...read(row));
    else groups.set(key, read(row));
  }
  return groups;
}
