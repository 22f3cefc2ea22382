import type { z } from 'zod';
import { contentOfLeaves, type RecordContent } from '../changes/record-content.ts';
import {
  type Incoming,
  incomingAthlete,
  incomingBoat,
  incomingFit,
  incomingPaddle,
  incomingRevision,
  incomingTrial,
} from '../store/incoming.ts';
import type { RecordVersions } from '../store/record-versions.ts';
import { withEmptySeats } from './push.ts';
import { type Asking, readRecords, type ServerRecord } from './server-record.ts';

/** Thrown when the library holds what this program cannot read: a later program wrote it. Nothing is imported then. */
export class WrittenByLaterProgram extends Error {}

type Item<K extends Incoming['kind']> = Extract<Incoming, { kind: K }>['item'];

/** An athlete, a boat or a paddle of the library, as it comes in. */
export function listedItem(record: ServerRecord): Incoming {
  const { kind, id } = record.row;
  const content = contentOf(record);
  const common = { id, ...datesOf(record, content), versions: versionsOf(record) };
  if (kind === 'boat')
    return { kind, item: parsed(incomingBoat, { ...common, boat: content.document, photos: [] }) };
  if (kind === 'paddle')
    return { kind, item: parsed(incomingPaddle, { ...common, paddle: content.document }) };
  const savedAt = record.row.changed_at;
  const item = {
    ...common,
    athlete: content.document,
    joinedInto: content.joinedInto ?? null,
    measurings: (content.measured ?? []).map((measuring) => ({ savedAt, measuring })),
  };
  return { kind: 'athlete', item: parsed(incomingAthlete, item) };
}

/** What of a fit is to be fetched: `all` its revisions and trials, or some. */
export interface FitNews {
  readonly id: string;
  readonly revisions: readonly string[] | 'all';
  readonly trials: readonly string[] | 'all';
}

interface RevisionRow {
  readonly id: string;
  readonly fit_id: string;
  readonly number: number;
  readonly saved_at: string;
  readonly settings: string;
  readonly name: string | null;
  readonly reason: string | null;
  readonly answers: string | null;
  readonly private: string | null;
  readonly athletes: { path: string; value: string }[];
}

/** Fits as they come in, with the records that were read for them. A fit that is not there, or may not be seen, is left out. */
export async function readFits(
  sql: Asking,
  news: readonly FitNews[],
): Promise<{ items: Item<'fit'>[]; records: ServerRecord[] }> {
  const ids = news.map(({ id }) => id);
  const fits = await readRecords(
    sql,
    ids.map((id) => ({ kind: 'fit', id })),
  );
  const whole = news.filter(({ revisions }) => revisions === 'all').map(({ id }) => id);
  const some = news.flatMap(({ revisions }) => (revisions === 'all' ? [] : revisions));
  const revisions = await sql<RevisionRow[]>`
    SELECT id, fit_id, number, saved_at, settings, name, reason, answers, private, coalesce((
      SELECT jsonb_agg(jsonb_build_object('path', path, 'value', value)) FROM revision_athletes WHERE revision_id = id
    ), '[]') AS athletes
    FROM revisions LEFT JOIN revision_words ON revision_id = id
    WHERE id = ANY (${some}::uuid[]) OR fit_id = ANY (${whole}::uuid[]) ORDER BY number, saved_at, id`;
  const wholeTrials = news.filter(({ trials }) => trials === 'all').map(({ id }) => id);
  const owned = await sql<{ id: string }[]>`
    SELECT id FROM records WHERE kind = 'trial' AND owner = ANY (${wholeTrials}::uuid[])`;
  const trialIds = [
    ...news.flatMap(({ trials }) => (trials === 'all' ? [] : trials)),
    ...owned.map(({ id }) => id),
  ];
  const trials = await readRecords(
    sql,
    trialIds.map((id) => ({ kind: 'trial', id })),
  );
  const revisionsOf = Map.groupBy(revisions, ({ fit_id }) => fit_id);
  const trialsOf = Map.groupBy([...trials.values()], ({ row }) => row.owner);
  const items = [...fits.values()].map((fit) =>
    fitItem(fit, { revisions: revisionsOf.get(fit.row.id) ?? [], trials: trialsOf.get(fit.row.id) ?? [] }),
  );
  return { items, records: [...fits.values(), ...trials.values()] };
}

function fitItem(
  fit: ServerRecord,
  parts: { revisions: readonly RevisionRow[]; trials: readonly ServerRecord[] },
): Item<'fit'> {
  const content = contentOf(fit);
  return parsed(incomingFit, {
    id: fit.row.id,
    ...datesOf(fit, content),
    versions: versionsOf(fit),
    draft: { savedAt: fit.row.changed_at, fit: withEmptySeats({ kind: 'fit' }, content.document) },
    revisions: parts.revisions.map(revisionItem),
    trials: parts.trials.map(trialItem),
  });
}

function revisionItem(row: RevisionRow): z.output<typeof incomingRevision> {
  const leaves = new Map<string, string>([
    ...(Object.entries(JSON.parse(row.settings)) as [string, string][]),
    ...(Object.entries(JSON.parse(row.private ?? '{}')) as [string, string][]),
    ...row.athletes.map(({ path, value }) => [path, value] as const),
  ]);
  return parsed(incomingRevision, {
    id: row.id,
    number: row.number,
    savedAt: row.saved_at,
    name: row.name ?? '',
    reason: row.reason ?? '',
    answers: JSON.parse(row.answers ?? '[]'),
    fit: withEmptySeats({ kind: 'fit' }, contentOfLeaves('fit', leaves).document),
  });
}

function trialItem(record: ServerRecord): z.output<typeof incomingTrial> {
  const { document, revisionId, athleteId, ...content } = contentOf(record);
  return parsed(incomingTrial, {
    id: record.row.id,
    revisionId,
    athleteId: athleteId ?? null,
    trial: document,
    ...datesOf(record, content),
    versions: versionsOf(record),
  });
}

/** A photograph as it comes in: with its picture, or that it was removed. */
export function photoItem(record: ServerRecord, bytes: Uint8Array | null): Incoming | null {
  const { id, owner, mime, created_at } = record.row;
  const { document } = contentOf(record);
  const versions = versionsOf(record);
  if (!document) return { kind: 'removed-photo', item: { id, versions } };
  if (!bytes || !owner || !mime) return null;
  const item = { id, boatId: owner, mime, addedAt: created_at, ...document, bytes, versions };
  return { kind: 'photo', item: item as Item<'photo'> };
}

function contentOf({ row, state }: ServerRecord): RecordContent {
  return contentOfLeaves(row.kind, state.leaves);
}

function datesOf({ row }: ServerRecord, { archived }: Pick<RecordContent, 'archived'>) {
  return {
    createdAt: row.created_at,
    changedAt: row.changed_at,
    archivedAt: archived ? row.changed_at : null,
  };
}

function versionsOf({ state }: ServerRecord): RecordVersions {
  return { base: state.base, fields: Object.fromEntries(state.fields) } as RecordVersions;
}

function parsed<S extends z.ZodType>(schema: S, value: unknown): z.output<S> {
  const read = schema.safeParse(value);
  if (!read.success) throw new WrittenByLaterProgram(read.error.message);
  return read.data;
}
