import { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { isoDate, label } from '../../core/document/measure-schema.ts';
import { measuringSchema } from '../../core/document/measuring-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { stockSchema } from '../../core/document/stock-schema.ts';
import { photoStudySchema } from '../../core/photograph/photo-study-schema.ts';
import { trialSchema } from '../../core/trial/observation.ts';
import { conflictChoice, fieldConflict } from './conflicts.ts';
import { displayRecord } from './display.ts';
import { groupName, invitationCode, libraryGroups, libraryPreview, libraryState } from './library.ts';
import { MOST_FOUND } from './most-found.ts';
import { exportInput, exportOutput, sectionsToExport } from './paper-export.ts';
import { photoCaption, photoData, photoMime, photoRecord, photoSubject } from './photos.ts';
import {
  athleteRecord,
  boatRecord,
  fitSummary,
  id,
  instant,
  kneltFit,
  openedFit,
  paddleRecord,
  personEntries,
  quarantinedRow,
  revisionAnswers,
  revisionSummary,
} from './records.ts';
import {
  backupRecord,
  bundlePreview,
  delivery,
  erasure,
  erasureReport,
  knownPassphrase,
  mergeCounts,
  newPassphrase,
  recoveryRecord,
  workProgress,
} from './safekeeping.ts';
import { tableToExport } from './tables.ts';
import { foundThing, timelineEntry, trialRecord } from './trials.ts';

const entry = <I extends z.ZodType, O extends z.ZodType>(input: I, output: O) => ({ input, output });
const nothing = z.strictObject({});
const byId = z.strictObject({ id });
/** A list: the whole of it, or with `limit` a part, the last one where it is shorter. `search` ignores accents and case. */
const listing = z.strictObject({
  archived: z.boolean().default(false),
  search: z.string().max(120).default(''),
  limit: z.int().min(1).max(1000).nullable().default(null),
  offset: z.int().min(0).max(10_000_000).default(0),
});
export type Listing = z.output<typeof listing>;

/**
 * Every call between renderer and services: name, input, output. Both shells register exactly these. Adding a
 * capability means one entry here, one service function and one caller.
 */
export const contract = {
  'program.state': entry(
    nothing,
    z.strictObject({
      version: z.string(),
      shell: z.enum(['electron', 'loopback']),
      /** No athletes, boats or fits yet: offer the demo and the blank start. */
      empty: z.boolean(),
      /** The program did not come to its end the last time: go on where the person was. */
      cutShort: z.boolean(),
      /** Stored rows that do not read, in quarantine. */
      problems: z.array(quarantinedRow),
      /** Set when a damaged store was found at this start. */
      recovery: recoveryRecord.nullable(),
      /** Sentences about the store that need somebody: a backup that failed, say. */
      notices: z.array(z.string()),
      /** Where everything is kept. */
      dataFolder: z.string(),
    }),
  ),
  /** Closes the store and ends the program, a moment after it has answered. */
  'program.quit': entry(nothing, z.strictObject({ quitting: z.literal(true) })),
  /** How one person likes to see things on this computer: theme, units, decimal mark, measured screens. */
  'display.read': entry(nothing, displayRecord),
  'display.keep': entry(displayRecord, displayRecord),
  'demo.install': entry(nothing, z.strictObject({ fitId: id })),
  'athletes.list': entry(listing, z.array(athleteRecord)),
  /** One of them, also one that is archived. */
  'athletes.open': entry(byId, athleteRecord),
  /** `opened`: the athlete as it was before the change. What others have changed since then stays; so with boats and paddles. */
  'athletes.save': entry(
    z.strictObject({ athlete: athleteSchema, opened: athleteSchema.optional() }),
    athleteRecord,
  ),
  'athletes.archive': entry(byId, athleteRecord),
  'athletes.restore': entry(byId, athleteRecord),
  /** Other entries of the same person: the one to which this is joined, and those that are joined to this one. */
  'athletes.entries': entry(byId, personEntries),
  /** Shows one entry with another one of the same person; nothing of either is changed. */
  'athletes.join': entry(z.strictObject({ id, into: id }), personEntries),
  /** Makes a joined entry one of its own again. */
  'athletes.takeApart': entry(byId, personEntries),
  /** What `athletes.erase` would take away. */
  'athletes.previewErase': entry(byId, erasure),
  /** Takes an athlete out of the store and its backups for good. `name` must be the athlete's name as it stands. */
  'athletes.erase': entry(
    z.strictObject({
      id,
      name: z.string().max(200),
      /** How far the name is taken out of words that stay. */
      clear: z.enum(['none', 'full-names', 'parts-too']).default('full-names'),
    }),
    erasureReport,
  ),
  /** Which of these athletes were erased, here or elsewhere: nothing of theirs may stay with whoever asks. */
  'athletes.erased': entry(z.strictObject({ ids: z.array(id).max(1000) }), z.array(id)),
  /**
   * Keeps a table of athletes that has been checked row by row: all of them or none, after a backup of the present. `opened`:
   * those of them who were known, as they were when the table was checked.
   */
  'athletes.import': entry(
    z.strictObject({
      athletes: z.array(athleteSchema).min(1).max(2000),
      opened: z.array(athleteSchema).max(2000).default([]),
    }),
    z.strictObject({ saved: z.int().min(0), presentKeptAs: backupRecord }),
  ),
  /** Everything that an athlete ever measured, oldest first; saving an athlete adds to it. */
  'measurings.list': entry(z.strictObject({ athleteId: id }), z.array(measuringSchema)),
  /** Keeps an earlier day's measuring, beside what is known of that day; the athlete stays as measured last. Gives all of them. */
  'measurings.save': entry(
    z.strictObject({ athleteId: id, measuring: measuringSchema }),
    z.array(measuringSchema),
  ),
  /** Takes an earlier day's measuring away; that of the athlete's present body cannot go. Gives those that are left. */
  'measurings.remove': entry(z.strictObject({ athleteId: id, takenOn: isoDate }), z.array(measuringSchema)),
  'boats.list': entry(listing, z.array(boatRecord)),
  /** One of them, also one that is archived. */
  'boats.open': entry(byId, boatRecord),
  'boats.save': entry(z.strictObject({ boat: boatSchema, opened: boatSchema.optional() }), boatRecord),
  'boats.archive': entry(byId, boatRecord),
  'boats.restore': entry(byId, boatRecord),
  /** Fits that stand in a boat now, last changed first. */
  'boats.fits': entry(byId, z.array(fitSummary)),
  /** A boat's sections at full size, handed to the person as a file. */
  'boats.sections': entry(sectionsToExport, delivery),
  /** Pads and rests that are kept with a boat now: a fit carries those of the day it was made. */
  'boats.stock': entry(byId, stockSchema),
  'photos.list': entry(z.strictObject({ boatId: id }), z.array(photoRecord)),
  /** Photographs of an athlete in a boat. */
  'photos.ofAthlete': entry(z.strictObject({ athleteId: id }), z.array(photoRecord)),
  'photos.open': entry(byId, z.strictObject({ mime: photoMime, data: photoData })),
  'photos.add': entry(
    z.strictObject({ boatId: id, caption: photoCaption, data: photoData, ...photoSubject }),
    photoRecord,
  ),
  /** Keeps what was marked in a photograph and read off it. */
  'photos.study': entry(z.strictObject({ id, study: photoStudySchema }), photoRecord),
  'photos.describe': entry(z.strictObject({ id, caption: photoCaption }), photoRecord),
  'photos.remove': entry(byId, z.strictObject({ removed: z.literal(true) })),
  /** The club's paddles. */
  'paddles.list': entry(listing, z.array(paddleRecord)),
  /** One of them, also one that is archived. */
  'paddles.open': entry(byId, paddleRecord),
  'paddles.save': entry(
    z.strictObject({ paddle: stockPaddleSchema, opened: stockPaddleSchema.optional() }),
    paddleRecord,
  ),
  'paddles.archive': entry(byId, paddleRecord),
  'paddles.restore': entry(byId, paddleRecord),
  'fits.list': entry(listing, z.array(fitSummary)),
  'fits.create': entry(z.strictObject({ fit: fitSchema }), openedFit),
  'fits.open': entry(byId, openedFit),
  'fits.archive': entry(byId, fitSummary),
  'fits.restore': entry(byId, fitSummary),
  /**
   * Keeps the fit as it stands; called after every gesture. `savedAt` is given back once it is on the disk. With
   * `basedOn` (the `savedAt` or `draftSavedAt` last seen, null for none) a draft that another window has kept
   * meanwhile is not overwritten: the call is refused as a `conflict`.
   */
  'drafts.save': entry(
    z.strictObject({ id, fit: fitSchema, basedOn: instant.nullable().optional() }),
    z.strictObject({ savedAt: instant }),
  ),
  /** Forgets the unsaved draft: the fit stands again as its newest revision says. */
  'drafts.discard': entry(byId, openedFit),
  /** Keeps a named revision; the draft goes. With `basedOn`, another window's newer draft is a `conflict`, as above. */
  'revisions.save': entry(
    z.strictObject({
      fitId: id,
      fit: fitSchema,
      name: label,
      reason: z.string().max(2000).default(''),
      /** Observations of trials that it was made to answer. */
      answers: revisionAnswers.default([]),
      basedOn: instant.nullable().optional(),
    }),
    revisionSummary,
  ),
  'revisions.open': entry(byId, z.strictObject({ revision: revisionSummary, fit: fitSchema })),
  /** Every trial of a fit, archived ones too, the latest first. */
  'trials.list': entry(z.strictObject({ fitId: id }), z.array(trialRecord)),
  /** Keeps a trial of a revision: a new one, or with `id` that one in a new state. */
  'trials.save': entry(
    z.strictObject({
      id: id.optional(),
      revisionId: id,
      trial: trialSchema,
      opened: z.strictObject({ revisionId: id, trial: trialSchema }).optional(),
    }),
    trialRecord,
  ),
  'trials.archive': entry(byId, trialRecord),
  'trials.restore': entry(byId, trialRecord),
  /** Revisions of a fit before the number `before`, newest first: a fit comes with the newest 200 of them only. */
  'revisions.list': entry(
    z.strictObject({ fitId: id, before: z.int().min(1), limit: z.int().min(1).max(1000).default(200) }),
    z.array(revisionSummary),
  ),
  /** Revisions of fits in which an athlete knelt, and the athlete's trials, newest first. */
  'athletes.timeline': entry(
    byId.extend({ limit: z.int().min(1).max(100_000).default(200) }),
    z.array(timelineEntry),
  ),
  /** Fits in which an athlete kneels as they stand now, last changed first. */
  'athletes.fits': entry(byId, z.array(kneltFit)),
  /**
   * Everything that holds every word of `text`: athletes, boats, paddles, fits, trials, revisions. Accents and case do not
   * matter. With an empty text: what was worked on lately.
   */
  'things.find': entry(
    z.strictObject({ text: z.string().max(120), limit: z.int().min(1).max(MOST_FOUND).default(30) }),
    z.array(foundThing),
  ),
  'backups.list': entry(nothing, z.array(backupRecord)),
  'backups.take': entry(nothing, backupRecord),
  /**
   * `replace` makes the store what it was at that backup; `bring-back` adds only what is missing now. A backup of the
   * present is taken first; its record is given back.
   */
  'backups.restore': entry(
    z.strictObject({ name: z.string().max(120), how: z.enum(['replace', 'bring-back']) }),
    z.strictObject({ presentKeptAs: backupRecord }),
  ),
  /** Everything as one file, encrypted if a passphrase is given. */
  'bundle.export': entry(z.strictObject({ passphrase: newPassphrase.nullable().default(null) }), delivery),
  /** Reads a bundle and says what taking it in would do. `upload`: see `Bridge`; null asks with a native dialog. */
  'bundle.preview': entry(z.strictObject({ upload: id.nullable() }), bundlePreview),
  /** Opens a bundle that `bundle.preview` found to be encrypted, and previews it. */
  'bundle.unlock': entry(z.strictObject({ handle: id, passphrase: knownPassphrase }), bundlePreview),
  'bundle.import': entry(
    z.strictObject({ handle: id }),
    z.strictObject({ changes: mergeCounts, presentKeptAs: backupRecord }),
  ),
  /** Fields that were changed on two computers at once, to be decided. */
  'conflicts.list': entry(nothing, z.array(fieldConflict)),
  /** Lets one of a field's values stand, here and wherever this store's changes come. Gives what is left to decide. */
  'conflicts.decide': entry(conflictChoice, z.array(fieldConflict)),
  /** How this computer stands to its club's library. */
  'library.state': entry(nothing, libraryState),
  /** Tries an invitation without using it, and says what joining would share. */
  'library.preview': entry(z.strictObject({ code: invitationCode }), libraryPreview),
  /** Uses an invitation; from then on this computer shares. */
  'library.join': entry(z.strictObject({ code: invitationCode }), libraryState),
  /** Calls the library now. */
  'library.call': entry(nothing, libraryState),
  /** Shares no more. What came stays here. */
  'library.leave': entry(z.strictObject({ remove: z.boolean().default(false) }), libraryState),
  /** The groups of the club; none for whoever is no head coach. */
  'library.groups': entry(nothing, libraryGroups),
  'library.makeGroup': entry(z.strictObject({ name: groupName }), libraryGroups),
  'library.setInGroup': entry(
    z.strictObject({ groupId: id, athleteId: id, isIn: z.boolean() }),
    libraryGroups,
  ),
  /** Removes an athlete who is among `kept`, with what could not be sent. */
  'library.discard': entry(z.strictObject({ athleteId: id }), libraryState),
  /** Says which fit is open here, null for none: others see it, and news of it waits. */
  'library.open': entry(z.strictObject({ fitId: id.nullable() }), libraryState),
  /** A set-out sheet, full-size templates or a take-home page, handed to the person as a file. */
  'paper.export': entry(exportInput, exportOutput),
  /** A table handed to the person as a CSV file. */
  'tables.export': entry(tableToExport, delivery),
  /** How far a long piece of work has come; null when there is none. */
  'work.progress': entry(nothing, workProgress.nullable()),
  /** Asks a long piece of work to stop; it is then refused as `cancelled`, and has changed nothing. */
  'work.cancel': entry(nothing, z.strictObject({ asked: z.boolean() })),
} as const;

type Contract = typeof contract;
export type CallName = keyof Contract;
/** What a caller may pass: defaults may be left out. */
export type CallInput<N extends CallName> = z.input<Contract[N]['input']>;
/** What a service receives: parsed, defaults filled in. */
export type ParsedInput<N extends CallName> = z.output<Contract[N]['input']>;
export type CallOutput<N extends CallName> = z.output<Contract[N]['output']>;
