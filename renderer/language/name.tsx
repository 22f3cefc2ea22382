import { scriptRuns } from '../../app/language/script-runs.ts';
import { useShownWords } from './shown-words.tsx';

/** A text that may hold a name in another script, each stretch of it marked with its language: for voices and for fonts. */
export function Name({ text }: { text: string }) {
  const runs = scriptRuns(text, useShownWords().language);
  if (runs.every(({ lang }) => lang === null)) return text;
  return runs.map(({ text: run, lang }, index) =>
    lang ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a run is its place in the text
      <span key={index} lang={lang}>
        {run}
      </span>
    ) : (
      run
    ),
  );
}
