import type { Format } from '../../../app/language/format.ts';
import { MEASURE_KINDS, type MeasureKind, outOfRangeText, problemText, tidyStep } from './measure-kinds.ts';

/** What an entry holds: a value, nothing, or a text that is not valid and why. */
export type ReadEntry =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'emptied' }
  | { readonly kind: 'refused'; readonly why: string };

/** What a measure field allows, and how it is written. */
export interface EntryRule {
  readonly kind: MeasureKind;
  readonly min: number;
  readonly max: number;
  readonly mayBeEmpty: boolean;
  readonly format: Format;
}

/** Reads what was typed into a measure field. Values are in the document's unit. */
export function readEntry(text: string, { kind, min, max, mayBeEmpty, format }: EntryRule): ReadEntry {
  if (text.trim() === '' && mayBeEmpty) return { kind: 'emptied' };
  const rule = MEASURE_KINDS[kind];
  const parsed = rule.parse(text, format);
  if (!parsed.ok) return { kind: 'refused', why: problemText(parsed.problem) };
  return within(tidyStep(parsed.value), { kind, min, max, mayBeEmpty, format });
}

/** The value that a step leads to from `from`; at a limit the step is refused and says so. */
export function stepEntry(from: number, step: number, rule: EntryRule): ReadEntry {
  const wanted = tidyStep(from + step);
  const kept = Math.min(rule.max, Math.max(rule.min, wanted));
  return kept === from ? within(wanted, rule) : { kind: 'value', value: kept };
}

function within(value: number, { kind, min, max, format }: EntryRule): ReadEntry {
  const outside = outOfRangeText(value, { min, max }, (shown) => MEASURE_KINDS[kind].show(shown, format));
  return outside === null ? { kind: 'value', value } : { kind: 'refused', why: outside };
}
