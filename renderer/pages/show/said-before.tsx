import type { ToldChange } from '../../../core/show/change-words.ts';
import { useShownWords } from '../../language/shown-words.tsx';
import type { AfterWater } from './after-water.ts';

/**
 * Show begins with what the athlete said after the last trial, and what was changed for it or not yet. `changes` are what was
 * moved since then; empty where they stand elsewhere.
 */
export function SaidBefore({
  said,
  changes = [],
}: {
  said: AfterWater | null;
  changes?: readonly ToldChange[];
}) {
  const { say } = useShownWords();
  if (!said) return null;
  return (
    <section className="show-said">
      <h2>{said.day}</h2>
      {said.stop && (
        <p className="show-stop" role="note">
          <strong>{say('show.said.stop')}</strong>
        </p>
      )}
      {said.words && <blockquote>{said.words}</blockquote>}
      <ul className="show-list" data-kind="said">
        {said.told.map(({ what, done }) => (
          <li key={what}>
            {what} {done && <span className="soft">{done}</span>}
          </li>
        ))}
      </ul>
      {changes.length > 0 && (
        <ul className="show-list" data-kind="moves">
          {changes.map(({ what }) => (
            <li key={what}>{what}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
