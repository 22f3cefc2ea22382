import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import type { OpenedFit } from '../../../app/contract/records.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import { momentsOf, PRESENT } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { LanguageChoice } from '../../ui/fields/language-choice.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import type { ShowChoices } from './show-choices.ts';

/** No earlier state, in a list whose values are words. */
const NOTHING = 'nothing';

interface ChooseProps {
  readonly opened: OpenedFit;
  readonly seats: readonly { readonly index: number; readonly name: string }[];
  readonly choices: ShowChoices;
  readonly onChange: (change: Partial<ShowChoices>) => void;
}

/** What the coach chooses before the athlete looks: whose seat, which two states, body mass, paper. */
export function ChooseShown(props: ChooseProps) {
  const { choices, onChange } = props;
  return (
    <DialogTrigger>
      <Button className="button bare">{say('showing.choose')}</Button>
      <Popover placement="bottom end" offset={6}>
        <Dialog className="popover stack show-choose" aria-label={say('showing.choose')}>
          <ChooseSeat {...props} />
          <ChooseStates {...props} />
          <div>
            <Tick
              name={say('athlete.mass')}
              isOn={choices.showsMass}
              onChange={(showsMass) => onChange({ showsMass })}
            />
            <p className="field-hint">{say('showing.mass.about')}</p>
          </div>
          <LanguageChoice value={choices.language} onChange={(language) => onChange({ language })} />
          <ChoiceField
            label={say('showing.paper')}
            value={choices.paper}
            onChange={(paper) => onChange({ paper })}
            options={PAPER_NAMES.map((name) => ({ value: name, name }))}
          />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

/** The seat; nothing in a single. */
function ChooseSeat({ seats, choices, onChange }: ChooseProps) {
  if (seats.length < 2) return null;
  return (
    <SelectField
      label={say('bench.seat')}
      value={String(choices.seat)}
      onChange={(seat) => onChange({ seat: Number(seat) })}
      options={seats.map(({ index, name }) => ({
        value: String(index),
        name: say('bench.seat.of', { number: index + 1, name }),
      }))}
    />
  );
}

/** The state that is shown, and an earlier one behind it. */
function ChooseStates({ opened, choices, onChange }: ChooseProps) {
  const states = momentsOf(opened).map(({ key, revision }) => ({
    value: key,
    name:
      key === PRESENT || !revision
        ? say('showing.present')
        : say('showing.revision', { number: revisionNumber(revision), name: revision.name }),
  }));
  return (
    <>
      <SelectField
        label={say('athlete-page.now')}
        value={choices.now}
        onChange={(now) => onChange({ now })}
        options={states}
      />
      <SelectField
        label={say('athlete-page.before')}
        value={choices.before ?? NOTHING}
        onChange={(before) => onChange({ before: before === NOTHING ? null : before })}
        options={[{ value: NOTHING, name: say('showing.nothing-before') }, ...states]}
      />
    </>
  );
}
