import { z } from 'zod';
import { recordKind } from './conflicts.ts';
import { id, instant } from './records.ts';

/** A backup of the whole store, in the data folder's `backups`. */
export const backupRecord = z.strictObject({
  name: z.string().max(120),
  takenAt: instant,
  cause: z.enum(['daily', 'asked', 'before-restore', 'before-import']),
  bytes: z.int().min(0),
});

const count = z.int().min(0);
const mergeCount = z.strictObject({
  added: count,
  updated: count,
  same: count,
  keptNewer: count,
  /** Fields changed on both sides: both values are kept, and a person decides. */
  conflicts: count,
});

/** What became, or would become, of everything that comes in from a bundle or a damaged store. */
export const mergeCounts = z.strictObject({
  athletes: mergeCount,
  boats: mergeCount,
  paddles: mergeCount,
  fits: mergeCount,
  revisions: mergeCount,
  trials: mergeCount,
  photos: mergeCount,
  /** People who were erased here and whom the file still holds: they stay erased. */
  refusedErased: count,
  /** People who were erased elsewhere, and are erased here too. */
  erasedHere: count,
});

/** Told once, after a damaged store was found at the start. */
export const recoveryRecord = z.strictObject({
  /** Plain sentences: what happened, what was kept, what to do. */
  message: z.string(),
  quarantinedAt: z.string(),
  salvaged: mergeCounts,
  unreadable: count,
  /** The newest backup that reads from end to end, to be offered; null if there is none. */
  newestGoodBackup: backupRecord.nullable(),
});

/** Where a file that the program made went: see `Bridge` for how a download is followed. */
export const delivery = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('saved'), path: z.string() }),
  z.strictObject({ kind: z.literal('download'), href: z.string() }),
  z.strictObject({ kind: z.literal('cancelled') }),
]);

/** A bundle that has been read and checked, and what taking it in would do. Nothing has been changed yet. */
export const bundlePreview = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('ready'),
    /** Names this bundle for `bundle.import`. */
    handle: id,
    madeAt: instant,
    changes: mergeCounts,
  }),
  /** It is encrypted: `bundle.unlock` opens it. */
  z.strictObject({ kind: z.literal('locked'), handle: id, wrong: z.boolean() }),
  z.strictObject({ kind: z.literal('cancelled') }),
]);

/** Fewer signs than this are guessed in no time, whatever they are. */
export const SHORTEST_PASSPHRASE = 12;
/** A passphrase to encrypt with. */
export const newPassphrase = z.string().min(SHORTEST_PASSPHRASE).max(500);
/** A passphrase to open with: another program may have taken a shorter one. */
export const knownPassphrase = z.string().min(1).max(500);

/** What erasing an athlete takes away. */
export const erasure = z.strictObject({
  /** Names of the fits of this athlete alone: they go whole. */
  fits: z.array(z.string()),
  /** Names of crew fits that stay, with this seat empty. */
  crewFits: z.array(z.string()),
  revisions: count,
  drafts: count,
  trials: count,
  measurings: count,
  photos: count,
  /** Where else the name stands, in words that stay. */
  words: z.array(
    z.strictObject({
      kind: recordKind,
      /** What the record is called. */
      title: z.string(),
      text: z.string(),
      /** The full name stands there; else only a part of it, which may be somebody else's. */
      full: z.boolean(),
    }),
  ),
});

export const erasureReport = erasure.extend({
  copiesRewritten: count,
  /** Files that may still hold something of this athlete and are to be deleted by hand. */
  copiesLeft: z.array(z.string()),
  /** What cannot be reached from here, in plain words. */
  message: z.string(),
});

/** How far a long piece of work has come. */
export const workProgress = z.strictObject({
  what: z.enum(['export', 'read-bundle', 'backup', 'erase-preview', 'erase', 'unlock', 'import', 'restore']),
  done: count,
  of: count,
});

export type RecoveryRecord = z.infer<typeof recoveryRecord>;
export type MergeCountsRecord = z.infer<typeof mergeCounts>;
