import type Database from 'better-sqlite3';
import { trialSchema } from '../../core/trial/observation.ts';
import { revisionAnswers } from '../contract/records.ts';
import type { ClearHow } from './clear-words.ts';
import { withoutName } from './erase-from-fit.ts';
import type { Person } from './person.ts';
import { readJson } from './read-json.ts';
import { searchText } from './search-text.ts';
import { trialWords } from './trials.ts';

/** Whether a database is of a version that keeps trials. */
export function hasTrials(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'trials'").get() !== undefined;
}

/**
 * Takes away an athlete's trials, every trial of the fits in `alone`, and the athlete's name from the notes of those of
 * `crews` that stay. Gives the identifiers of the trials that are gone.
 */
export function eraseTrials(
  db: Database.Database,
  person: Person,
  { alone, crews, touch }: { alone: readonly string[]; crews: readonly string[]; touch: ClearHow['touch'] },
): string[] {
  if (!hasTrials(db)) return [];
  const rows = db
    .prepare<[], { id: string; fitId: string; athleteId: string | null; text: string }>(
      'SELECT id, fit_id AS fitId, athlete_id AS athleteId, trial AS text FROM trials',
    )
    .all();
  const gone: string[] = [];
  const erase = db.prepare('DELETE FROM trials WHERE id = ?');
  const forget = db.prepare("DELETE FROM quarantine WHERE table_name = 'trials' AND row_id = ?");
  const rewrite = db.prepare('UPDATE trials SET trial = ?, search = ? WHERE id = ?');
  for (const { id, fitId, athleteId, text } of rows) {
    const goes = athleteId === person.id || alone.includes(fitId);
    if (!goes && !crews.includes(fitId)) continue;
    // A trial of a crew that cannot be read cannot be cleaned either: it goes too.
    const trial = goes ? undefined : trialSchema.safeParse(readJson(text)).data;
    if (!trial) {
      erase.run(id);
      forget.run(id);
      gone.push(id);
      continue;
    }
    touch({ kind: 'trial', id });
    const cleaned = { ...trial, notes: withoutName(trial.notes, person) };
    rewrite.run(JSON.stringify(cleaned), trialWords(cleaned), id);
  }
  return gone;
}

/**
 * Rewrites what stands beside the revisions of crews that stay: the words they are found by, who knelt, and what they
 * answer, without the athlete and without trials that are gone. The revisions must be unlocked.
 */
export function wordsWithoutTrials(
  db: Database.Database,
  crews: readonly string[],
  { person, gone }: { person: Person; gone: readonly string[] },
): void {
  if (!hasTrials(db)) return;
  const rows = db.prepare<
    [string],
    { id: string; name: string; reason: string; answers: string; athleteIds: string }
  >(
    `SELECT revisions.id, name, reason, answers, athlete_ids AS athleteIds
     FROM revisions JOIN revision_words ON revision_id = revisions.id WHERE fit_id = ?`,
  );
  const update = db.prepare(
    'UPDATE revision_words SET answers = ?, athlete_ids = ?, search = ? WHERE revision_id = ?',
  );
  for (const { id, name, reason, answers, athleteIds } of crews.flatMap((fitId) => rows.all(fitId))) {
    const kept = (revisionAnswers.safeParse(readJson(answers)).data ?? []).filter(
      ({ trialId }) => !gone.includes(trialId),
    );
    const others = athleteIds.replaceAll(`"${person.id}"`, 'null');
    update.run(JSON.stringify(kept), others, searchText(name, reason), id);
  }
}
