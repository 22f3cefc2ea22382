import type { CallOutput } from '../../../app/contract/contract.ts';
import { say } from '../../language/messages.ts';
import { Tick } from '../../ui/fields/tick.tsx';

type Words = CallOutput<'athletes.previewErase'>['words'];

/** How far the name is removed from texts that stay. */
export interface NameClearing {
  readonly full: boolean;
  readonly parts: boolean;
}

/** What `athletes.erase` is asked for. */
export function clearingDepth({ full, parts }: NameClearing): 'none' | 'full-names' | 'parts-too' {
  if (!full) return 'none';
  return parts ? 'parts-too' : 'full-names';
}

/** Every place where the name stands in words that stay, and whether it is to be cleared from them. */
export function EraseWords(props: {
  words: Words;
  clearing: NameClearing;
  onChange: (clearing: NameClearing) => void;
}) {
  const { words, clearing, onChange } = props;
  const full = words.filter((place) => place.full);
  const parts = words.filter((place) => !place.full);
  return (
    <>
      {full.length > 0 && <Places title={say('erase.words')} words={full} />}
      {words.length > 0 && (
        <Tick
          name={say('erase.words.clear')}
          isOn={clearing.full}
          onChange={(on) => onChange({ full: on, parts: on && clearing.parts })}
        />
      )}
      {parts.length > 0 && <Places title={say('erase.words.parts')} words={parts} />}
      {parts.length > 0 && clearing.full && (
        <Tick
          name={say('erase.words.clear-parts')}
          isOn={clearing.parts}
          onChange={(on) => onChange({ ...clearing, parts: on })}
        />
      )}
    </>
  );
}

function Places({ title, words }: { title: string; words: Words }) {
  return (
    <div>
      <p>{title}</p>
      <ul>
        {words.map(({ kind, title: of, text }) => (
          <li key={`${kind} ${of} ${text}`}>
            {say('erase.words.place', { kind: say(`conflicts.kind.${kind}`), title: of, text })}
          </li>
        ))}
      </ul>
    </div>
  );
}
