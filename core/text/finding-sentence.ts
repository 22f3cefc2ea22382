import type { Finding } from '../evaluation/finding.ts';
import { inDoubt } from './in-doubt.ts';
import type { Words } from './words.ts';

/** Who reads a sentence. */
type Reader = 'coach' | 'athlete';

/** Beginnings of the messages for either reader. */
const READERS = { coach: 'finding', athlete: 'told' } as const;

/** Quantities that share their sentences. The heading names the fitting; an athlete reads that it does not fit, not why. */
const WORDED_AS: Readonly<Record<'coach' | 'athlete', Readonly<Record<string, string>>>> = {
  coach: {
    restTravel: 'padTravel',
    restBevel: 'padBevel',
    restHolesToSkin: 'padHolesToSkin',
    restHolesOnBoard: 'padHolesOnBoard',
    restOverhang: 'padOverhang',
    boatLength: 'boatClass',
    boatMass: 'boatClass',
  },
  athlete: {
    padInsideHull: 'padPlace',
    padTravel: 'padPlace',
    padBevel: 'padPlace',
    padHolesToSkin: 'padPlace',
    padHolesOnBoard: 'padPlace',
    padOverhang: 'padPlace',
    restTravel: 'restPlace',
    restBevel: 'restPlace',
    restHolesToSkin: 'restPlace',
    restHolesOnBoard: 'restPlace',
    restOverhang: 'restPlace',
    footInsideHull: 'footPlace',
    footOverhang: 'footPlace',
    boatLength: 'boatClass',
    boatMass: 'boatClass',
  },
};

/**
 * One plain sentence about a judged value; short where it is in its band, because the heading has the value. Empty where there
 * is nothing to say.
 */
export function findingSentence(finding: Finding, words: Words, reader: Reader): string {
  const { severity, distance } = finding;
  const inside = sentenceOf(finding, 'good', { words, reader }) || words.say(`${READERS[reader]}.good`);
  if (severity === 'good') return inside;
  const outside = sentenceOf(finding, nearerLow(finding) ? 'low' : 'high', { words, reader });
  if (severity !== 'check' || !outside) return outside;
  return inDoubt(finding, { inside, outside, isOutside: distance > 0 }, { words, reader });
}

/** The quantity's own sentence for a side of its band; empty where it has none. */
function sentenceOf(
  { quantity, value, severity }: Finding,
  side: 'good' | 'low' | 'high',
  { words, reader }: { words: Words; reader: Reader },
): string {
  const key = `${READERS[reader]}.${WORDED_AS[reader][quantity] ?? quantity}.${side}`;
  if (!words.has(key)) return '';
  const sign = value < 0 ? 'under' : 'over';
  return words.say(key, { sign, contact: value <= 0 ? 'touching' : 'close', severity });
}

function nearerLow({ value, band }: Finding): boolean {
  if (band.min === null) return false;
  return band.max === null || Math.abs(value - band.min) < Math.abs(value - band.max);
}
