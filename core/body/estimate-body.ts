import { TAPE_MEASURES } from '../document/athlete-schema.ts';
import { recordOf } from '../units/entries.ts';
import { BODY_LENGTHS, type BodyEstimate, type BodyLength, type Estimate, type ValueKind } from './body.ts';
import { type BodyInput, personSpread } from './body-input.ts';
import { bodyNotes, type TapeReading } from './body-notes.ts';
import { bodyPrior, lengthIndex, tapeIndex } from './body-prior.ts';
import { conditioned, type Gaussian } from './gaussian.ts';
import { ratioLengths } from './ratio-estimate.ts';
import { segmentMasses } from './segment-masses.ts';
import { MASS_SD, STATURE_SD, TAPE_SD } from './tape-sd.ts';

/** No length falls below this share of what the stature alone gives, however wrong a tape is. */
const LEAST_SHARE = 0.2;

/** A length whose variance the tape has cut by less than this share still has the kind it had without. */
const NARROWED = 0.02;

/** Lengths of the figure that no survey column gives. */
const ESTIMATED: readonly BodyLength[] = ['hipSeparation', 'heelToAnkle', 'kneeRadius'];

/**
 * The body that the stance is solved for: lengths (metres) by the survey's regressions on stature and mass, narrowed by every
 * tape measure according to its standard deviation (Bayes' rule on the joint normal spread, so that one tape narrows all
 * lengths that vary with it), and segment masses (kilograms). Computes for every finite positive stature and mass; `notes` says
 * what to be careful about. `estimateBody({ stature: 1.8, mass: 80, sex: 'male' }).lengths.thigh` is 0.442 ± 0.021 m.
 */
export function estimateBody(input: BodyInput): BodyEstimate {
  const { stature, mass, sex, statureSd = STATURE_SD, massSd = MASS_SD } = input;
  const prior = priorOf(input);
  const readings = readingsOf(input.tape ?? {});
  const posterior = readings.reduce(conditioned, prior);
  const lengths = lengthsOf(prior, posterior, readings);
  return {
    stature,
    mass,
    statureSd,
    massSd,
    lengths,
    covariance: BODY_LENGTHS.map((_, i) => posterior.covariance[i]!.slice(0, BODY_LENGTHS.length)),
    ratioLengths: ratioLengths(stature),
    segments: segmentMasses({ stature, mass, sex, lengths }),
    notes: bodyNotes(input, prior, readings),
  };
}

/** What is expected before any tape measure. */
function priorOf(input: BodyInput): Gaussian {
  const { stature, mass, sex, statureSd = STATURE_SD, massSd = MASS_SD, ageYears = null } = input;
  return bodyPrior({ stature, statureSd, mass, massSd, sex, ageYears, spread: personSpread(input) });
}

/**
 * Joint spread of the lengths and of what a perfect tape would read for every measure (order of `BODY_VALUES`, metres and m²),
 * given the tapes already taken. It shows how much the next tape would narrow.
 */
export function bodySpread(input: BodyInput): Gaussian {
  return readingsOf(input.tape ?? {}).reduce(conditioned, priorOf(input));
}

/** Tape readings in the order of the measures, each with its doubt. */
function readingsOf(tape: NonNullable<BodyInput['tape']>): TapeReading[] {
  return TAPE_MEASURES.flatMap((measure) => {
    const reading = tape[measure];
    if (!reading) return [];
    return [{ measure, index: tapeIndex(measure), value: reading.value, sd: reading.sd ?? TAPE_SD[measure] }];
  });
}

/** The lengths with their remaining doubt, and where each comes from. */
function lengthsOf(
  prior: Gaussian,
  posterior: Gaussian,
  readings: readonly TapeReading[],
): Record<BodyLength, Estimate> {
  const footRead = readings.some(({ measure }) => measure === 'footLength');
  return recordOf(BODY_LENGTHS, (name): Estimate => {
    const i = lengthIndex(name);
    const variances = { before: prior.covariance[i]![i]!, after: posterior.covariance[i]![i]! };
    return {
      value: Math.max(LEAST_SHARE * prior.mean[i]!, posterior.mean[i]!),
      sd: Math.sqrt(Math.max(0, variances.after)),
      kind: footRead && name === 'footLength' ? 'measured' : kindOf(name, variances),
    };
  });
}

/** A length that the readings narrowed combines both sources; another keeps its own. */
function kindOf(name: BodyLength, variances: { before: number; after: number }): ValueKind {
  if (variances.after < (1 - NARROWED) * variances.before) return 'combined';
  return ESTIMATED.includes(name) ? 'estimate' : 'survey';
}
