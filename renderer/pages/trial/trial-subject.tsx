import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { say } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { TRIED_NOW } from './keep-trial.ts';
import type { TrialEntries, TrialProblems } from './trial-entries.ts';

interface WhatProps {
  readonly opened: OpenedFit;
  /** The setting that was tried. */
  readonly fit: Fit;
  readonly entries: TrialEntries;
  readonly problems: TrialProblems;
  readonly onChange: (part: Partial<TrialEntries>) => void;
}

/** What was tried, by whom, when, and on what water. */
export function TrialSubject(props: WhatProps) {
  const { fit, entries, problems, onChange } = props;
  const seats = fit.seats.flatMap(({ athlete }, index) => (athlete ? [{ index, name: athlete.name }] : []));
  return (
    <section>
      <h2>{say('trial.what')}</h2>
      <p className="soft">{say('trial.about')}</p>
      <div className="entry-row">
        <TriedField {...props} />
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

/** Which revision was tried; or the setting as it stands, where that is none yet. */
function TriedField({ opened: { draftSavedAt, revisions }, entries: { tried }, onChange }: WhatProps) {
  const now = draftSavedAt !== null || revisions.length === 0 || tried === TRIED_NOW;
  const listed = tried === TRIED_NOW || revisions.some(({ id }) => id === tried);
  return (
    <SelectField
      label={say('trial.tried')}
      value={tried}
      onChange={(chosen) => onChange({ tried: chosen })}
      options={[
        ...(now ? [{ value: TRIED_NOW, name: say('trial.tried.now') }] : []),
        ...(listed ? [] : [{ value: tried, name: say('trial.tried.kept') }]),
        ...revisions.map(({ id, number, name }) => ({
          value: id,
          name: say('trial.tried.revision', { number: revisionNumber({ id, number }), name }),
        })),
      ]}
      hint={tried === TRIED_NOW ? say('trial.tried.now.hint') : undefined}
    />
  );
}
