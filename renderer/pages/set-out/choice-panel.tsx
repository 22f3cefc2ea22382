import type { OpenedFit } from '../../../app/contract/records.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import { type SetOutOptions, setOutOptionsSchema } from '../../../core/setout/set-out-options.ts';
import { SHEET_UNITS } from '../../../core/setout/sheet-length.ts';
import { momentsOf, PRESENT } from '../../document/use-fit-states.ts';
import { say } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import type { Choices } from './choices.ts';

interface PanelProps {
  readonly opened: OpenedFit;
  /** Seats that somebody kneels in. */
  readonly seats: readonly { readonly index: number; readonly name: string }[];
  readonly choices: Choices;
  readonly onChange: (change: Partial<Choices>) => void;
}

/** Everything that is chosen before a sheet is made: which setting, which paper, and how it is built. */
export function ChoicePanel(props: PanelProps) {
  return (
    <>
      <WhichSetting {...props} />
      <WhichPaper {...props} />
      <HowItIsBuilt {...props} />
    </>
  );
}

function WhichSetting({ opened, seats, choices, onChange }: PanelProps) {
  return (
    <fieldset className="stack">
      <legend>{say('setout.which')}</legend>
      {seats.length > 1 && (
        <ChoiceField
          label={say('setout.which.seat')}
          value={String(choices.seat)}
          onChange={(seat) => onChange({ seat: Number(seat) })}
          options={seats.map(({ index, name }) => ({
            value: String(index),
            name: say('setout.which.seat.of', { number: index + 1, name }),
          }))}
        />
      )}
      <SelectField
        label={say('setout.which.state')}
        value={choices.state}
        onChange={(state) => onChange({ state })}
        options={momentsOf(opened).map(({ key, revision }) => ({
          value: key,
          name: revision
            ? say('setout.which.revision', { number: revisionNumber(revision), name: revision.name })
            : say('setout.which.present'),
        }))}
      />
      {choices.state === PRESENT && opened.draftSavedAt !== null && (
        <p className="field-hint">{say('setout.which.draft')}</p>
      )}
    </fieldset>
  );
}

function WhichPaper({ choices, onChange }: PanelProps) {
  const { options } = choices;
  return (
    <fieldset className="stack">
      <legend>{say('setout.paper')}</legend>
      <ChoiceField
        label={say('setout.paper.size')}
        value={choices.paper}
        onChange={(paper) => onChange({ paper })}
        options={PAPER_NAMES.map((name) => ({ value: name, name }))}
      />
      <ChoiceField
        label={say('setout.paper.units')}
        value={options.units}
        onChange={(units) => onChange({ options: { ...options, units } })}
        options={SHEET_UNITS.map((unit) => ({ value: unit, name: unit }))}
      />
    </fieldset>
  );
}

const { kneeBreadthM: KNEE, foamM: FOAM, boltM: BOLT } = setOutOptionsSchema.shape;

function HowItIsBuilt({ choices: { options }, onChange }: PanelProps) {
  const build = (change: Partial<SetOutOptions>) => onChange({ options: { ...options, ...change } });
  return (
    <fieldset className="stack">
      <legend>{say('setout.making')}</legend>
      <MeasureField
        label={say('setout.making.knee')}
        hint={say('setout.making.knee.hint')}
        kind="length"
        value={options.kneeBreadthM}
        {...limitsOf(KNEE.unwrap().unwrap())}
        onEnter={(kneeBreadthM) => build({ kneeBreadthM })}
        onEmpty={() => build({ kneeBreadthM: null })}
      />
      <MeasureField
        label={say('setout.making.foam')}
        kind="length"
        value={options.foamM}
        {...limitsOf(FOAM.unwrap())}
        onEnter={(foamM) => build({ foamM })}
      />
      <MeasureField
        label={say('setout.making.bolt')}
        kind="length"
        value={options.boltM}
        {...limitsOf(BOLT.unwrap())}
        onEnter={(boltM) => build({ boltM })}
      />
    </fieldset>
  );
}
