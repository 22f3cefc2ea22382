import { BODY_FEELINGS } from '../../../core/trial/observation.ts';
import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { StrengthField } from './strength-field.tsx';
import type { FeltEntry, TrialProblems } from './trial-entries.ts';

/** What was felt at each place that was touched: what, and how strong. */
export function FeltList(props: {
  felt: readonly FeltEntry[];
  problems: TrialProblems;
  onChange: (felt: readonly FeltEntry[]) => void;
}) {
  const { felt, problems, onChange } = props;
  if (felt.length === 0) return <p className="soft">{say('trial.felt.none')}</p>;
  const change = (at: number, part: Partial<FeltEntry>) =>
    onChange(felt.map((entry, i) => (i === at ? { ...entry, ...part } : entry)));
  return (
    <ul className="felt-list">
      {felt.map(({ place, feeling, strength }, i) => {
        const name = say(`place.${place}`);
        return (
          <li key={place}>
            <h3>{name}</h3>
            <ChoiceField
              label={say('observed.body', { place: name, feeling: say('trial.feeling') })}
              labelHidden
              value={feeling}
              onChange={(named) => change(i, { feeling: named })}
              problem={feeling === null ? problems[`felt.${place}`] : null}
              options={BODY_FEELINGS.map((value) => ({ value, name: say(`feeling.${value}`) }))}
            />
            <div className="row">
              <StrengthField what={name} value={strength} onChange={(to) => change(i, { strength: to })} />
              <button
                type="button"
                className="button words"
                aria-label={say('trial.remove', { what: name })}
                onClick={() => onChange(felt.filter((_, other) => other !== i))}
              >
                {say('trial.remove.short')}
              </button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
