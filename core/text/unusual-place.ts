import type { Finding } from '../evaluation/finding.ts';
import { type FormatValue, signedText } from './signed-text.ts';
import type { Words } from './words.ts';

/** Lengths of these outcomes are small and read finely. */
const FINE: readonly string[] = ['trimRest', 'supportMargin'];

/** A sentence about a place outside its usual band that works, and what the usual place would change. */
export function unusualPlaceSentence(
  { quantity, instead, value, fromMiddleM }: Finding,
  words: Words,
  format: FormatValue,
): string {
  const works = words.say('unusual.works');
  const key = `unusual.${instead?.quantity}`;
  if (!instead || !words.has(key)) return works;
  const by = instead.to - instead.from;
  const size = format(Math.abs(by), instead.unit, { inMillimetres: FINE.includes(instead.quantity) });
  const from = fromMiddleM === undefined ? 0 : value - fromMiddleM;
  const at = signedText({ id: quantity, value: instead.at - from, unit: 'm' }, { words, format });
  const where = fromMiddleM === undefined ? at : words.say('unusual.from-middle', { at });
  return words.sentences([works, words.say(key, { where, size, direction: by < 0 ? 'less' : 'more' })]);
}

/** True for a place outside its usual band whose outcomes are good. */
export function isUnusualPlace({ severity, sd, distance, instead }: Finding): boolean {
  return severity === 'check' && !sd && (distance > 0 || instead !== undefined);
}
