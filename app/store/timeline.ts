import type { KneltFit } from '../contract/records.ts';
import type { TimelineEntry } from '../contract/trials.ts';
import { openFit } from './fits.ts';
import { entryIdsOf } from './join-people.ts';
import { type RevisionRow, summaryOfRow } from './revision-words.ts';
import type { Store } from './store.ts';
import { TRIAL_ROWS, type TrialRow, trialOfRow } from './trials.ts';

/** More than a career holds; a list longer than this is cut at its old end. */
const MOST_ENTRIES = 1000;
const MOST_FITS = 100;

interface OfFit {
  readonly fitId: string;
  readonly fitName: string;
  readonly boatName: string;
}

const OF_FIT = 'fits.id AS fitId, fits.name AS fitName, fits.boat_name AS boatName';

/**
 * What happened to an athlete's fits: revisions in which the athlete knelt, and the athlete's trials; newest first. Those of
 * joined entries are among them.
 */
export function timelineOf(store: Store, athleteId: string): TimelineEntry[] {
  return entryIdsOf(store, athleteId)
    .flatMap((id) => [...revisionsOf(store, id), ...trialsOf(store, id)])
    .sort((a, b) => b.at.localeCompare(a.at) || turn(b) - turn(a))
    .slice(0, MOST_ENTRIES);
}

/** What came first of two things that were kept in the same instant: a revision, its trials, the next revision. */
function turn(entry: TimelineEntry): number {
  return entry.kind === 'revision' ? 2 * entry.revision.number : 2 * (entry.revisionNumber ?? 0) + 1;
}

function revisionsOf(store: Store, athleteId: string): TimelineEntry[] {
  const rows = store.db
    .prepare<[string, number], RevisionRow & OfFit & { athleteIds: string }>(
      `SELECT revisions.id, number, revisions.name, reason, saved_at AS savedAt, answers,
         revision_words.athlete_ids AS athleteIds, ${OF_FIT}
       FROM revision_words JOIN revisions ON revisions.id = revision_id JOIN fits ON fits.id = fit_id
       WHERE instr(revision_words.athlete_ids, ?) ORDER BY saved_at DESC LIMIT ?`,
    )
    .all(athleteId, MOST_ENTRIES);
  return rows.map(({ athleteIds, fitId, fitName, boatName, ...row }) => ({
    kind: 'revision',
    at: row.savedAt,
    fitId,
    fitName,
    boatName,
    seat: (JSON.parse(athleteIds) as unknown[]).indexOf(athleteId),
    revision: summaryOfRow(store, row),
  }));
}

function trialsOf(store: Store, athleteId: string): TimelineEntry[] {
  const ofFit = store.db.prepare<[string], OfFit>(`SELECT ${OF_FIT} FROM fits WHERE id = ?`);
  const tried = store.db.prepare<[string], number>('SELECT number FROM revisions WHERE id = ?').pluck();
  return store.db
    .prepare<[string, number], TrialRow>(
      `${TRIAL_ROWS} WHERE athlete_id = ? AND archived_at IS NULL ORDER BY created_at DESC LIMIT ?`,
    )
    .all(athleteId, MOST_ENTRIES)
    .flatMap((row): TimelineEntry[] => {
      const record = trialOfRow(store, row);
      const of = ofFit.get(row.fitId);
      if (!record || !of) return [];
      const revisionNumber = tried.get(row.revisionId) ?? null;
      return [{ kind: 'trial', at: row.createdAt, ...of, revisionNumber, record }];
    });
}

/** Fits in which an athlete kneels as they stand now, last changed first. One that does not read is left out. */
export function fitsOfAthlete(store: Store, athleteId: string): KneltFit[] {
  const fits = new Map(
    entryIdsOf(store, athleteId)
      .flatMap((id) => fitsOfEntry(store, id))
      .map((fit) => [fit.id, fit]),
  );
  return [...fits.values()].sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1)).slice(0, MOST_FITS);
}

function fitsOfEntry(store: Store, athleteId: string): KneltFit[] {
  return store.db
    .prepare<[string, number], { id: string; changedAt: string; archivedAt: string | null }>(
      `SELECT id, changed_at AS changedAt, archived_at AS archivedAt FROM fits
       WHERE instr(athlete_ids, ?) ORDER BY changed_at DESC LIMIT ?`,
    )
    .all(athleteId, MOST_FITS)
    .flatMap(({ id, changedAt, archivedAt }) => {
      const opened = openFit(store, id);
      if (typeof opened === 'string') return [];
      const seat = opened.fit.seats.findIndex(({ athlete }) => athlete?.id === athleteId);
      return seat < 0 ? [] : [{ id, seat, fit: opened.fit, archived: archivedAt !== null, changedAt }];
    });
}
