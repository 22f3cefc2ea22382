import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { WorkLine } from '../../ui/work-line.tsx';
import { type Backup, GoBack } from './go-back.tsx';

const MEGABYTE = 1e6;

/** The backups: taken by themselves every day; bring back what is missing, or go back altogether. */
export function Backups(props: {
  backups: readonly Backup[];
  onRefused: (error: CallError | null) => void;
  onChanged: () => void;
}) {
  const format = useFormat();
  const [busy, setBusy] = useState(false);
  const [asked, setAsked] = useState<Backup | null>(null);
  const [told, setTold] = useState('');

  async function take(): Promise<void> {
    setBusy(true);
    const result = await call('backups.take', {});
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    props.onChanged();
  }

  async function restore({ name }: Backup, how: 'replace' | 'bring-back'): Promise<void> {
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
        <button type="button" className="button" disabled={busy} onClick={take}>
          {say('archive.backups.take')}
        </button>
      </p>
      <WorkLine active={busy} />
      <p role="status">{told}</p>
      {props.backups.length === 0 ? (
        <p className="soft">{say('archive.backups.none')}</p>
      ) : (
        <table className="ruled">
          <thead>
            <tr>
              <th scope="col">{say('archive.backups.when')}</th>
              <th scope="col">{say('archive.backups.cause')}</th>
              <th scope="col" className="numeric">
                {say('archive.backups.size')}
              </th>
              <td />
            </tr>
          </thead>
          <tbody>
            {props.backups.map((backup) => {
              const when = instantText(backup.takenAt);
              return (
                <tr key={backup.name}>
                  <th scope="row">{when}</th>
                  <td>{say(`archive.cause.${backup.cause}`)}</td>
                  <td className="numeric">
                    {say('archive.backups.mb', {
                      size: format.number(backup.bytes / MEGABYTE, { decimals: 1 }),
                    })}
                  </td>
                  <td className="row-tool">
                    <div className="row ends">
                      <button
                        type="button"
                        className="button words"
                        disabled={busy}
                        aria-label={say('archive.back.missing.of', { when })}
                        onClick={() => restore(backup, 'bring-back')}
                      >
                        {say('archive.back.missing')}
                      </button>
                      <button
                        type="button"
                        className="button words"
                        disabled={busy}
                        aria-label={say('archive.back.replace.of', { when })}
                        onClick={() => setAsked(backup)}
                      >
                        {say('archive.back.replace')}
                      </button>
                    </div>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
      <GoBack backup={asked} onYes={(backup) => restore(backup, 'replace')} onNo={() => setAsked(null)} />
    </section>
  );
}
