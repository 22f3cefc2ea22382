import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { listMeasurings, measuringOn, removeMeasuring, saveMeasuring } from '../store/measurings.ts';
import { athletes } from '../store/roster.ts';
import { done, missing, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

type Measurings = CallResult<CallOutput<'measurings.save'>>;

/** Keeps what was measured on an earlier day, from an old note say. What is known of that day besides stays. */
export function keepEarlierMeasuring(
  program: Program,
  { athleteId, measuring }: ParsedInput<'measurings.save'>,
): Measurings {
  return onEarlierDay(program, { athleteId, takenOn: measuring.takenOn }, () => {
    const known = measuringOn(program.store, athleteId, measuring.takenOn);
    saveMeasuring(program.store, athleteId, {
      ...measuring,
      statureM: measuring.statureM ?? known?.statureM ?? null,
      massKg: measuring.massKg ?? known?.massKg ?? null,
      tape: { ...known?.tape, ...measuring.tape },
    });
    return done(listMeasurings(program.store, athleteId));
  });
}

/** Takes an earlier day's measuring away. */
export function removeEarlierMeasuring(
  program: Program,
  { athleteId, takenOn }: ParsedInput<'measurings.remove'>,
): Measurings {
  return onEarlierDay(program, { athleteId, takenOn }, () =>
    removeMeasuring(program.store, athleteId, takenOn)
      ? done(listMeasurings(program.store, athleteId))
      : missing('measuring'),
  );
}

/** The entry of the day on which the athlete's present body was measured belongs to the athlete's own page. */
function onEarlierDay(
  { store }: Program,
  { athleteId, takenOn }: { athleteId: string; takenOn: string },
  work: () => Measurings,
): Measurings {
  const record = athletes.get(store, athleteId);
  if (!record) return missing('athlete');
  const { measuredOn } = record.athlete;
  if (measuredOn !== undefined && takenOn >= measuredOn) {
    return refused('not-allowed', SENTENCES['measured-later'](measuredOn));
  }
  return work();
}
