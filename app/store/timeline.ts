import type { KneltFit } from '../contract/records.ts';
import type { TimelineEntry } from '../contract/trials.ts';
import { newestState } from './fits.ts';
import { entryIdsOf } from './join-people.ts';
import { athleteInSeat, SEATS } from './migrations/0009-who-knelt-when.ts';
import { type RevisionRow, summaryOfRow } from './revision-words.ts';
import type { Store } from './store.ts';
import { TRIAL_ROWS, type TrialRow, trialOfRow } from './trials.ts';

interface OfFit {
  readonly fitId: string;
  readonly fitName: string;
  readonly boatName: string;
}

const OF_FIT = 'fits.id AS fitId, fits.name AS fitName, fits.boat_name AS boatName';

/**
 * What happened to an athlete's fits: revisions in which the athlete knelt, and the athlete's trials; newest first. Those of
 * joined entries are among them. At most so many come.
 */
export function timelineOf(store: Store, athleteId: string, most = 200): TimelineEntry[] {
  return entryIdsOf(store, athleteId)
    .flatMap((id) => [...revisionsOf(store, id, most), ...trialsOf(store, id, most)])
    .sort((a, b) => (a.at === b.at ? turn(b) - turn(a) : a.at < b.at ? 1 : -1))
    .slice(0, most);
}

/** What came first of two things that were kept in the same instant: a revision, its trials, the next revision. */
function turn(entry: TimelineEntry): number {
  return entry.kind === 'revision' ? 2 * entry.revision.number : 2 * (entry.revisionNumber ?? 0) + 1;
}

function revisionsOf(store: Store, athleteId: string, most: number): TimelineEntry[] {
  return SEATS.flatMap((seat) =>
    store.db
      .prepare<[string, number], RevisionRow & OfFit>(
        `SELECT revisions.id, number, revisions.name, reason, revisions.saved_at AS savedAt, answers, ${OF_FIT}
         FROM (
           SELECT revision_id, answers FROM revision_words
           WHERE ${athleteInSeat(seat)} = ? ORDER BY saved_at DESC LIMIT ?
         ) JOIN revisions ON revisions.id = revision_id JOIN fits ON fits.id = fit_id`,
      )
      .all(athleteId, most)
      .map(({ fitId, fitName, boatName, ...row }) => ({
        kind: 'revision' as const,
        at: row.savedAt,
        fitId,
        fitName,
        boatName,
        seat,
        revision: summaryOfRow(store, row),
      })),
  );
}

function trialsOf(store: Store, athleteId: string, most: number): TimelineEntry[] {
  const ofFit = store.db.prepare<[string], OfFit>(`SELECT ${OF_FIT} FROM fits WHERE id = ?`);
  const tried = store.db.prepare<[string], number>('SELECT number FROM revisions WHERE id = ?').pluck();
  return store.db
    .prepare<[string, number], TrialRow>(
      `${TRIAL_ROWS} WHERE athlete_id = ? AND archived_at IS NULL ORDER BY created_at DESC LIMIT ?`,
    )
    .all(athleteId, most)
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
  return [...fits.values()].sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
}

function fitsOfEntry(store: Store, athleteId: string): KneltFit[] {
  return store.db
    .prepare<[string], { id: string; changedAt: string; archivedAt: string | null }>(
      `SELECT id, changed_at AS changedAt, archived_at AS archivedAt FROM fits
       WHERE instr(athlete_ids, ?)`,
    )
    .all(athleteId)
    .flatMap(({ id, changedAt, archivedAt }) => {
      const fit = newestState(store, id)?.fit;
      const seat = fit?.seats.findIndex(({ athlete }) => athlete?.id === athleteId) ?? -1;
      return !fit || seat < 0 ? [] : [{ id, seat, fit, archived: archivedAt !== null, changedAt }];
    });
}
