import { randomUUID } from 'node:crypto';
import { type Trial, trialSchema } from '../../core/trial/observation.ts';
import { TRIED_PATH } from '../changes/record-content.ts';
import type { TrialRecord } from '../contract/trials.ts';
import { onTop } from './on-top.ts';
import { putBack, readStored } from './quarantine.ts';
import { openRevision } from './revisions.ts';
import { searchText } from './search-text.ts';
import { atomically, now, type Store } from './store.ts';
import { tracked } from './track.ts';

/** A trial's row, its observations still text. */
export interface TrialRow {
  readonly id: string;
  readonly fitId: string;
  readonly revisionId: string;
  readonly athleteId: string | null;
  readonly trial: string;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly archivedAt: string | null;
}

export const TRIAL_ROWS = `SELECT trials.id, trials.fit_id AS fitId, trials.revision_id AS revisionId,
    trials.athlete_id AS athleteId, trials.trial, trials.created_at AS createdAt,
    trials.changed_at AS changedAt, trials.archived_at AS archivedAt
  FROM trials`;

/** A row as a record; null when it does not read, and is then quarantined. */
export function trialOfRow(store: Store, row: TrialRow): TrialRecord | null {
  const place = { table: 'trials', rowId: row.id } as const;
  const trial = readStored(store, place, { text: row.trial, schema: trialSchema });
  if (!trial) return null;
  const { archivedAt, ...rest } = row;
  return { ...rest, trial, archived: archivedAt !== null };
}

/** Trials of a fit, archived ones included; the latest held first. */
export function listTrials(store: Store, fitId: string): TrialRecord[] {
  return store.db
    .prepare<[string], TrialRow>(`${TRIAL_ROWS} WHERE trials.fit_id = ? ORDER BY created_at DESC, id`)
    .all(fitId)
    .map((row) => trialOfRow(store, row))
    .filter((record) => record !== null)
    .sort((a, b) => b.trial.heldOn.localeCompare(a.trial.heldOn));
}

function getTrial(store: Store, id: string): TrialRecord | 'none' | 'damaged' {
  const row = store.db.prepare<[string], TrialRow>(`${TRIAL_ROWS} WHERE trials.id = ?`).get(id);
  return row ? (trialOfRow(store, row) ?? 'damaged') : 'none';
}

/** What a trial is found by: its notes, and the names of what was observed ("bowDigs" by "bow digs"). */
export function trialWords(trial: Trial): string {
  const codes = trial.observations.flatMap((o) => (o.kind === 'body' ? [o.place, o.feeling] : [o.sign]));
  const names = codes.map((code) => code.replace(/[A-Z]/g, (letter) => ` ${letter}`));
  return searchText(trial.notes, ...names);
}

/** Why a trial was not kept: no such revision or trial, or nobody knelt in that seat of it. */
type NotKept = 'none' | 'damaged' | 'nobody';

/** A trial as it is entered, and the revision that was tried. */
type Tried = Pick<TrialRecord, 'revisionId' | 'trial'>;

/**
 * Keeps a trial of a revision: a new one, or with `id` that one in a new state. `opened` is the trial as the person had it before
 * the change: what others have changed since stays. Where both changed one field, the person's value stands and a person decides.
 */
export function saveTrial(
  store: Store,
  { id, opened, ...made }: Tried & { id?: string | undefined; opened?: Tried | undefined },
): TrialRecord | NotKept {
  const trialId = id ?? randomUUID();
  return atomically(store, () => {
    const { revisionId, trial, unseen } = triedOnTop(made, opened, getTrial(store, trialId));
    const write = () => {
      const tried = openRevision(store, revisionId);
      if (typeof tried === 'string') return tried;
      const athlete = tried.fit.seats[trial.seat]?.athlete;
      if (!athlete) return 'nobody';
      const row = {
        id: trialId,
        revisionId,
        athleteId: athlete.id ?? null,
        text: JSON.stringify(trial),
        search: trialWords(trial),
        at: now(store),
      };
      if (id === undefined) insertTrial(store, row);
      else if (!updateTrial(store, row)) return 'none';
      return getTrial(store, row.id);
    };
    return tracked(store, { kind: 'trial', id: trialId }, write, { unseen });
  });
}

/** A trial as it was changed, on top of how it stands. Whoever knelt follows from both. */
function triedOnTop(
  made: Tried,
  opened: Tried | undefined,
  standing: TrialRecord | 'none' | 'damaged',
): Tried & { unseen: ReadonlySet<string> } {
  if (!opened || typeof standing === 'string') return { ...made, unseen: new Set() };
  const { written, unseen } = onTop(
    { kind: 'trial', schema: trialSchema },
    { opened: opened.trial, made: made.trial, now: standing.trial },
  );
  if (standing.revisionId !== opened.revisionId) unseen.add(TRIED_PATH);
  const isOwn = made.revisionId !== opened.revisionId;
  return { revisionId: isOwn ? made.revisionId : standing.revisionId, trial: written, unseen };
}

interface Written {
  readonly id: string;
  readonly revisionId: string;
  readonly athleteId: string | null;
  readonly text: string;
  readonly search: string;
  readonly at: string;
}

function insertTrial({ db }: Store, row: Written): void {
  db.prepare(
    `INSERT INTO trials (id, fit_id, revision_id, athlete_id, trial, search, created_at, changed_at)
     SELECT @id, fit_id, @revisionId, @athleteId, @text, @search, @at, @at FROM revisions WHERE id = @revisionId`,
  ).run(row);
}

/** False when there is no such trial, or the revision is of another fit. */
function updateTrial(store: Store, row: Written): boolean {
  const { changes } = store.db
    .prepare(
      `UPDATE trials SET revision_id = @revisionId, athlete_id = @athleteId, trial = @text, search = @search,
         changed_at = @at
       WHERE id = @id AND fit_id = (SELECT fit_id FROM revisions WHERE id = @revisionId)`,
    )
    .run(row);
  putBack(store, { table: 'trials', rowId: row.id });
  return changes > 0;
}

/** Sets a trial aside, or brings it back; nothing of it is lost. */
export function setTrialArchived(
  store: Store,
  id: string,
  archived: boolean,
): TrialRecord | 'none' | 'damaged' {
  return tracked(store, { kind: 'trial', id }, () => {
    store.db
      .prepare('UPDATE trials SET archived_at = CASE WHEN ? THEN coalesce(archived_at, ?) END WHERE id = ?')
      .run(archived ? 1 : 0, now(store), id);
    return getTrial(store, id);
  });
}
