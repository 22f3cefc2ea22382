import type { BodyNote } from '../body/body.ts';
import { MEASURING } from '../body/measuring.ts';
import type { Band, Finding, Unit } from '../evaluation/finding.ts';
import { inDoubt } from '../evaluation/likely.ts';
import { SIGMAS_95 } from '../evaluation/probability.ts';
import { type QuantityId, quantityDefinition } from '../evaluation/quantities.ts';
import { unreachedSentence } from '../evaluation/unreached.ts';
import type { NotAfloat } from '../hydrostatics/afloat.ts';
import { NAMES, WORDING } from './quantity-wording.ts';
import { type FormatValue, signedText } from './signed-text.ts';
import { supportSentence } from './support-wording.ts';
import { isUnusualPlace, unusualPlaceSentence } from './unusual-place.ts';
import { spoken } from './wording.ts';

/** How each unit is written when nobody says otherwise: factor to the shown unit, decimals, suffix. */
const PLAIN: Readonly<Record<Unit, { factor: number; decimals: number; suffix: string }>> = {
  m: { factor: 100, decimals: 1, suffix: ' cm' },
  rad: { factor: 180 / Math.PI, decimals: 0, suffix: '°' },
  kg: { factor: 1, decimals: 1, suffix: ' kg' },
  N: { factor: 1, decimals: 0, suffix: ' N' },
  N·m: { factor: 1, decimals: 1, suffix: ' N·m' },
  Pa: { factor: 1e-3, decimals: 0, suffix: ' kPa' },
  'N·m/°': { factor: 1, decimals: 1, suffix: ' N·m/°' },
  '1': { factor: 100, decimals: 0, suffix: ' %' },
};

const MILLIMETRES = { factor: 1000, decimals: 0, suffix: ' mm' };

/** Plain writing with a decimal point, in centimetres (or millimetres), degrees, kilograms, newtons and per cent. */
export const plainFormat: FormatValue = (value, unit, inMillimetres = false) => {
  const { factor, decimals, suffix } = unit === 'm' && inMillimetres ? MILLIMETRES : PLAIN[unit];
  const text = (value * factor).toFixed(decimals);
  return `${Number(text) === 0 ? text.replace('-', '') : text}${suffix}`;
};

/** Findings that are a yes or a no carry no figure. */
const YES_NO: readonly string[] = ['strapReleases', 'floorNonSlip', 'padBraced', 'kneelsOnSide'];

/** True for quantities that answer yes or no: they have no edges and no figure. */
export function isYesOrNo(id: string): boolean {
  return YES_NO.includes(id);
}

/** Name of a quantity as a coach would say it; an unknown id is given back as it is. */
export function quantityName(id: string): string {
  return WORDING[id as QuantityId]?.name ?? NAMES[id as QuantityId] ?? id;
}

/**
 * The finding's heading: name, value, and the half-width of its 95 % interval. A side is said in words, never by a sign; where
 * a limb does not reach there is no value, and a place is told from the boat's middle too where its mark lies elsewhere.
 */
export function findingTitle(finding: Finding, format: FormatValue = plainFormat): string {
  const name = quantityName(finding.quantity);
  if (isYesOrNo(finding.quantity)) return name;
  if (finding.unreached) return `${name}: out of reach`;
  const { quantity: id, value, unit, sd, fromMiddleM, range } = finding;
  const fine = quantityDefinition(id)?.inMillimetres ?? false;
  const text = signedText({ id, value, unit }, format, fine);
  if (fromMiddleM !== undefined) {
    const middle = signedText({ id, value: fromMiddleM, unit }, format, fine);
    return `${name} ${text}, of the boat’s middle ${middle}`;
  }
  if (range) return `${name} ${text}, between ${format(range.least, unit)} and ${format(range.most, unit)}`;
  return sd ? `${name} ${text} ± ${format(SIGMAS_95 * sd, unit, fine)}` : `${name} ${text}`;
}

/** A band in words: "15.0 cm to 20.0 cm", "at least …", "at most …"; empty for a yes-or-no or an open band. */
export function bandText(
  band: Pick<Band, 'min' | 'max'>,
  unit: Unit,
  format: FormatValue = plainFormat,
): string {
  if (band.min !== null && band.max !== null) return `${format(band.min, unit)} to ${format(band.max, unit)}`;
  if (band.min !== null) return `at least ${format(band.min, unit)}`;
  return band.max === null ? '' : `at most ${format(band.max, unit)}`;
}

/** One plain sentence for the coach, as sure as its probability; of an unusual place that works, what the usual would bring. */
export function coachSentence(finding: Finding, format: FormatValue = plainFormat): string {
  if (isUnusualPlace(finding)) return unusualPlaceSentence(finding, format);
  const near = finding.distance > 0 ? supportSentence(finding) : null;
  return unreachedSentence(finding) ?? near ?? pick(finding, 'coach');
}

/** One plain sentence for the athlete: no jargon, nothing about body mass. Empty where there is nothing to say. */
export function athleteSentence(finding: Finding): string {
  return finding.unreached ? '' : pick(finding, 'athlete');
}

function pick(finding: Finding, reader: 'coach' | 'athlete'): string {
  const words = WORDING[finding.quantity as QuantityId]?.[reader];
  if (!words) return '';
  const good = spoken(words.good, finding);
  if (finding.severity === 'good') return good;
  const sentence = spoken(nearerLow(finding) ? words.low : words.high, finding);
  return finding.severity === 'check'
    ? inDoubt(finding, { inside: good, outside: sentence }, reader)
    : sentence;
}

function nearerLow({ value, band }: Finding): boolean {
  if (band.min === null) return false;
  return band.max === null || Math.abs(value - band.min) < Math.abs(value - band.max);
}

/** Why a boat does not float, with what to do. */
export function notAfloatSentence(result: NotAfloat): string {
  switch (result.kind) {
    case 'overloaded':
      return `The boat cannot carry ${result.massKg.toFixed(0)} kg; it is full at ${result.mostKg.toFixed(0)} kg. Take weight out or check the hull's measurements.`;
    case 'swamped':
      return `Water comes over the side ${Math.abs(result.atX * 100).toFixed(0)} cm ${result.atX < 0 ? 'aft' : 'forward'} of midships. Move the weight or check the hull's measurements.`;
    case 'no-equilibrium':
      return `No place was found where the boat floats at rest: ${result.reason}.`;
  }
}

/** What must be known of a body estimate. */
export function bodyNoteSentence(note: BodyNote): string {
  switch (note.code) {
    case 'extrapolates-stature':
      return `A stature of ${(note.value * 100).toFixed(0)} cm is outside 130–215 cm; the estimate reaches beyond what was surveyed. Take tape measures.`;
    case 'extrapolates-mass':
      return `A body mass outside 30–140 kg reaches beyond what was surveyed; treat loads and trim as rough.`;
    case 'junior':
      return 'The survey measured adults. A junior’s sitting height and legs are set to their age; the rest is an extrapolation, so take tape measures.';
    case 'tape-disagrees':
      return `The tape measure "${MEASURING[note.measure].name}" is ${note.sigmas.toFixed(1)} standard deviations from what the stature leads one to expect; measure it again.`;
  }
}
