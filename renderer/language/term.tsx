import { say } from './messages.ts';
import { inShownWords } from './shown-words.tsx';

/**
 * Words of the trade that are explained, in the order of the glossary. English and Hungarian name the boat's heel by two words, so
 * that no heel of a foot and no lean of a body is taken for it; a field of the boat's heel names its term itself.
 */
export const TERMS = [
  'fit',
  'revision',
  'band',
  'mark',
  'recess',
  'kneeling-side',
  'off-side',
  'stance',
  'catch',
  'drive',
  'exit',
  'trim',
  'draft',
  'heel',
  'sheer',
  'gunwale',
  'freeboard',
  'float-check',
  'station',
  'base-line',
  'metacentre',
  'offsets',
] as const;
export type TermId = (typeof TERMS)[number];

/** A word of the trade, explained on hover and by the same words in Help. */
export const Term = inShownWords(({ term, children }: { term: TermId; children: React.ReactNode }) => (
  <abbr title={say(`term.${term}.about`)}>{children}</abbr>
));
