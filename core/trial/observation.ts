import { z } from 'zod';
import { isoDate, note } from '../document/measure-schema.ts';
import { speaksOfPain } from './pain-words.ts';

/** Where on the body something was felt. */
export const BODY_PLACES = [
  'kneelingKnee',
  'kneelingShin',
  'frontOfThigh',
  'kneelingHip',
  'lowerBack',
  'frontKnee',
  'frontHip',
  'rearToes',
  'rearAnkle',
  'frontFoot',
] as const;

/** What was felt there. The first four bring the caution before anything else. */
export const BODY_FEELINGS = [
  'pain',
  'numb',
  'tingling',
  'swelling',
  'pressure',
  'ache',
  'stretch',
  'tired',
] as const;

/** What was seen or felt of the boat and the contacts. */
export const BOAT_SIGNS = [
  'bowDigs',
  'bowHigh',
  'pullsLeft',
  'pullsRight',
  'tippy',
  'slidesOnPad',
  'kneeLifts',
  'rearFootLifts',
  'frontFootSlips',
] as const;

/** 1 a little, 2 clearly, 3 so that it cannot go on. */
const strength = z.int().min(1).max(3);

/** One observation of a trial: on the body, or of the boat; strength 1 slight, 2 moderate, 3 strong. */
export const observationSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('body'),
    place: z.enum(BODY_PLACES),
    feeling: z.enum(BODY_FEELINGS),
    strength,
  }),
  z.strictObject({ kind: z.literal('boat'), sign: z.enum(BOAT_SIGNS), strength }),
]);

/** A trial on the water: one seat, the day, the conditions, what was observed, and free text. */
export const trialSchema = z.strictObject({
  seat: z.int().min(0).max(3),
  heldOn: isoDate,
  water: z.enum(['flat', 'ripple', 'waves']).default('flat'),
  wind: z.enum(['none', 'head', 'tail', 'side']).default('none'),
  observations: z.array(observationSchema).max(24),
  /** It was said that all felt good: nothing is left to answer. */
  allGood: z.boolean().default(false),
  notes: note.default(''),
});

/** One thing that the paddler felt or the coach saw. */
export type Observation = z.infer<typeof observationSchema>;
/** An outing in a setting: who sat where, on which day, and what was observed. */
export type Trial = z.infer<typeof trialSchema>;
/** Where in the body something was felt. */
export type BodyPlace = (typeof BODY_PLACES)[number];
/** What was felt there. */
export type BodyFeeling = (typeof BODY_FEELINGS)[number];
/** What the boat did. */
export type BoatSign = (typeof BOAT_SIGNS)[number];

/** Feelings that mean: stop, change the fit, and see a clinician if they last. */
export const CAUTION_FEELINGS: readonly BodyFeeling[] = ['pain', 'numb', 'tingling', 'swelling'];

/** True when anything in a trial, named or written, asks for the caution first. */
export function needsCaution({ observations, notes }: Pick<Trial, 'observations' | 'notes'>): boolean {
  const named = observations.some((o) => o.kind === 'body' && CAUTION_FEELINGS.includes(o.feeling));
  return named || speaksOfPain(notes);
}
