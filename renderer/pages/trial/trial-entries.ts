import {
  type BoatSign,
  type BodyFeeling,
  type BodyPlace,
  type Trial,
  trialSchema,
} from '../../../core/trial/observation.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** What was felt at one place; no feeling until it has been named. */
export interface FeltEntry {
  readonly place: BodyPlace;
  readonly feeling: BodyFeeling | null;
  readonly strength: number;
}

export interface SeenEntry {
  readonly sign: BoatSign;
  readonly strength: number;
}

/** What the trial's form holds while it is being filled in. */
export interface TrialEntries {
  /** The revision that was tried, or `now` for the setting as it stands. */
  readonly tried: string;
  readonly seat: number;
  readonly heldOn: string;
  readonly water: Trial['water'];
  readonly wind: Trial['wind'];
  readonly felt: readonly FeltEntry[];
  readonly seen: readonly SeenEntry[];
  readonly notes: string;
}

/** As strong as an observation is until said otherwise: clear. */
export const USUAL_STRENGTH = 2;

/** Entries to begin with: those of a trial, or blank ones. */
export function entriesOf(trial: Trial | null, start: { tried: string; seat: number }): TrialEntries {
  const observations = trial?.observations ?? [];
  return {
    tried: start.tried,
    seat: trial?.seat ?? start.seat,
    heldOn: trial?.heldOn ?? today(),
    water: trial?.water ?? 'flat',
    wind: trial?.wind ?? 'none',
    felt: observations.flatMap((o) =>
      o.kind === 'body' ? [{ place: o.place, feeling: o.feeling, strength: o.strength }] : [],
    ),
    seen: observations.flatMap((o) => (o.kind === 'boat' ? [{ sign: o.sign, strength: o.strength }] : [])),
    notes: trial?.notes ?? '',
  };
}

/** A place touched once more is let go of, else it is taken up. */
export function withPlace(felt: readonly FeltEntry[], place: BodyPlace): FeltEntry[] {
  if (felt.some((entry) => entry.place === place)) return felt.filter((entry) => entry.place !== place);
  return [...felt, { place, feeling: null, strength: USUAL_STRENGTH }];
}

/** A sign named once more is let go of, else it is taken up. */
export function withSign(seen: readonly SeenEntry[], sign: BoatSign): SeenEntry[] {
  if (seen.some((entry) => entry.sign === sign)) return seen.filter((entry) => entry.sign !== sign);
  return [...seen, { sign, strength: USUAL_STRENGTH }];
}

/** Which entry is still wrong, by field: `heldOn`, `felt.<place>`, or `all` where nothing was entered. */
export type TrialProblems = Readonly<Record<string, string>>;

/** The trial that the entries describe, or what is still wrong. */
export function trialOf(entries: TrialEntries): { trial: Trial } | { problems: TrialProblems } {
  const problems: Record<string, string> = {};
  for (const { place, feeling } of entries.felt) {
    if (feeling === null) problems[`felt.${place}`] = say('trial.feeling.needed');
  }
  if (entries.felt.length + entries.seen.length === 0 && entries.notes.trim() === '') {
    problems.all = say('trial.keep.none');
  }
  const { seat, heldOn, water, wind } = entries;
  const observations = [
    ...entries.felt.map(({ place, feeling, strength }) => ({ kind: 'body', place, feeling, strength })),
    ...entries.seen.map(({ sign, strength }) => ({ kind: 'boat', sign, strength })),
  ];
  const parsed = trialSchema.safeParse({
    seat,
    heldOn,
    water,
    wind,
    observations,
    notes: entries.notes.trim(),
  });
  if (!parsed.success && parsed.error.issues.some(({ path }) => path[0] === 'heldOn')) {
    problems.heldOn = say('field.date-wrong');
  } else if (heldOn > today()) problems.heldOn = say('field.date-ahead');
  if (!parsed.success || Object.keys(problems).length > 0) return { problems };
  return { trial: parsed.data };
}
