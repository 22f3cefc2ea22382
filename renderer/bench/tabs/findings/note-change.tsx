import type { Finding } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { useSlow } from '../../bench-context.tsx';
import { ChangeButtons } from '../../change-buttons.tsx';
import { type Change, changeText, sideEffectsText } from '../../change-text.ts';

/** Side effects worth a line in the margin. */
const MOST_EFFECTS = 3;

/** The way out of a finding: the least change that clears it, with what it does besides; shown or taken in one step. */
export function NoteChange({ finding }: { finding: Finding }) {
  const format = useFormat();
  const suggestion = useSlow(({ suggestions }) => suggestions[finding.id]);
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
  const effects = suggestion.kind === 'move' ? suggestion.sideEffects : [];
  const told = sideEffectsText(effects, MOST_EFFECTS, format);

  return (
    <div className="note-change">
      <p>{change}</p>
      {way.kind === 'move' && !way.clean && <p>{say('notes.not-clean')}</p>}
      {told && <p className="note-effects">{say('notes.side-effects', { effects: told })}</p>}
      <ChangeButtons change={way} text={change} />
    </div>
  );
}
