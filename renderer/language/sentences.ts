import type { BodyNote } from '../../core/body/body.ts';
import type { Band, Finding, Unit } from '../../core/evaluation/finding.ts';
import type { BalanceDemand, NotAfloat } from '../../core/hydrostatics/afloat.ts';
import * as balance from '../../core/text/balance-sentence.ts';
import * as sentences from '../../core/text/sentences.ts';
import * as signed from '../../core/text/signed-text.ts';
import { words } from './messages.ts';

/** Core's sentences, said in the page's language. `format` writes values. */
type Write = signed.FormatValue;

/** Name of a quantity as a coach would say it. */
export const quantityName = (id: string): string => sentences.quantityName(id, words());

/** What a yes-or-no quantity is. */
export const choiceText = (of: { id: string; value: number }): string => sentences.choiceText(of, words());

/** A finding's heading: name, value and how sure it is. */
export const findingTitle = (finding: Finding, format: Write): string =>
  sentences.findingTitle(finding, words(), format);

/** One plain sentence on a finding for the coach. */
export const coachSentence = (finding: Finding, format: Write): string =>
  sentences.coachSentence(finding, words(), format);

/** A band in words; empty for an open one. */
export const bandText = (band: Pick<Band, 'min' | 'max'>, unit: Unit, format: Write): string =>
  sentences.bandText(band, unit, { words: words(), format });

/** Why a boat does not float, with what to do. */
export const notAfloatSentence = (result: NotAfloat, format: Write): string =>
  sentences.notAfloatSentence(result, words(), format);

/** What must be known of a body estimate. */
export const bodyNoteSentence = (note: BodyNote, format: Write): string =>
  sentences.bodyNoteSentence(note, words(), format);

/** What the paddler must balance. */
export const balanceSentence = (demand: BalanceDemand, format: Write): string =>
  balance.balanceSentence(demand, words(), format);

/** A value with its unit and without a sign to think about. */
export const signedText = (of: { id: string; value: number; unit: Unit }, format: Write): string =>
  signed.signedText(of, { words: words(), format });
