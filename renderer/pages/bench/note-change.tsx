import type { Finding } from '../../../core/findings/finding.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { useDocument, useFit, useSlow } from './bench-context.tsx';
import { type Change, changeText, sideEffectText, withChange } from './change-text.ts';

/** Side effects worth a line in the margin. */
const MOST_EFFECTS = 3;

/** The way out of a finding: the least change that clears it, with what it does besides; shown or taken in one step. */
export function NoteChange({ finding }: { finding: Finding }) {
  const document = useDocument();
  const format = useFormat();
  const suggestion = useSlow(({ suggestions }) => suggestions[finding.id]);
  const shown = useFit(({ ghost }) => ghost);
  const fit = useFit((state) => state.fit);
  if (!suggestion) return <p className="note-looking">{say('notes.looking')}</p>;
  if (suggestion.kind === 'none') {
    const fittings = suggestion.locked.map((part) => say(`fitting.${part}`)).join(', ');
    return (
      <p className="note-looking">
        {fittings ? say('notes.no-way.locked', { fittings }) : say('notes.no-way')}
      </p>
    );
  }
  const way: Change = suggestion;
  const change = changeText(way, format);
  const isShown = shown !== null && JSON.stringify(shown) === JSON.stringify(withChange(fit, way));
  const effects = suggestion.kind === 'move' ? suggestion.sideEffects : [];
  const told = [...effects]
    .sort((a, b) => Number(b.severityFrom !== b.severityTo) - Number(a.severityFrom !== a.severityTo))
    .slice(0, MOST_EFFECTS)
    .map((effect) => sideEffectText(effect, format))
    .join(', ');

  function show(): void {
    document.showGhost(isShown ? null : withChange(fit, way));
    if (!isShown) announce(say('spoken.shown', { change }));
  }

  return (
    <div className="note-change">
      <p>{change}</p>
      {way.kind === 'move' && !way.clean && <p>{say('notes.not-clean')}</p>}
      {told && <p className="note-effects">{say('notes.side-effects', { effects: told })}</p>}
      <p className="row">
        <button
          type="button"
          className="button words"
          aria-label={say(isShown ? 'notes.hide.of' : 'notes.show.of', { change })}
          onClick={show}
        >
          {say(isShown ? 'notes.hide' : 'notes.show')}
        </button>
        <button
          type="button"
          className="button words"
          aria-label={say('notes.take.of', { change })}
          onClick={() => document.apply(change, (now) => withChange(now, way))}
        >
          {say('notes.take')}
        </button>
      </p>
    </div>
  );
}
