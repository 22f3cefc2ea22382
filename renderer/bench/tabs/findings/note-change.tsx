import type { Format } from '../../../../app/language/format.ts';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say, words } from '../../../language/messages.ts';
import { useSlow } from '../../bench-context.tsx';
import { ChangeButtons } from '../../change-buttons.tsx';
import { changeText, type ProposedChange, sideEffectsText } from '../../change-text.ts';

/** Side effects worth a line in the margin. */
const MOST_EFFECTS = 2;

/** The least change that clears a finding, with its side effects; shown or applied in one step. */
export function NoteChange({ finding }: { finding: Finding }) {
  const format = useFormat();
  const suggestion = useSlow(({ suggestions }) => suggestions[finding.id]);
  if (!suggestion) return <p className="note-looking">{say('notes.looking')}</p>;
  if (suggestion.kind === 'none') {
    const fittings = words().row(suggestion.locked.map((part) => say(`fitting.${part}`)));
    return (
      <p className="note-looking">
        {fittings ? say('notes.no-change.locked', { fittings }) : say('notes.no-change')}
      </p>
    );
  }
  if (suggestion.kind === 'measure')
    return <p className="note-looking">{say(`notes.measure.${suggestion.what}`)}</p>;
  const change: ProposedChange = suggestion;
  const text = changeText(change, format);
  return (
    <div className="note-change">
      <p className="note-move">{text}</p>
      <p className="note-effects">{priceText(change, format)}</p>
      <ChangeButtons change={change} text={text} />
    </div>
  );
}

/** What a change costs: what else it changes, and whether something leaves its band for it. */
function priceText(change: ProposedChange, format: Format): string {
  if (change.kind === 'choose') return '';
  const effects = sideEffectsText(change.sideEffects, MOST_EFFECTS, format);
  const price = effects ? say('notes.side-effects', { effects }) : say('notes.alone');
  return change.clean ? price : words().sentences([say('notes.not-clean'), price]);
}
