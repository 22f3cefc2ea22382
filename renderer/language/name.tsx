import { Fragment } from 'react';
import { scriptRuns } from '../../app/language/script-runs.ts';
import { useShownWords } from './shown-words.tsx';

/** A text that may hold a name in another script, each stretch of it marked with its language: for voices and for fonts. */
export function Name({ text }: { text: string }) {
  const runs = scriptRuns(text, useShownWords().language);
  if (runs.every(({ lang }) => lang === null)) return breaking(text);
  return runs.map(({ text: run, lang }, index) =>
    lang ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a run is its place in the text
      <span key={index} lang={lang}>
        {breaking(run)}
      </span>
    ) : (
      breaking(run)
    ),
  );
}

/** A text in which a word of more than 30 letters may break: in a table it would push everything after it out of sight. */
function breaking(text: string): React.ReactNode {
  if (!/\S{31}/u.test(text)) return text;
  return text
    .split(/(\S{15})(?=[^\s\p{M}])/u)
    .filter(Boolean)
    .map((piece, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the text
      <Fragment key={index}>
        {piece}
        <wbr />
      </Fragment>
    ));
}
