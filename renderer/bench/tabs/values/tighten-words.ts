import type { Format } from '../../../../app/language/format.ts';
import type { Unit } from '../../../../core/evaluation/finding.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import { withUnit } from '../../../../core/text/with-unit.ts';
import type { TightenAnswer } from '../../../jobs/best-measurements.ts';
import { say } from '../../../language/messages.ts';

/** One measurement in words, with the interval now and after. */
export interface TightenLine {
  readonly id: string;
  readonly what: string;
  readonly change: string;
}

/** A measurement that narrows the interval by less than this share is not offered. */
const LEAST_GAIN = 0.03;
const MOST_LINES = 3;

/** The few measurements that would tighten a value most, the best first; none where nothing does. */
export function tightenLines(
  { tape, photo }: TightenAnswer,
  { write, athlete }: { write: (sd: number) => string; athlete: string },
): TightenLine[] {
  const all = [
    ...tape.map(({ measure, ...sds }) => ({
      id: `tape.${measure}`,
      what: say('tighten.tape', { name: athlete, measure: say(`tape.${measure}.name`) }),
      ...sds,
    })),
    ...photo.map(({ measure, ...sds }) => ({
      id: `photo.${measure}`,
      what: say('tighten.photo', { measure: say(`tighten.photo.${measure}`) }),
      ...sds,
    })),
  ];
  return all
    .filter(({ sdNow, sdAfter }) => sdAfter < (1 - LEAST_GAIN) * sdNow)
    .sort((a, b) => a.sdAfter - b.sdAfter)
    .slice(0, MOST_LINES)
    .map(({ id, what, sdNow, sdAfter }) => ({
      id,
      what,
      change: say('tighten.from-to', { from: write(SIGMAS_95 * sdNow), to: write(SIGMAS_95 * sdAfter) }),
    }));
}

/** Half an interval with a place more than the value itself, so that small gains are seen. */
export function intervalWriter(
  format: Format,
  { id, unit }: { id: string; unit: Unit },
): (half: number) => string {
  if (unit === 'rad') return (half) => format.degrees((half * 180) / Math.PI, { decimals: 1 });
  if (unit === '1') return (half) => withUnit(format.number(half * 100, { decimals: 1 }), '%');
  if (unit === 'm' && format.lengthUnit !== 'in')
    return (half) => withUnit(format.number(half * 1000, { decimals: 1 }), 'mm');
  return (half) => format.quantity(id)(half, unit);
}
