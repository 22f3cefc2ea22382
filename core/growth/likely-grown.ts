import type { Athlete } from '../document/athlete-schema.ts';
import { grownAthlete } from './grown-athlete.ts';
import type { GrowthDue } from './measure-again.ts';

/**
 * The athlete as grown by the mean of the age since the last measuring, to predict a fit's findings: stature as `measureAgain`
 * expects it, mass with its square (the same body-mass index, a low guess in a spurt), tape measures scaled with a wider doubt.
 * An estimate for a reminder; a fit never carries it.
 */
export function likelyGrown(athlete: Athlete, { likelyM }: Pick<GrowthDue, 'likelyM'>): Athlete {
  const statureM = athlete.statureM + likelyM;
  const massKg = athlete.massKg * (statureM / athlete.statureM) ** 2;
  return grownAthlete(athlete, { statureM, massKg });
}
