import { say } from './messages.ts';
import { inShownWords } from './shown-words.tsx';

/** Words of the trade that are explained, in the order of the glossary. */
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
  'sheer',
  'gunwale',
  'freeboard',
  'float-check',
  'station',
  'base-line',
  'metacentre',
  'offsets',
] as const;

/** A word of the trade, explained on hover and by the same words in Help. */
export const Term = inShownWords(
  ({ term, children }: { term: (typeof TERMS)[number]; children: React.ReactNode }) => (
    <abbr title={say(`term.${term}.about`)}>{children}</abbr>
  ),
);
