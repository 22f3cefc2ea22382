import { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { observationSchema } from '../../core/trial/observation.ts';

/** An instant as ISO 8601 text in UTC. */
export const instant = z.iso.datetime();
export const id = z.uuid();

export const athleteRecord = z.strictObject({
  id,
  athlete: athleteSchema,
  archived: z.boolean(),
  changedAt: instant,
});

const namedEntry = z.strictObject({ id, name: z.string() });

/** Entries of one person that were joined. */
export const personEntries = z.strictObject({
  joinedInto: namedEntry.nullable(),
  joined: z.array(namedEntry),
});

export const boatRecord = z.strictObject({ id, boat: boatSchema, archived: z.boolean(), changedAt: instant });

export const paddleRecord = z.strictObject({
  id,
  paddle: stockPaddleSchema,
  archived: z.boolean(),
  changedAt: instant,
});

export const fitSummary = z.strictObject({
  id,
  name: z.string(),
  boatName: z.string(),
  athleteNames: z.array(z.string()),
  revisions: z.int().min(0),
  hasDraft: z.boolean(),
  archived: z.boolean(),
  changedAt: instant,
});

/** An observation of a trial that a revision was made to answer, as it stood when the revision was kept. */
export const revisionAnswer = z.strictObject({ trialId: id, observation: observationSchema });
export const revisionAnswers = z.array(revisionAnswer).max(96);

export const revisionSummary = z.strictObject({
  id,
  number: z.int().min(1),
  name: z.string(),
  reason: z.string(),
  savedAt: instant,
  answers: revisionAnswers,
});

/** A fit as opened: its newest state (the draft if there is one), and its newest 200 revisions, newest first. */
export const openedFit = z.strictObject({
  id,
  fit: fitSchema,
  draftSavedAt: instant.nullable(),
  revisions: z.array(revisionSummary),
});

/** A stored row that could not be read, in quarantine. */
export const quarantinedRow = z.strictObject({
  table: z.string(),
  rowId: z.string(),
  problem: z.string(),
  foundAt: instant,
});

export type AthleteRecord = z.infer<typeof athleteRecord>;
export type BoatRecord = z.infer<typeof boatRecord>;
export type PaddleRecord = z.infer<typeof paddleRecord>;
export type FitSummary = z.infer<typeof fitSummary>;
/** A fit as it stands now, in which an athlete kneels in `seat`. */
export const kneltFit = z.strictObject({
  id,
  seat: z.int().min(0),
  fit: fitSchema,
  archived: z.boolean(),
  changedAt: instant,
});

export type RevisionAnswer = z.infer<typeof revisionAnswer>;
export type KneltFit = z.infer<typeof kneltFit>;
export type RevisionSummary = z.infer<typeof revisionSummary>;
export type OpenedFit = z.infer<typeof openedFit>;
export type QuarantinedRow = z.infer<typeof quarantinedRow>;
