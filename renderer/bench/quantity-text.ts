import type { Format } from '../../app/language/format.ts';
import type { Quantity } from '../../core/evaluation/finding.ts';
import { SIGMAS_95, shownOf } from '../../core/evaluation/probability.ts';
import { isYesOrNo } from '../../core/text/sentences.ts';
import { say } from '../language/messages.ts';
import { rangeText } from '../language/range-text.ts';
import { choiceText, signedText } from '../language/sentences.ts';

/** A value of the report as a person reads it; with its range where it has one: "64 % (55–71 %)". */
export function quantityText(quantity: Quantity, format: Format): string {
  const { id, unit, unreached, range } = quantity;
  const { value, sd } = shownOf(quantity);
  if (unreached) return say('values.unreached');
  if (isYesOrNo(id)) return choiceText({ id, value });
  const write = (size: number) => format.quantity(id)(size, unit, { half: halfOf(sd) });
  const text = signedText({ id, value, unit }, write);
  return range ? say('sheet.bracketed', { text, more: rangeText({ range, unit }, write) }) : text;
}

const halfOf = (sd: number | null) => (sd === null ? undefined : SIGMAS_95 * sd);
