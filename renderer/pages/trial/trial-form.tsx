import { useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { needsCaution } from '../../../core/trial/observation.ts';
import { TrialCaution } from '../../bench/tabs/trials/trial-caution.tsx';
import { useTried } from '../../bench/tabs/trials/use-tried.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { useFormValues } from '../../ui/form/use-form-values.ts';
import { BoatSigns } from './boat-signs.tsx';
import { FeltList } from './felt-list.tsx';
import { keepTrial, TRIED_NOW } from './keep-trial.ts';
import { TrialButtons } from './trial-buttons.tsx';
import { entriesOf, type FeltEntry, type TrialProblems, trialOf, withPlace } from './trial-entries.ts';
import { TrialFigure } from './trial-figure.tsx';
import { TrialSubject } from './trial-subject.tsx';

/** Whether what has been entered so far brings the caution. */
function cautious({ felt, notes }: { felt: readonly FeltEntry[]; notes: string }): boolean {
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

/** The trial's entries. Nothing is lost by leaving: unfinished entries are there again next time. */
export function TrialForm({ opened, record }: { opened: OpenedFit; record: TrialRecord | null }) {
  const {
    formValues: entries,
    change,
    discard,
  } = useFormValues(
    `trial.${record?.id ?? opened.id}`,
    entriesOf(record?.trial ?? null, startOf(opened, record)),
  );
  const [problems, setProblems] = useState<TrialProblems>({});
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const tried = useTried(entries.tried === TRIED_NOW ? null : entries.tried);
  const fit = entries.tried === TRIED_NOW ? opened.fit : (tried?.fit ?? opened.fit);

  async function save(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    const made = trialOf(entries);
    if ('problems' in made) return setProblems(made.problems);
    setProblems({});
    const result = await keepTrial(opened, {
      id: record?.id,
      tried: entries.tried,
      trial: made.trial,
      onRevision: (tried) => change({ tried }),
    });
    if (!result.ok) return setRefusal(result.error);
    discard();
    go({ page: 'fit', id: opened.id, tab: 'trials', trial: result.value.id });
  }

  return (
    <form className="entries trial-form" onSubmit={save} noValidate>
      <TrialSubject opened={opened} fit={fit} entries={entries} problems={problems} onChange={change} />
      {cautious(entries) && <TrialCaution />}
      <div className="trial-columns">
        <section>
          <h2>{say('trial.felt')}</h2>
          <TrialFigure
            fit={fit}
            seat={entries.seat}
            felt={entries.felt.map(({ place }) => place)}
            onTouch={(place) => change({ felt: withPlace(entries.felt, place) })}
          />
          <FeltList felt={entries.felt} problems={problems} onChange={(felt) => change({ felt })} />
        </section>
        <section>
          <h2>{say('trial.seen')}</h2>
          <BoatSigns seen={entries.seen} onChange={(seen) => change({ seen })} />
          <TextField
            label={say('trial.notes')}
            hint={say('trial.notes.hint')}
            value={entries.notes}
            onChange={(notes) => change({ notes })}
            lines={4}
          />
        </section>
      </div>
      {problems.all && (
        <p className="field-problem" role="alert">
          {problems.all}
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
      <TrialButtons fitId={opened.id} record={record} />
    </form>
  );
}
