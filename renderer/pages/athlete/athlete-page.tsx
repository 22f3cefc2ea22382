import { useState } from 'react';
import type { CallOutput } from '../../../app/contract/contract.ts';
import { CONSENTS } from '../../../core/document/athlete-schema.ts';
import { missingConsents } from '../../../core/document/consent.ts';
import { useAthlete } from '../../client/use-record.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ConsentLine } from '../../ui/consent-note.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { ToDecide } from '../../ui/to-decide.tsx';
import { AthleteFits } from './athlete-fits.tsx';
import { AthleteForm } from './athlete-form.tsx';
import { EraseAthlete, Erased } from './erase-athlete.tsx';
import { JoinedEntries } from './joined-entries.tsx';
import { MeasuredHistory } from './measured-history.tsx';
import './athlete.css';

/** One athlete's page: the same form makes and edits. */
export function AthletePage({ id }: { id: string }) {
  const { record, error } = useAthlete(id);
  const [erased, setErased] = useState<CallOutput<'athletes.erase'> | null>(null);
  // Nothing of the person stays on the page.
  if (erased)
    return (
      <Page title={say('archive.counts.athletes')}>
        <Erased {...erased} />
      </Page>
    );
  const title = record?.athlete.name ?? say(id === 'new' ? 'athletes.new' : 'archive.counts.athletes');
  return (
    <Page
      title={title}
      tools={
        record && (
          <>
            <a className="button" href={hrefOf({ page: 'timeline', id: record.id })}>
              {say('athlete.timeline')}
            </a>
            <a className="button chief" href={hrefOf({ page: 'measure', id: record.id })}>
              {say('measure.begin')}
            </a>
          </>
        )
      }
    >
      {error && <ErrorMessage error={error} />}
      {record === undefined && !error && <p className="soft">{say('sheet.loading')}</p>}
      {record === null && id !== 'new' && <p>{say('athlete.not-found')}</p>}
      {record && <ToDecide key={`asked.${record.changedAt}`} id={record.id} />}
      {record && missingConsents(record.athlete, CONSENTS, today()).length > 0 && (
        <p className="consent-note" role="note">
          <ConsentLine athlete={record.athlete} wanted={CONSENTS} />
        </p>
      )}
      {record && <AthleteFits record={record} />}
      {(record || id === 'new') && <AthleteForm athlete={record?.athlete ?? null} id={record?.id} />}
      {record && (
        <div className="entries apart">
          <MeasuredHistory
            key={record.changedAt}
            athleteId={record.id}
            measuredOn={record.athlete.measuredOn}
          />
          <JoinedEntries key={record.id} id={record.id} name={record.athlete.name} />
          <EraseAthlete id={record.id} name={record.athlete.name} onErased={setErased} />
        </div>
      )}
    </Page>
  );
}
