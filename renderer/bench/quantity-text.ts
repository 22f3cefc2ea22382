import type { Quantity } from '../../core/findings/finding.ts';
import { isYesOrNo } from '../../core/findings/sentences.ts';
import type { Format } from '../language/format.ts';
import { say } from '../language/messages.ts';

/** A value of the report as a person reads it. */
export function quantityText({ id, value, unit }: Quantity, format: Format): string {
  if (isYesOrNo(id)) return say(value >= 0.5 ? 'values.yes' : 'values.no');
  return format.quantity(id)(value, unit);
}

/** A core name as it stands within a sentence. */
export function inSentence(name: string): string {
  return name.charAt(0).toLocaleLowerCase() + name.slice(1);
}
