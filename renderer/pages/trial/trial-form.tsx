import { useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { needsCaution } from '../../../core/trial/observation.ts';
import { saidOfPain } from '../../../core/trial/pain-words.ts';
import { TrialCaution } from '../../bench/tabs/trials/trial-caution.tsx';
import { useTried } from '../../bench/tabs/trials/use-tried.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { type FormState, useForm } from '../../ui/form/use-form.ts';
import { BoatSigns } from './boat-signs.tsx';
import { FeltList } from './felt-list.tsx';
import { keepTrial, TRIED_NOW } from './keep-trial.ts';
import { TrialButtons } from './trial-buttons.tsx';

import { TrialFigure } from './trial-figure.tsx';
import { TrialSubject } from './trial-subject.tsx';
import { TRIAL_RULES, type TrialValues, trialValues, withPlace } from './trial-values.ts';

/** Whether what has been entered so far brings the caution. */
function cautious({ felt, notes }: Pick<TrialValues, 'felt' | 'notes'>): boolean {
  return needsCaution({
    notes,
    observations: felt.flatMap(({ place, feeling, strength }) =>
      feeling ? [{ kind: 'body' as const, place, feeling, strength }] : [],
    ),
  });
}

/** What is most likely tried, by whom: the newest revision, the first who kneels. */
function startOf({ fit, revisions }: OpenedFit, record: TrialRecord | null): { tried: string; seat: number } {
  const first = fit.seats.findIndex(({ athlete }) => athlete);
  return { tried: record?.revisionId ?? revisions[0]?.id ?? TRIED_NOW, seat: Math.max(0, first) };
}

/** With whoever kneels: what is said of an athlete who is erased goes too. */
function keepAs({ id, fit }: OpenedFit, record: TrialRecord | null): string {
  const who = fit.seats.map(({ athlete }) => athlete?.id ?? '');
  return ['trial', record?.id ?? id, ...who].join('.');
}

/** What is entered of a trial; unfinished values outlive the page. */
function useTrialForm(opened: OpenedFit, record: TrialRecord | null): FormState<TrialValues> {
  // What the form began with: the record may come anew while it is filled in.
  const [begun] = useState(record ?? undefined);
  const form: FormState<TrialValues> = useForm(TRIAL_RULES, {
    start: trialValues(record?.trial ?? null, startOf(opened, record)),
    keepAs: keepAs(opened, record),
    shared: record !== null,
    save: (trial, _, before) =>
      keepTrial(opened, {
        id: record?.id,
        before: begun && { revisionId: begun.revisionId, trial: { ...begun.trial, ...before } },
        tried: form.values.tried,
        trial,
        onRevision: (tried) => form.change({ tried }),
      }),
    onSaved: ({ id: trial }) => go({ page: 'fit', id: opened.id, tab: 'trials', trial }),
  });
  return form;
}

/** The trial's form. Nothing is lost by leaving: unfinished values are there again next time. */
export function TrialForm({ opened, record }: { opened: OpenedFit; record: TrialRecord | null }) {
  const form = useTrialForm(opened, record);
  const { values } = form;
  const tried = useTried(values.tried === TRIED_NOW ? null : values.tried);
  const fit = values.tried === TRIED_NOW ? opened.fit : (tried?.fit ?? opened.fit);
  return (
    <Form
      form={form}
      className="entries trial-form"
      buttons={<TrialButtons fitId={opened.id} record={record} />}
    >
      <TrialSubject opened={opened} fit={fit} revision={tried?.revision ?? null} form={form} />
      {cautious(values) && <TrialCaution />}
      <div className="trial-columns">
        <section>
          <h2>{say('trial.felt')}</h2>
          <p className="soft">{say('trial.about')}</p>
          <div data-field="allGood">
            <Field as="tick" {...form.at('allGood')} label={say('trial.all-good')} />
            {form.problems.allGood && <p className="field-problem">{form.problems.allGood}</p>}
          </div>
          <TrialFigure
            fit={fit}
            seat={values.seat}
            felt={values.felt.map(({ place }) => place)}
            onTouch={(place) => form.change({ felt: withPlace(values.felt, place) })}
          />
          <FeltList form={form} />
        </section>
        <section>
          <h2>{say('trial.seen')}</h2>
          <BoatSigns seen={values.seen} onChange={(seen) => form.change({ seen })} />
          <Field
            as="notes"
            {...form.at('notes')}
            label={say('trial.notes')}
            hint={say('trial.notes.hint')}
            lines={4}
          />
          {saidOfPain(values.notes) === 'perhaps' && (
            <p className="field-hint" role="status">
              {say('trial.words.perhaps')}
            </p>
          )}
        </section>
      </div>
    </Form>
  );
}
