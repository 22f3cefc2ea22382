import type { Format } from '../../../../app/language/format.ts';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { say } from '../../../language/messages.ts';
import { coachSentence, findingTitle } from '../../../language/sentences.ts';

/** The texts of one margin note. */
export interface NoteText {
  readonly word: string;
  readonly title: string;
  readonly sentence: string;
}

export function noteText(finding: Finding, format: Format): NoteText {
  return {
    word: say(`severity.${finding.severity}`),
    title: findingTitle(finding, format.quantity(finding.quantity)),
    sentence: coachSentence(finding, format.value),
  };
}
