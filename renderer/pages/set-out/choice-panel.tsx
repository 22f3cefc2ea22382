import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { isBolted } from '../../../core/setout/fixing-schedule.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import { makingOf, shelfPieces } from '../../../core/setout/set-out-options.ts';
import { SHEET_UNITS } from '../../../core/text/sheet-length.ts';
import { useFormat } from '../../display/use-display.ts';
import { momentsOf, PRESENT } from '../../document/use-fit-states.ts';
import { Explained } from '../../language/explained.tsx';
import { say } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { hrefOf } from '../../route/route.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { LanguageChoice } from '../../ui/fields/language-choice.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import type { Choices } from './choices.ts';

interface PanelProps {
  readonly opened: OpenedFit;
  /** The setting that is chosen, as paper has it. */
  readonly fit: Fit;
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
          label={say('bench.seat')}
          value={String(choices.seat)}
          onChange={(seat) => onChange({ seat: Number(seat) })}
          options={seats.map(({ index, name }) => ({
            value: String(index),
            name: say('bench.seat.of', { number: index + 1, name }),
          }))}
        />
      )}
      <SelectField
        label={say('trial.tried')}
        value={choices.state}
        onChange={(state) => onChange({ state })}
        options={momentsOf(opened).map(({ key, revision }) => ({
          value: key,
          name: revision
            ? say('showing.revision', { number: revisionNumber(revision), name: revision.name })
            : say('showing.present'),
        }))}
      />
      {choices.state === PRESENT && opened.draftSavedAt !== null && (
        <p className="field-hint">
          <Explained text={say('setout.which.draft')} />
        </p>
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
        label={say('measures.block')}
        value={choices.paper}
        onChange={(paper) => onChange({ paper })}
        options={PAPER_NAMES.map((name) => ({ value: name, name }))}
      />
      <ChoiceField
        label={say('display.length')}
        value={options.units}
        onChange={(units) => onChange({ options: { ...options, units } })}
        options={SHEET_UNITS.map((unit) => ({ value: unit, name: unit }))}
      />
      <LanguageChoice value={choices.language} onChange={(language) => onChange({ language })} />
    </fieldset>
  );
}

/** How it is built, as the documents say, and where each is set. */
function HowItIsBuilt({ fit, choices: { seat } }: PanelProps) {
  const format = useFormat();
  const { kneeBreadthM, foamM, boltM } = makingOf(fit, seat);
  const { pad, rest } = shelfPieces(fit, seat);
  const athlete = fit.seats[seat]?.athlete?.id;
  const boat = fit.boat.id;
  return (
    <fieldset className="stack">
      <legend>{say('setout.making')}</legend>
      <ul className="plain-list">
        <li>
          {kneeBreadthM === null
            ? say('setout.making.knee.estimated')
            : say('setout.making.knee', { length: format.length(kneeBreadthM) })}
        </li>
        <li>{say('setout.making.foam', { length: format.length(foamM) })}</li>
        {isBolted(fit.boat) && <li>{say('setout.making.bolt', { length: format.length(boltM) })}</li>}
        {pad && <li>{say('setout.making.shelf.pad', { name: pad.name })}</li>}
        {rest && <li>{say('setout.making.shelf.rest', { name: rest.name })}</li>}
      </ul>
      <p className="row">
        {athlete && <a href={hrefOf({ page: 'athlete', id: athlete })}>{say('conflicts.kind.athlete')}</a>}
        {boat && <a href={hrefOf({ page: 'boat', id: boat })}>{say('fitting.boat')}</a>}
      </p>
    </fieldset>
  );
}
