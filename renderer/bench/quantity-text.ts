import type { Quantity } from '../../core/evaluation/finding.ts';
import { isYesOrNo } from '../../core/text/sentences.ts';
import { signedText } from '../../core/text/signed-text.ts';
import type { Format } from '../language/format.ts';
import { say } from '../language/messages.ts';

/** A value of the report as a person reads it. */
export function quantityText({ id, value, unit, unreached }: Quantity, format: Format): string {
  if (unreached) return say('values.unreached');
  if (id === 'strapReleases') return say(`measures.strap.${strapKind(value)}`);
  if (isYesOrNo(id)) return say(value >= 0.5 ? 'values.yes' : 'values.no');
  return signedText({ id, value, unit }, format.quantity(id));
}

const strapKind = (value: number) => (value > 0 ? 'releases' : value < 0 ? 'fixed' : 'none');

/** A core name as it stands within a sentence. */
export function inSentence(name: string): string {
  return name.charAt(0).toLocaleLowerCase() + name.slice(1);
}
