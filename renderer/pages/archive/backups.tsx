import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import { GoBack, type ListedBackup } from './go-back.tsx';

const MEGABYTE = 1e6;

/** The backups, made automatically every day; restore missing records, or the whole store. */
export function Backups(props: {
  backups: readonly ListedBackup[];
  onRefused: (error: CallError | null) => void;
  onChanged: () => void;
}) {
  const [busy, setBusy] = useState(false);
  const [asked, setAsked] = useState<ListedBackup | null>(null);
  const [told, setTold] = useState('');

  async function take(): Promise<void> {
    setBusy(true);
    const result = await call('backups.take', {});
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    props.onChanged();
  }

  async function restore({ name }: ListedBackup, how: 'replace' | 'bring-back'): Promise<void> {
    setAsked(null);
    setBusy(true);
    const result = await call('backups.restore', { name, how });
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    if (result.ok) setTold(say('archive.back.done'));
    props.onChanged();
  }

  return (
    <section>
      <h2>{say('archive.backups')}</h2>
      <p className="soft">{say('archive.backups.about')}</p>
      <p>
        <Button disabled={busy} onClick={take}>
          {say('archive.backups.take')}
        </Button>
      </p>
      <WorkLine active={busy} />
      <p role="status">{told}</p>
      <BackupTable
        backups={props.backups}
        busy={busy}
        onBringBack={(backup) => restore(backup, 'bring-back')}
        onReplace={setAsked}
      />
      <GoBack backup={asked} onYes={(backup) => restore(backup, 'replace')} onNo={() => setAsked(null)} />
    </section>
  );
}

/** Every backup: when and why it was made, its size, and two buttons to restore it. */
function BackupTable(props: {
  backups: readonly ListedBackup[];
  busy: boolean;
  onBringBack: (backup: ListedBackup) => void;
  onReplace: (backup: ListedBackup) => void;
}) {
  const format = useFormat();
  const size = ({ bytes }: ListedBackup) => format.number(bytes / MEGABYTE, { decimals: 1 });
  const tool = (mode: 'missing' | 'replace', backup: ListedBackup, run: (backup: ListedBackup) => void) => (
    <Button
      look="words"
      disabled={props.busy}
      aria-label={say(`archive.back.${mode}.of`, { when: instantText(backup.takenAt) })}
      onClick={() => run(backup)}
    >
      {say(`archive.back.${mode}`)}
    </Button>
  );
  return (
    <DataTable
      rows={props.backups}
      rowKey={({ name }) => name}
      empty={<p className="soft">{say('archive.backups.none')}</p>}
      columns={[
        { title: say('archive.backups.when'), isName: true, cell: ({ takenAt }) => instantText(takenAt) },
        { title: say('archive.backups.cause'), cell: ({ cause }) => say(`archive.cause.${cause}`) },
        {
          title: say('measures.block'),
          numeric: true,
          cell: (backup) => say('archive.backups.mb', { size: size(backup) }),
        },
        {
          title: '',
          className: 'row-tool',
          cell: (backup) => (
            <div className="row ends">
              {tool('missing', backup, props.onBringBack)}
              {tool('replace', backup, props.onReplace)}
            </div>
          ),
        },
      ]}
    />
  );
}
