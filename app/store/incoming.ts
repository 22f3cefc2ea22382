import { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { measuringSchema } from '../../core/document/measuring-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { trialSchema } from '../../core/trial/observation.ts';
import { photoCaption, photoMime, photoSubject } from '../contract/photos.ts';
import { id, instant, revisionAnswers } from '../contract/records.ts';
import type { ErasedPerson } from './erased-people.ts';
import { recordVersions } from './record-versions.ts';

const dates = { createdAt: instant, changedAt: instant, archivedAt: instant.nullable() };

/** Missing in what an older program wrote. */
const versions = recordVersions.optional();

export const incomingMeasuring = z.strictObject({ savedAt: instant, measuring: measuringSchema });

/** An athlete on its way in from a bundle, a backup or a damaged store, with everything that was ever measured. */
export const incomingAthlete = z.strictObject({
  id,
  athlete: athleteSchema,
  ...dates,
  measurings: z.array(incomingMeasuring).max(10_000).default([]),
  /** Another entry of the same person, to which this one was joined. */
  joinedInto: id.nullable().default(null),
  versions,
});

/** A photograph that a bundle has as a file of its own. */
export const incomingPhoto = z.strictObject({
  id,
  caption: photoCaption,
  ...photoSubject,
  mime: photoMime,
  addedAt: instant,
  versions,
});

/** A photograph that was removed. */
export const removedPhoto = z.strictObject({ id, versions: recordVersions });

/** A boat on its way in, and which photographs of it follow. */
export const incomingBoat = z.strictObject({
  id,
  boat: boatSchema,
  ...dates,
  photos: z.array(incomingPhoto).max(1000).default([]),
  versions,
});

/** A paddle of the club on its way in. */
export const incomingPaddle = z.strictObject({ id, paddle: stockPaddleSchema, ...dates, versions });

export const incomingRevision = z.strictObject({
  id,
  number: z.int().min(1),
  name: z.string().max(120),
  reason: z.string().max(2000),
  savedAt: instant,
  fit: fitSchema,
  answers: revisionAnswers.default([]),
});
export const incomingTrial = z.strictObject({
  id,
  revisionId: id,
  athleteId: id.nullable(),
  trial: trialSchema,
  ...dates,
  versions,
});
export const incomingDraft = z.strictObject({ savedAt: instant, fit: fitSchema });

/** A fit with all of its revisions, oldest first, its draft, and its trials. One of the first two is there. */
export const incomingFit = z
  .strictObject({
    id,
    ...dates,
    revisions: z.array(incomingRevision).max(100_000),
    draft: incomingDraft.nullable(),
    trials: z.array(incomingTrial).max(100_000).default([]),
    versions,
    /** Older revisions and more trials follow, as parts. */
    more: z.literal(true).optional(),
  })
  .refine((fit) => fit.revisions.length > 0 || fit.draft !== null, {
    path: ['revisions'],
    message: 'fit.nothing',
  });

/** Older revisions and more trials of a fit that is too long for one piece. */
export const incomingFitPart = z.strictObject({
  fitId: id,
  revisions: z.array(incomingRevision).max(100_000),
  trials: z.array(incomingTrial).max(100_000),
});

export type IncomingMeasuring = z.infer<typeof incomingMeasuring>;
export type IncomingPhoto = z.infer<typeof incomingPhoto>;
type IncomingAthlete = z.infer<typeof incomingAthlete>;
type IncomingBoat = z.infer<typeof incomingBoat>;
type IncomingPaddle = z.infer<typeof incomingPaddle>;
export type RemovedPhoto = z.infer<typeof removedPhoto>;
export type IncomingFit = z.infer<typeof incomingFit>;
export type IncomingFitPart = z.infer<typeof incomingFitPart>;
export type IncomingRevision = z.infer<typeof incomingRevision>;
export type IncomingTrial = z.infer<typeof incomingTrial>;

/** Everything that may come in. */
export type Incoming =
  | { readonly kind: 'athlete'; readonly item: IncomingAthlete }
  | { readonly kind: 'boat'; readonly item: IncomingBoat }
  | { readonly kind: 'paddle'; readonly item: IncomingPaddle }
  | { readonly kind: 'fit'; readonly item: IncomingFit }
  /** Comes after its fit. */
  | { readonly kind: 'fit-part'; readonly item: IncomingFitPart }
  /** Comes before all people. */
  | { readonly kind: 'erased'; readonly item: ErasedPerson }
  | { readonly kind: 'removed-photo'; readonly item: RemovedPhoto }
  /** Comes after its boat. */
  | {
      readonly kind: 'photo';
      readonly item: IncomingPhoto & { readonly boatId: string; readonly bytes: Uint8Array };
    };
