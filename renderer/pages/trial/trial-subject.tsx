import type { OpenedFit, RevisionSummary } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { say } from '../../language/messages.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { Field } from '../../ui/form/field.tsx';
import { TRIED_NOW } from './keep-trial.ts';
import type { TrialSectionProps } from './trial-values.ts';
import { triedOptions } from './tried-options.ts';

interface SubjectProps extends TrialSectionProps {
  readonly opened: OpenedFit;
  /** The setting that was tried. */
  readonly fit: Fit;
  /** The revision that was tried, once it is fetched. */
  readonly revision: RevisionSummary | null;
}

const waters = () =>
  (['flat', 'ripple', 'waves'] as const).map((value) => ({
    value,
    name: say(`trial.water.${value}`),
  }));
const winds = () =>
  (['none', 'head', 'tail', 'side'] as const).map((value) => ({
    value,
    name: say(`trial.wind.${value}`),
  }));

/** What was tried, by whom, when, and on what water. */
export function TrialSubject(props: SubjectProps) {
  const { fit, form } = props;
  const seats = fit.seats.flatMap(({ athlete }, index) => (athlete ? [{ index, name: athlete.name }] : []));
  return (
    <section>
      <h2>{say('trial.what')}</h2>
      <div className="entry-row">
        <TriedField {...props} />
        {seats.length > 1 && (
          <SelectField
            label={say('trial.seat')}
            value={String(form.values.seat)}
            onChange={(seat) => form.change({ seat: Number(seat) })}
            options={seats.map(({ index, name }) => ({
              value: String(index),
              name: say('bench.seat.of', { number: index + 1, name }),
            }))}
          />
        )}
        <Field as="date" {...form.at('heldOn')} label={say('trial.held')} />
        <Field as="choice" {...form.at('water')} label={say('trial.water')} options={waters()} />
        <Field as="choice" {...form.at('wind')} label={say('trial.wind')} options={winds()} />
      </div>
    </section>
  );
}

/** Which revision was tried; or the setting as it stands, where that is none yet. */
function TriedField({ opened, revision, form }: SubjectProps) {
  const { tried } = form.values;
  return (
    <Field
      as="select"
      {...form.at('tried')}
      label={say('trial.tried')}
      options={triedOptions(opened, tried, revision)}
      hint={tried === TRIED_NOW ? say('trial.tried.now.hint') : undefined}
    />
  );
}
