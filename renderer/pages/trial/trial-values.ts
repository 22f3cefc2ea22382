import {
  type BoatSign,
  type BodyFeeling,
  type BodyPlace,
  type Trial,
  trialSchema,
} from '../../../core/trial/observation.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';
import type { FormState } from '../../ui/form/use-form.ts';

/** What was felt at one place; no feeling until it has been named. */
export interface Felt {
  readonly place: BodyPlace;
  readonly feeling: BodyFeeling | null;
  readonly strength: number;
}

export interface SeenSign {
  readonly sign: BoatSign;
  readonly strength: number;
}

/** What the trial's form holds while it is being filled in. */
export interface TrialValues {
  /** The revision that was tried, or `now` for the setting as it stands. */
  readonly tried: string;
  readonly seat: number;
  readonly heldOn: string;
  readonly water: Trial['water'];
  readonly wind: Trial['wind'];
  readonly felt: readonly Felt[];
  readonly seen: readonly SeenSign[];
  /** It was said that all felt good. */
  readonly allGood: boolean;
  readonly notes: string;
}

/** What every section of a trial's form is given. */
export interface TrialSectionProps {
  readonly form: FormState<TrialValues>;
}

/** As strong as an observation is until said otherwise: clear. */
export const USUAL_STRENGTH = 2;

/** Values to begin with: those of a trial, or blank ones. */
export function trialValues(trial: Trial | null, start: { tried: string; seat: number }): TrialValues {
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
    allGood: trial?.allGood ?? false,
    notes: trial?.notes ?? '',
  };
}

/** A place that is touched again is removed, else it is added. */
export function withPlace(felt: readonly Felt[], place: BodyPlace): Felt[] {
  if (felt.some((entry) => entry.place === place)) return felt.filter((entry) => entry.place !== place);
  return [...felt, { place, feeling: null, strength: USUAL_STRENGTH }];
}

/** A sign that is pressed again is removed, else it is added. */
export function withSign(seen: readonly SeenSign[], sign: BoatSign): SeenSign[] {
  if (seen.some((entry) => entry.sign === sign)) return seen.filter((entry) => entry.sign !== sign);
  return [...seen, { sign, strength: USUAL_STRENGTH }];
}

/** What a trial's form asks: a named feeling at each place, a day that has come, and anything at all. */
export const TRIAL_RULES: FormRules<TrialValues, Trial> = {
  schema: trialSchema,
  documentOf: ({ seat, heldOn, water, wind, felt, seen, allGood, notes }) => ({
    seat,
    heldOn,
    water,
    wind,
    observations: [
      ...felt.map(({ place, feeling, strength }) => ({ kind: 'body', place, feeling, strength })),
      ...seen.map(({ sign, strength }) => ({ kind: 'boat', sign, strength })),
    ],
    allGood,
    notes: notes.trim(),
  }),
  check: ({ heldOn, felt, seen, allGood, notes }) => ({
    all: felt.length + seen.length === 0 && notes.trim() === '' && !allGood ? say('trial.keep.none') : null,
    allGood: allGood && felt.length + seen.length > 0 ? say('trial.all-good.not') : null,
    heldOn: heldOn > today() ? say('field.date-ahead') : null,
  }),
  // What was felt comes first among the observations.
  fieldOf: (path) => path.replace(/^observations/, 'felt'),
  wordsFor: (path) => {
    if (path === 'heldOn') return say('field.date-wrong');
    return path.startsWith('felt.') ? say('trial.feeling.needed') : null;
  },
};
