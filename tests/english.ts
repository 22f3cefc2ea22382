import * as catalogue from '../app/language/catalogues/en.ts';
import { allOf } from '../app/language/messages.ts';
import { translator } from '../app/language/translator.ts';
import type { BodyNote } from '../core/body/body.ts';
import type { Band, Finding, Unit } from '../core/evaluation/finding.ts';
import type { BalanceDemand, NotAfloat } from '../core/hydrostatics/afloat.ts';
import * as balance from '../core/text/balance-sentence.ts';
import { plainFormat } from '../core/text/format.ts';
import * as sentences from '../core/text/sentences.ts';
import * as support from '../core/text/support-sentence.ts';

const messages = allOf(catalogue);

/** The English translator, and core's sentences said by it: what tests read. */
export const english = translator('en', messages);

/** English messages whose keys begin so, by key. */
export function englishMessages(beginning: string): [key: string, text: string][] {
  return Object.entries<string>(messages).filter(([key]) => key.startsWith(beginning));
}

/** A text with plain spaces for those that do not break: what it says, without where lines may end. */
export const plainSpaces = (text: string) => text.replaceAll(/[\u{a0}\u{202f}]/gu, ' ');

export const quantityName = (id: string) => sentences.quantityName(id, english);
export const findingTitle = (finding: Finding, format = plainFormat) =>
  plainSpaces(sentences.findingTitle(finding, english, format));
export const coachSentence = (finding: Finding, format = plainFormat) =>
  sentences.coachSentence(finding, english, format);
export const athleteSentence = (finding: Finding) => sentences.athleteSentence(finding, english);
export const bandText = (band: Pick<Band, 'min' | 'max'>, unit: Unit) =>
  sentences.bandText(band, unit, { words: english });
export const notAfloatSentence = (result: NotAfloat) => sentences.notAfloatSentence(result, english);
export const bodyNoteSentence = (note: BodyNote) => sentences.bodyNoteSentence(note, english);
export const balanceSentence = (demand: BalanceDemand) => balance.balanceSentence(demand, english);
export const supportSentence = (finding: Pick<Finding, 'support' | 'value'>) =>
  support.supportSentence(finding, english);
