import type { Format } from '../../../../app/language/format.ts';
import type { BodyDifference } from '../../../../core/growth/body-difference.ts';
import type { GrowthDue } from '../../../../core/growth/measure-again.ts';
import { say, words } from '../../../language/messages.ts';
import type { Grown } from '../../use-grown.ts';

/** Smaller differences are not mentioned: metres, kilograms. */
const LEAST_M = 0.005;
const LEAST_KG = 0.5;

/** How a body differs from a fit's copy of it, one line each. */
export function differenceLines(
  { statureM, massKg, tape, limits }: BodyDifference,
  newest: { readonly statureM: number },
  format: Format,
): string[] {
  const lines: string[] = [];
  if (Math.abs(statureM) >= LEAST_M) {
    lines.push(
      say(statureM > 0 ? 'growth.taller' : 'growth.shorter', {
        by: format.length(Math.abs(statureM)),
        from: format.length(newest.statureM - statureM),
        to: format.length(newest.statureM),
      }),
    );
  }
  if (Math.abs(massKg) >= LEAST_KG) {
    lines.push(say(massKg > 0 ? 'growth.heavier' : 'growth.lighter', { by: format.mass(Math.abs(massKg)) }));
  }
  if (tape.length > 0) {
    lines.push(
      say('growth.tapes', { measures: words().row(tape.map((measure) => say(`tape.${measure}.name`))) }),
    );
  }
  if (limits) lines.push(say('growth.limits'));
  return lines;
}

/** The values of a reminder to measure again. */
export function dueValues({ months, ageYears, likelyM }: GrowthDue, format: Format) {
  return { months, age: ageYears, likely: format.length(likelyM) };
}

/** One sentence for the head of the bench. */
export function bannerText(
  { name, difference, due }: Pick<Grown, 'name' | 'difference' | 'due'>,
  format: Format,
): string {
  const { statureM, massKg, tape } = difference;
  if (due) return say('growth.banner.due', { name, ...dueValues(due, format) });
  if (statureM >= LEAST_M) return say('growth.banner.grown', { name, by: format.length(statureM) });
  const measured = statureM <= -LEAST_M || Math.abs(massKg) >= LEAST_KG || tape.length > 0;
  return say(measured ? 'growth.banner.measured' : 'growth.banner.limits', { name });
}
