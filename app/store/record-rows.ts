import type { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { measuringSchema } from '../../core/document/measuring-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { trialSchema } from '../../core/trial/observation.ts';
import { leavesOfContent, type RecordContent } from '../changes/record-content.ts';
import type { RecordKind } from '../changes/record-shapes.ts';
import { photoText } from '../contract/photos.ts';
import { prepared } from './prepared.ts';
import { readJsonObject } from './read-json.ts';
import type { RecordRef } from './record-versions.ts';
import type { Store } from './store.ts';

/** The schema of each kind's document. */
export const RECORD_SCHEMAS = {
  athlete: athleteSchema,
  boat: boatSchema,
  paddle: stockPaddleSchema,
  photo: photoText,
  fit: fitSchema,
  trial: trialSchema,
} as const satisfies Record<RecordKind, z.ZodType>;

/**
 * A record as it lies in the store, taken apart; null if there is none or it does not read. `checked` reads the document
 * by its schema, so that what an older program wrote has today's defaults.
 */
export function readLeaves(
  store: Pick<Store, 'db'>,
  ref: RecordRef,
  how: 'checked' | 'as-kept',
): Map<string, string> | null {
  const content = READERS[ref.kind](store, ref.id);
  if (!content) return null;
  const document = how === 'checked' ? checkedDocument(ref.kind, content.document) : content.document;
  return document === null ? null : leavesOfContent(ref.kind, { ...content, document });
}

/** A document as its schema reads it; null if it does not. */
export function checkedDocument<K extends RecordKind>(
  kind: K,
  document: unknown,
): z.output<(typeof RECORD_SCHEMAS)[K]> | null {
  const read = RECORD_SCHEMAS[kind].safeParse(document);
  return read.success ? (read.data as z.output<(typeof RECORD_SCHEMAS)[K]>) : null;
}

type Reader = (store: Pick<Store, 'db'>, id: string) => RecordContent | null;

interface Row {
  readonly text: string;
  readonly archived: 0 | 1;
  readonly joinedInto?: string | null;
  readonly revisionId?: string;
  readonly athleteId?: string | null;
}

const READERS: Readonly<Record<RecordKind, Reader>> = {
  athlete: (store, id) => {
    const content = row(
      store,
      id,
      'SELECT athlete AS text, archived_at IS NOT NULL AS archived, joined_into AS joinedInto FROM athletes WHERE id = ?',
    );
    return content && { ...content, measured: measuredDays(store, id) };
  },
  boat: (store, id) =>
    row(store, id, 'SELECT boat AS text, archived_at IS NOT NULL AS archived FROM boats WHERE id = ?'),
  paddle: (store, id) =>
    row(store, id, 'SELECT paddle AS text, archived_at IS NOT NULL AS archived FROM paddles WHERE id = ?'),
  photo: (store, id) =>
    row(
      store,
      id,
      // A merge patch leaves out what is null: a photograph of the boat alone has its caption only.
      `SELECT json_patch('{}', json_object('caption', caption, 'athleteId', athlete_id, 'fitId', fit_id,
         'study', json(study))) AS text, 0 AS archived FROM boat_photos WHERE id = ?`,
    ),
  // As a fit is opened: its draft, or its newest revision.
  fit: (store, id) =>
    row(
      store,
      id,
      `SELECT coalesce((SELECT fit FROM drafts WHERE fit_id = fits.id),
         (SELECT fit FROM revisions WHERE fit_id = fits.id ORDER BY number DESC LIMIT 1)) AS text,
         archived_at IS NOT NULL AS archived FROM fits WHERE id = ?`,
    ),
  trial: (store, id) =>
    row(
      store,
      id,
      `SELECT trial AS text, archived_at IS NOT NULL AS archived, revision_id AS revisionId, athlete_id AS athleteId
       FROM trials WHERE id = ?`,
    ),
};

function row({ db }: Pick<Store, 'db'>, id: string, sql: string): RecordContent | null {
  const found = prepared<[string], Row>(db, sql).get(id);
  const document = found && readJsonObject(found.text);
  if (!found || !document) return null;
  const { text: _, archived, ...beside } = found;
  return { document, archived: archived === 1, ...beside };
}

function measuredDays({ db }: Pick<Store, 'db'>, athleteId: string): RecordContent['measured'] {
  const days = prepared<[string], { takenOn: string; text: string }>(
    db,
    'SELECT taken_on AS takenOn, measuring AS text FROM measurings WHERE athlete_id = ? ORDER BY taken_on',
  );
  return days
    .all(athleteId)
    .flatMap(
      ({ takenOn, text }) => measuringSchema.safeParse({ ...readJsonObject(text), takenOn }).data ?? [],
    );
}
