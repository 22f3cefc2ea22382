import { TAPE_MEASURES, type TapeMeasure } from '../fit/athlete-schema.ts';
import { BODY_LENGTHS, type BodyEstimate, type BodyLength, type BodyNote, type Estimate } from './body.ts';
import { bodyPrior, lengthIndex, tapeIndex } from './body-prior.ts';
import { conditioned, type Gaussian } from './gaussian.ts';
import { ratioLengths } from './ratio-estimate.ts';
import { segmentMasses } from './segment-masses.ts';
import type { StatedSex } from './sex.ts';
import { SURVEYED_STATURE } from './survey-estimate.ts';
import { STATURE_SD, TAPE_SD } from './tape-sd.ts';

/** One tape reading, metres; without a standard deviation the usual one of that measure is taken. */
export interface TapeValue {
  readonly value: number;
  readonly sd?: number | undefined;
}

/** What is known of a person: metres, kilograms, years. */
export interface BodyInput {
  readonly stature: number;
  readonly mass: number;
  readonly sex: StatedSex;
  readonly tape?: Readonly<Partial<Record<TapeMeasure, TapeValue>>> | undefined;
  readonly statureSd?: number | undefined;
  readonly ageYears?: number | null | undefined;
}

/** Masses for which the tables of mass were made, kilograms. */
const TABLED_MASS = { low: 30, high: 140 } as const;

/** Below this age the survey, of adults, is an extrapolation. */
const ADULT_YEARS = 18;

/** Factor on the spread of a junior's proportions about the adults' lines (estimate). */
const JUNIOR_SPREAD = 1.5;

/** A reading this many standard deviations from what the stature leads one to expect is called in question. */
const DISAGREES_SIGMAS = 3;

/** No length falls below this share of what the stature alone gives, however wrong a tape is. */
const LEAST_SHARE = 0.2;

/** A length whose variance a tape has cut by less than this share is still called the survey's. */
const NARROWED = 0.02;

/** Lengths of the figure that no survey column gives. */
const ESTIMATED: readonly BodyLength[] = ['hipSeparation', 'heelToAnkle', 'kneeRadius'];

/**
 * The body that the stance is solved for: lengths by the survey's regression on stature, narrowed by every tape
 * measure with its standard deviation (Bayes' rule on the joint normal spread), and segment masses. Works for every
 * finite positive stature and mass; what to make of it stands in `notes`. `estimateBody({ stature: 1.8, mass: 80,
 * sex: 'male' }).lengths.thigh` is about 0.42 ± 0.02 m.
 */
export function estimateBody(input: BodyInput): BodyEstimate {
  const { stature, mass, sex, tape = {} } = input;
  const spread = isJunior(input) ? JUNIOR_SPREAD : 1;
  const prior = bodyPrior({ stature, statureSd: input.statureSd ?? STATURE_SD, sex, spread });
  const readings = readingsOf(tape);
  const posterior = readings.reduce(conditioned, prior);
  const lengths = lengthsOf(prior, posterior, tape);
  const values = Object.fromEntries(BODY_LENGTHS.map((name) => [name, lengths[name].value]));
  return {
    stature,
    mass,
    lengths,
    covariance: BODY_LENGTHS.map((_, i) => BODY_LENGTHS.map((_, j) => posterior.covariance[i]![j]!)),
    ratioLengths: ratioLengths(stature),
    segments: segmentMasses({ stature, mass, sex, lengths: values as Record<BodyLength, number> }),
    notes: notesOf(input, prior, readings),
  };
}

interface TapeReading {
  readonly measure: TapeMeasure;
  readonly index: number;
  readonly value: number;
  readonly sd: number;
}

function readingsOf(tape: NonNullable<BodyInput['tape']>): TapeReading[] {
  return TAPE_MEASURES.flatMap((measure) => {
    const reading = tape[measure];
    if (!reading) return [];
    return [{ measure, index: tapeIndex(measure), value: reading.value, sd: reading.sd ?? TAPE_SD[measure] }];
  });
}

function lengthsOf(
  prior: Gaussian,
  posterior: Gaussian,
  tape: NonNullable<BodyInput['tape']>,
): Record<BodyLength, Estimate> {
  const entries = BODY_LENGTHS.map((name): [BodyLength, Estimate] => {
    const i = lengthIndex(name);
    const [before, after] = [prior.covariance[i]![i]!, posterior.covariance[i]![i]!];
    const told = name === 'footLength' && tape.footLength !== undefined;
    const narrowed = after < (1 - NARROWED) * before;
    const untold = ESTIMATED.includes(name) ? 'estimate' : 'survey';
    return [
      name,
      {
        value: Math.max(LEAST_SHARE * prior.mean[i]!, posterior.mean[i]!),
        sd: Math.sqrt(Math.max(0, after)),
        kind: told ? 'measured' : narrowed ? 'combined' : untold,
      },
    ];
  });
  return Object.fromEntries(entries) as Record<BodyLength, Estimate>;
}

function isJunior({ ageYears }: BodyInput): boolean {
  return ageYears !== undefined && ageYears !== null && ageYears < ADULT_YEARS;
}

function notesOf(input: BodyInput, prior: Gaussian, readings: readonly TapeReading[]): BodyNote[] {
  const { stature, mass, ageYears } = input;
  const notes: BodyNote[] = [];
  if (stature < SURVEYED_STATURE.low || stature > SURVEYED_STATURE.high) {
    notes.push({ code: 'extrapolates-stature', value: stature });
  }
  if (mass < TABLED_MASS.low || mass > TABLED_MASS.high)
    notes.push({ code: 'extrapolates-mass', value: mass });
  if (isJunior(input)) notes.push({ code: 'junior', ageYears: ageYears ?? null });
  for (const { measure, index, value, sd } of readings) {
    const spread = Math.sqrt(prior.covariance[index]![index]! + sd ** 2);
    const sigmas = Math.abs(value - prior.mean[index]!) / spread;
    if (sigmas > DISAGREES_SIGMAS) notes.push({ code: 'tape-disagrees', measure, sigmas });
  }
  return notes;
}
