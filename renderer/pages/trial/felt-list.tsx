import { BODY_FEELINGS } from '../../../core/trial/observation.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { StrengthField } from './strength-field.tsx';
import type { TrialSectionProps } from './trial-values.ts';

const feelings = () => BODY_FEELINGS.map((value) => ({ value, name: say(`feeling.${value}`) }));

/** What was felt at each place that was touched: what, and how strong. */
export function FeltList({ form }: TrialSectionProps) {
  const { felt } = form.values;
  if (felt.length === 0) return <p className="soft">{say('trial.felt.none')}</p>;
  return (
    <ul className="felt-list">
      {felt.map(({ place }, i) => {
        const name = say(`place.${place}`);
        return (
          <li key={place}>
            <h3>{name}</h3>
            <Field
              as="choice"
              {...form.at('felt', i, 'feeling')}
              label={say('observed.body', { place: name, feeling: say('trial.feeling') })}
              labelHidden
              options={feelings()}
            />
            <div className="row">
              <StrengthField what={name} {...form.at('felt', i, 'strength')} />
              <Button
                look="words"
                aria-label={say('trial.remove', { what: name })}
                onClick={() => form.change({ felt: felt.filter((_, other) => other !== i) })}
              >
                {say('history.remove')}
              </Button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
