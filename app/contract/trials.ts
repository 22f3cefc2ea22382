import { z } from 'zod';
import { trialSchema } from '../../core/trial/observation.ts';
import { id, instant, revisionSummary } from './records.ts';

/** A trial on the water as kept: of which fit, which revision was tried, and by whom. */
export const trialRecord = z.strictObject({
  id,
  fitId: id,
  revisionId: id,
  /** Null when whoever knelt there has no identifier. */
  athleteId: id.nullable(),
  trial: trialSchema,
  archived: z.boolean(),
  createdAt: instant,
  changedAt: instant,
});

const ofFit = { fitId: id, fitName: z.string(), boatName: z.string() };

/** One thing that happened to an athlete's fits: a revision that was kept, or a trial. */
export const timelineEntry = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('revision'),
    at: instant,
    ...ofFit,
    seat: z.int().min(0),
    revision: revisionSummary,
  }),
  z.strictObject({
    kind: z.literal('trial'),
    at: instant,
    ...ofFit,
    /** Null when the revision that was tried can no longer be read. */
    revisionNumber: z.int().min(1).nullable(),
    record: trialRecord,
  }),
]);

/** What kinds of things can be found. */
export const THING_KINDS = ['fit', 'athlete', 'boat', 'paddle', 'trial', 'revision'] as const;

/** Something in the store that a search has found, or that was worked on lately. */
export const foundThing = z.strictObject({
  kind: z.enum(THING_KINDS),
  id,
  /** The fit that a revision or a trial belongs to. */
  fitId: id.nullable(),
  /** Its name; empty for a trial, which is called by its day. */
  title: z.string(),
  /** A revision's number. */
  number: z.int().min(1).nullable(),
  /** The day a trial was held; null for anything else, or where that cannot be read. */
  heldOn: z.string().nullable(),
  /** The boat of a fit, the fit of a trial or revision; else empty. */
  of: z.string(),
  /** The beginning of its notes or its reason; may be empty. */
  words: z.string(),
  archived: z.boolean(),
  /** When it was last changed. */
  at: instant,
});

export type TrialRecord = z.infer<typeof trialRecord>;
export type TimelineEntry = z.infer<typeof timelineEntry>;
export type FoundThing = z.infer<typeof foundThing>;
