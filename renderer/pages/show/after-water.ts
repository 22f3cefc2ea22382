import type { RevisionSummary } from '../../../app/contract/records.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { needsCaution, type Observation } from '../../../core/trial/observation.ts';
import { answeredBy } from '../../bench/tabs/trials/answered-by.ts';
import { observationText } from '../../bench/tabs/trials/observation-text.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** What an athlete said after the last trial and what was done about it, in sentences. */
export interface AfterWater {
  readonly day: string;
  /** Her own words; empty where none were written. */
  readonly words: string;
  /** Each thing that was felt or seen, and whether something was changed for it. */
  readonly told: readonly { readonly what: string; readonly done: string }[];
  /** Some of it has not been answered by a saved change yet. */
  readonly open: boolean;
  /** It spoke of pain or numbness and is open: that comes before anything else. */
  readonly stop: boolean;
  /** Number of the revision that was tried, if something was changed for it; null if not. */
  readonly changedFrom: number | null;
}

/** The last trial of the seat's athlete; null while there is none. */
export function afterWater(
  trials: readonly TrialRecord[],
  revisions: readonly RevisionSummary[],
  seat: number,
): AfterWater | null {
  const record = trials.find(({ trial, archived }) => !archived && trial.seat === seat);
  if (!record) return null;
  const { trial, id, createdAt } = record;
  const by = (observation: Observation) => answeredBy(revisions, id, observation);
  const triedNumber = revisions.find((revision) => revision.id === record.revisionId)?.number ?? null;
  const wordsAlone = trial.observations.length === 0 && !trial.allGood;
  const open = wordsAlone
    ? revisions.every(({ savedAt }) => savedAt <= createdAt)
    : trial.observations.some((observation) => by(observation) === null);
  return {
    day: say('show.said.day', { date: dateText(trial.heldOn) }),
    words: trial.notes === '' ? '' : say('show.said.words', { words: trial.notes }),
    told: [
      ...(trial.allGood ? [{ what: say('show.said.good'), done: '' }] : []),
      ...trial.observations.map((observation) => ({
        what: observationText(observation),
        done: doneText(by(observation)),
      })),
      ...(wordsAlone ? [{ what: '', done: say(open ? 'show.said.not-yet' : 'show.said.since') }] : []),
    ],
    open,
    stop: open && needsCaution(trial),
    changedFrom: trial.observations.some((observation) => by(observation) !== null) ? triedNumber : null,
  };
}

function doneText(by: number | null): string {
  return by === null ? say('show.said.not-yet') : say('show.said.done');
}

/** The same as lines for paper. */
export function afterWaterLines(said: AfterWater | null): string[] {
  if (!said) return [];
  return [
    said.day,
    ...(said.stop ? [say('show.said.stop')] : []),
    ...(said.words ? [said.words] : []),
    ...said.told.map(({ what, done }) =>
      what && done ? say('show.said.line', { what, done }) : what || done,
    ),
  ];
}
