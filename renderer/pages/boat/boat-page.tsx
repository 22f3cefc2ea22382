import { useState } from 'react';
import { useBoat } from '../../client/use-record.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { ToDecide } from '../../ui/to-decide.tsx';
import { BoatDetails } from './boat-details.tsx';
import { BoatForm } from './boat-form.tsx';
import { DuplicateBoat } from './duplicate-boat.tsx';
import './boat.css';

/** One boat's page: the same form makes and edits. */
export function BoatPage({ id }: { id: string }) {
  const { record, error, reload } = useBoat(id);
  const [isSaved, setSaved] = useState(false);
  return (
    <Page
      title={record?.boat.name ?? say(id === 'new' ? 'boats.new' : 'archive.counts.boats')}
      wide
      tools={
        record && (
          <>
            <DuplicateBoat boat={record.boat} />
            <a className="button" href={hrefOf({ page: 'hull', id })}>
              {say('boat.float.go')}
            </a>
          </>
        )
      }
    >
      {error && <ErrorMessage error={error} />}
      {record === undefined && !error && <p className="soft">{say('sheet.loading')}</p>}
      {record === null && id !== 'new' && <p>{say('boat.not-found')}</p>}
      {record && <ToDecide key={`asked.${record.changedAt}`} id={record.id} />}
      {(record || id === 'new') && (
        <BoatForm
          key={record?.changedAt}
          boat={record ? { ...record.boat, id: record.id } : null}
          id={id}
          isSaved={isSaved}
          onChanged={() => {
            setSaved(true);
            reload();
          }}
        />
      )}
      {record && <BoatDetails id={record.id} boat={record.boat} onSaved={reload} />}
    </Page>
  );
}
