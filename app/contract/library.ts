import { z } from 'zod';
import { id, instant } from './records.ts';

/** What a person may do in a club's library. */
const personRole = z.enum(['head-coach', 'coach', 'boatbuilder', 'viewer']);
/** An invitation as it was told: it serves once. */
export const invitationCode = z.string().min(1).max(40_000);
const count = z.int().min(0);

/** Why a call did not come to its end: `away` without network or server, `gone` where the login opens nothing any more. */
const callProblem = z.enum(['away', 'gone', 'not-secure', 'later-program', 'failed']);

/** How this computer stands to its club's library. */
export const libraryState = z.strictObject({
  /** Null: there is none, and everything stays on this computer. */
  joined: z
    .strictObject({ club: z.string(), person: z.string(), role: personRole, host: z.string() })
    .nullable(),
  /** Records and revisions that the library has not, or not so. */
  waiting: count,
  /** When everything was shared last. */
  sharedAt: instant.nullable(),
  isCalling: z.boolean(),
  problem: callProblem.nullable(),
  /** Counts what others' changes brought here: a new number, something new. */
  arrivals: count,
  /** Others who have a fit open. */
  present: z.array(z.strictObject({ fitId: id, name: z.string() })),
  /** Fits of which something new waits until they are closed here. */
  held: z.array(id),
  /** Athletes whom this person may no longer see; they stay here for changes that could not be sent, until they are removed. */
  kept: z.array(z.strictObject({ id, name: z.string() })),
});

/** Who is in which group, as the head coach sees it. */
export const libraryGroups = z.strictObject({
  groups: z.array(
    z.strictObject({
      id,
      name: z.string(),
      /** Holds every athlete, those to come too. */
      everyone: z.boolean(),
      people: z.array(z.strictObject({ id, name: z.string(), role: personRole })),
      /** Identifiers. */
      athletes: z.array(id),
    }),
  ),
});
export const groupName = z.string().trim().min(1).max(60);

/** What an invitation opens, and what joining would share. */
export const libraryPreview = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('ready'),
    host: z.string(),
    role: personRole,
    /** What would be sent, by kind. */
    shares: z.record(
      z.enum(['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'photos']),
      count,
    ),
  }),
  /** `unreadable`: no invitation. `used`: it has served, or is too old. */
  z.strictObject({ kind: z.enum(['unreadable', 'used', 'away', 'not-secure', 'failed']) }),
]);
