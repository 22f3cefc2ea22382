import { forFit } from '../../core/document/consent.ts';
import type { Trial } from '../../core/trial/observation.ts';
import type { CallOutput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import type { TrialRecord } from '../contract/trials.ts';
import { type Demo, type DemoFit, readDemo } from '../demo/scenario.ts';
import { createFit } from '../store/fits.ts';
import { saveMeasuring } from '../store/measurings.ts';
import { saveRevision } from '../store/revisions.ts';
import { athletes, boats, paddles } from '../store/roster.ts';
import { atomically, type Store } from '../store/store.ts';
import { saveTrial } from '../store/trials.ts';
import { done, type Program, refused } from './program.ts';
import { programState } from './program-state.ts';
import { SENTENCES } from './sentences.ts';

/** Adds the demo club to an empty store, whole or not at all; gives the fit to show first. */
export function installDemo(program: Program): CallResult<CallOutput<'demo.install'>> {
  if (!programState(program).empty) return refused('conflict', SENTENCES['demo-not-empty']);
  let demo: Demo;
  try {
    demo = readDemo(program.assets);
  } catch (error) {
    return refused(
      'internal',
      SENTENCES['demo-broken'](error instanceof Error ? error.message : String(error)),
    );
  }
  return done({ fitId: atomically(program.store, () => storeDemo(program.store, demo)) });
}

function storeDemo(store: Store, demo: Demo): string {
  const people = new Map(
    demo.athletes.map((a) => {
      const { id, athlete } = athletes.save(store, a);
      for (const measuring of demo.measurings[a.name] ?? []) saveMeasuring(store, id, measuring);
      return [a.name, forFit(athlete)];
    }),
  );
  const hulls = new Map(demo.boats.map((b) => [b.name, boats.save(store, b).boat]));
  for (const paddle of demo.paddles) paddles.save(store, paddle);
  const ids = demo.fits.map((fit) => storeFit(store, fit, { people, hulls }));
  return ids[0]!;
}

function storeFit(
  store: Store,
  { revisions }: DemoFit,
  known: {
    people: ReadonlyMap<string, Demo['athletes'][number]>;
    hulls: ReadonlyMap<string, Demo['boats'][number]>;
  },
): string {
  const stored = revisions.map(({ fit, ...about }) => ({
    ...about,
    fit: {
      ...fit,
      boat: known.hulls.get(fit.boat.name) ?? fit.boat,
      seats: fit.seats.map((seat) => ({
        ...seat,
        athlete: seat.athlete && (known.people.get(seat.athlete.name) ?? seat.athlete),
      })),
    },
  }));
  const { id } = createFit(store, stored[0]!.fit);
  const tried: TrialRecord[] = [];
  for (const { name, reason, fit, trials, answers } of stored) {
    const answered = answers.flatMap(({ trial, observation }) => {
      const record = tried[trial];
      const observed = record?.trial.observations[observation];
      return record && observed ? [{ trialId: record.id, observation: observed }] : [];
    });
    const revision = saveRevision(store, { fitId: id, fit, name, reason, answers: answered });
    if (typeof revision === 'string') throw new Error(`the demo's revision ${name} was not kept`);
    tried.push(...trials.map((trial) => storeTrial(store, revision.id, trial)));
  }
  return id;
}

/** Held on the day the demo is opened: between the revisions that are kept on it. */
function storeTrial(store: Store, revisionId: string, trial: Omit<Trial, 'heldOn'>): TrialRecord {
  const day = new Date(store.clock());
  const two = (n: number) => String(n).padStart(2, '0');
  const heldOn = `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
  const record = saveTrial(store, { revisionId, trial: { ...trial, heldOn } });
  if (typeof record === 'string') throw new Error("the demo's trial was not kept");
  return record;
}
