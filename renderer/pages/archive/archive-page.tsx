import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { StoreNotices } from '../../ui/store-notices.tsx';
import { ArchivedRecords } from './archived-records.tsx';
import { Backups } from './backups.tsx';
import { ClubLibrary } from './club-library.tsx';
import { Conflicts } from './conflicts.tsx';
import { ExportEverything } from './export-everything.tsx';
import { ImportFile } from './import-file.tsx';

/** Export, import and backups. Nothing here changes the store without a backup first. */
export function ArchivePage() {
  const state = useCall('program.state', {});
  const backups = useCall('backups.list', {});
  const conflicts = useCall('conflicts.list', {});
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const error = state.error ?? backups.error ?? conflicts.error ?? refusal;
  return (
    <Page title={say('archive.title')}>
      <StoreNotices />
      {error && <ErrorMessage error={error} />}
      {state.value && backups.value && (
        <div className="entries">
          <p className="soft">{say('archive.where', { folder: state.value.dataFolder })}</p>
          <ExportEverything onRefused={setRefusal} />
          <ImportFile
            asksWithDialog={state.value.shell === 'electron'}
            onRefused={setRefusal}
            onImported={() => {
              backups.reload();
              conflicts.reload();
            }}
          />
          {conflicts.value && (
            <Conflicts key={conflicts.round} open={conflicts.value} onRefused={setRefusal} />
          )}
          <ClubLibrary onRefused={setRefusal} />
          <ArchivedRecords onRefused={setRefusal} />
          <Backups backups={backups.value} onRefused={setRefusal} onChanged={backups.reload} />
        </div>
      )}
    </Page>
  );
}
