import { type Athlete, TAPE_MEASURES, type TapeMeasure } from '../document/athlete-schema.ts';
import { forFit } from '../document/consent.ts';
import { grownAthlete } from './grown-athlete.ts';

/** Stature and tape readings nearer than this are the same body measured by another person, metres (estimate). */
const SAME_LENGTH_M = 0.005;
/** Body mass changes by this much within a day, kilograms (estimate). */
const SAME_MASS_KG = 1;

/** How an athlete as measured now differs from the copy that a fit carries. */
export interface BodyDifference {
  /** Metres and kilograms, now less then. */
  readonly statureM: number;
  /** Positive where the athlete is heavier now. */
  readonly massKg: number;
  /** Tape measures that differ, or are new. */
  readonly tape: readonly TapeMeasure[];
  /** True where the personal limits differ. */
  readonly limits: boolean;
}

/**
 * What has changed in a body since a fit took its copy of it; null where nothing changed beyond the repeatability of tape and
 * scale. A copy at 1.52 m against 1.56 m now gives `statureM` 0.04.
 */
export function bodyDifference(copy: Athlete, newest: Athlete): BodyDifference | null {
  const statureM = newest.statureM - copy.statureM;
  const massKg = newest.massKg - copy.massKg;
  const tape = TAPE_MEASURES.filter((measure) => {
    const [was, is] = [copy.tape[measure], newest.tape[measure]];
    if (!is || (was && isOlder(was, is))) return false;
    return !was || Math.abs(is.valueM - was.valueM) >= SAME_LENGTH_M;
  });
  const limits = JSON.stringify(copy.limits) !== JSON.stringify(newest.limits);
  const same =
    Math.abs(statureM) < SAME_LENGTH_M && Math.abs(massKg) < SAME_MASS_KG && tape.length === 0 && !limits;
  return same ? null : { statureM, massKg, tape, limits };
}

/**
 * The athlete that a fit should carry now: the newest measures, without the consents. A tape reading that is unchanged although
 * the stature has changed was not taken again: it is scaled with stature and its doubt widened.
 */
export function athleteForFit(copy: Athlete, newest: Athlete): Athlete {
  const now = forFit(newest);
  const old: Athlete['tape'] = {};
  for (const measure of TAPE_MEASURES) {
    const [was, is] = [copy.tape[measure], now.tape[measure]];
    if (was && is && isOlder(was, is)) old[measure] = was;
  }
  const grown = Math.abs(now.statureM - copy.statureM) >= SAME_LENGTH_M;
  const kept = grown ? grownAthlete({ ...copy, tape: old }, now).tape : old;
  return { ...now, tape: { ...now.tape, ...kept } };
}

/** One tape reading as the document has it. */
type Reading = NonNullable<Athlete['tape'][TapeMeasure]>;

/** Whether the list of athletes still has the reading that a copy took: the same one, or one that the copy has scaled since. */
function isOlder(copied: Reading, listed: Reading): boolean {
  if (copied.takenOn !== listed.takenOn) return false;
  return copied.valueM === listed.valueM || (copied.sdM ?? 0) > (listed.sdM ?? 0);
}
