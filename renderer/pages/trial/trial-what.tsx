import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { SelectField } from '../../fields/select-field.tsx';
import { TextField } from '../../fields/text-field.tsx';
import { say } from '../../language/messages.ts';
import { TRIED_NOW } from './keep-trial.ts';
import type { TrialEntries, TrialProblems } from './trial-entries.ts';

/** What was tried, by whom, when, and on what water. */
export function TrialWhat(props: {
  opened: OpenedFit;
  /** The setting that was tried. */
  fit: Fit;
  entries: TrialEntries;
  problems: TrialProblems;
  onChange: (part: Partial<TrialEntries>) => void;
}) {
  const { opened, fit, entries, problems, onChange } = props;
  const now = opened.draftSavedAt !== null || opened.revisions.length === 0;
  const seats = fit.seats.flatMap(({ athlete }, index) => (athlete ? [{ index, name: athlete.name }] : []));
  return (
    <section>
      <h2>{say('trial.what')}</h2>
      <p className="soft">{say('trial.about')}</p>
      <div className="entry-row">
        <SelectField
          label={say('trial.tried')}
          value={entries.tried}
          onChange={(tried) => onChange({ tried })}
          options={[
            ...(now || entries.tried === TRIED_NOW
              ? [{ value: TRIED_NOW, name: say('trial.tried.now') }]
              : []),
            ...opened.revisions.map(({ id, number, name }) => ({
              value: id,
              name: say('trial.tried.revision', { number, name }),
            })),
          ]}
          hint={entries.tried === TRIED_NOW ? say('trial.tried.now.hint') : undefined}
        />
        {seats.length > 1 && (
          <SelectField
            label={say('trial.seat')}
            value={String(entries.seat)}
            onChange={(seat) => onChange({ seat: Number(seat) })}
            options={seats.map(({ index, name }) => ({
              value: String(index),
              name: say('trial.seat.of', { number: index + 1, name }),
            }))}
          />
        )}
        <TextField
          label={say('trial.held')}
          type="date"
          value={entries.heldOn}
          onChange={(heldOn) => onChange({ heldOn })}
          problem={problems.heldOn}
        />
        <ChoiceField
          label={say('trial.water')}
          value={entries.water}
          onChange={(water) => onChange({ water })}
          options={(['flat', 'ripple', 'waves'] as const).map((value) => ({
            value,
            name: say(`trial.water.${value}`),
          }))}
        />
        <ChoiceField
          label={say('trial.wind')}
          value={entries.wind}
          onChange={(wind) => onChange({ wind })}
          options={(['none', 'head', 'tail', 'side'] as const).map((value) => ({
            value,
            name: say(`trial.wind.${value}`),
          }))}
        />
      </div>
    </section>
  );
}
