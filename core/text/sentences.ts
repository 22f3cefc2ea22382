import type { BodyNote } from '../body/body.ts';
import { TABLED_MASS } from '../body/body-notes.ts';
import { SURVEYED_STATURE } from '../body/survey-estimate.ts';
import type { Band, Finding, Unit } from '../evaluation/finding.ts';
import { SIGMAS_95 } from '../evaluation/probability.ts';
import { quantityDefinition } from '../evaluation/quantities.ts';
import type { NotAfloat } from '../hydrostatics/afloat.ts';
import { findingSentence } from './finding-sentence.ts';
import { plainFormat } from './format.ts';
import { type FormatValue, signedText } from './signed-text.ts';
import { supportSentence } from './support-sentence.ts';
import { isUnusualPlace, unusualPlaceSentence } from './unusual-place.ts';
import type { Words } from './words.ts';

/** Findings that are a yes or a no have no number. */
const YES_NO: readonly string[] = ['strapReleases', 'floorNonSlip', 'padBraced', 'kneelsOnSide'];

/** True for quantities that answer yes or no: they have no edges and no figure. */
export function isYesOrNo(id: string): boolean {
  return YES_NO.includes(id);
}

/** What a yes-or-no quantity is: how a strap holds, else yes or no. */
export function choiceText({ id, value }: { id: string; value: number }, words: Words): string {
  if (id !== 'strapReleases') return words.say(value >= 0.5 ? 'values.yes' : 'values.no');
  const kind = value > 0 ? 'releases' : value < 0 ? 'fixed' : 'none';
  return words.say(`measures.strap.${kind}`);
}

/** Name of a quantity as a coach would say it; an unknown id is given back as it is. */
export function quantityName(id: string, words: Words): string {
  const key = `quantity.${id}.name`;
  return words.has(key) ? words.say(key) : id;
}

/**
 * The finding's heading: name, value, and the half-width of its 95 % interval. A side is said in words, never by a sign. Where
 * a limb does not reach there is no value; where a datum is not amidships, the distance from the boat's middle is added.
 */
export function findingTitle(finding: Finding, words: Words, format: FormatValue = plainFormat): string {
  const name = quantityName(finding.quantity, words);
  const { quantity: id, value, unit, sd, fromMiddleM, range } = finding;
  if (isYesOrNo(id))
    return words.say('sheet.labelled', { label: name, text: choiceText({ id, value }, words) });
  if (finding.unreached) return words.say('finding-title.unreached', { name });
  const half = sd ? SIGMAS_95 * sd : undefined;
  const how = { inMillimetres: quantityDefinition(id)?.inMillimetres ?? false, half };
  const signed = (at: number) => signedText({ id, value: at, unit }, { words, format, how });
  const text = signed(value);
  if (fromMiddleM !== undefined)
    return words.say('finding-title.middle', { name, value: text, middle: signed(fromMiddleM) });
  if (range) {
    const [least, most] = [format(range.least, unit, how), format(range.most, unit, how)];
    return words.say('finding-title.range', { name, value: text, least, most });
  }
  const sure = signedText({ id, value, unit }, { words, format, how, doubt: half });
  return words.say('finding-title.plain', { name, value: sure });
}

/** A band in words: "15.0 cm to 20.0 cm", "at least …", "at most …"; empty for a yes-or-no or an open band. */
export function bandText(
  { min, max }: Pick<Band, 'min' | 'max'>,
  unit: Unit,
  { words, format = plainFormat }: { readonly words: Words; readonly format?: FormatValue },
): string {
  if (min !== null && max !== null)
    return words.say('band.between', { least: format(min, unit), most: format(max, unit) });
  if (min !== null) return words.say('band.at-least', { least: format(min, unit) });
  return max === null ? '' : words.say('band.at-most', { most: format(max, unit) });
}

/** One plain sentence for the coach, as sure as its probability; of an unusual place that works, what the usual would bring. */
export function coachSentence(finding: Finding, words: Words, format: FormatValue = plainFormat): string {
  if (isUnusualPlace(finding)) return unusualPlaceSentence(finding, words, format);
  const unreached = `unreached.${finding.quantity}`;
  if (finding.unreached && words.has(unreached)) return words.say(unreached);
  const near = finding.distance > 0 ? supportSentence(finding, words) : null;
  return near ?? findingSentence(finding, words, 'coach');
}

/** One plain sentence for the athlete: no jargon, nothing about body mass. Empty where there is nothing to say. */
export function athleteSentence(finding: Finding, words: Words): string {
  return finding.unreached ? '' : findingSentence(finding, words, 'athlete');
}

/** Why a boat does not float, with what to do. */
export function notAfloatSentence(
  result: NotAfloat,
  words: Words,
  format: FormatValue = plainFormat,
): string {
  switch (result.kind) {
    case 'overloaded':
      return words.say('afloat.overloaded', {
        mass: format(result.massKg, 'kg'),
        most: format(result.mostKg, 'kg'),
      });
    case 'swamped':
      return words.say('afloat.swamped', {
        by: format(Math.abs(result.atX), 'm'),
        direction: result.atX < 0 ? 'aft' : 'forward',
      });
    case 'no-equilibrium':
      return words.say('afloat.no-equilibrium', { reason: words.say(`afloat.reason.${result.reason}`) });
  }
}

/** A note on a body estimate, in words. */
export function bodyNoteSentence(note: BodyNote, words: Words, format: FormatValue = plainFormat): string {
  switch (note.code) {
    case 'extrapolates-stature':
      return words.say('body.extrapolates-stature', {
        stature: format(note.value, 'm'),
        least: format(SURVEYED_STATURE.low, 'm'),
        most: format(SURVEYED_STATURE.high, 'm'),
      });
    case 'extrapolates-mass':
      return words.say('body.extrapolates-mass', {
        least: format(TABLED_MASS.low, 'kg'),
        most: format(TABLED_MASS.high, 'kg'),
      });
    case 'junior':
      return words.say('body.junior');
    case 'tape-disagrees':
      return words.say('body.tape-disagrees', { measure: words.say(`tape.${note.measure}.name`) });
  }
}
