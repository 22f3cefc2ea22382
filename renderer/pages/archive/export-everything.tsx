import { useCallback, useEffect, useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { fetchDelivery } from '../../client/upload.ts';
import { say } from '../../language/messages.ts';
import { onCommand } from '../../ui/menu-commands.tsx';
import { WorkLine } from '../../ui/work-line.tsx';

/** Everything as one file. */
export function ExportEverything({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState('');

  const start = useCallback(async () => {
    setBusy(true);
    setTold('');
    const result = await call('bundle.export', {});
    setBusy(false);
    onRefused(result.ok ? null : result.error);
    if (!result.ok || result.value.kind === 'cancelled') return;
    if (result.value.kind === 'saved') return setTold(say('archive.out.saved', { path: result.value.path }));
    fetchDelivery(result.value.href);
    setTold(say('archive.out.fetched'));
  }, [onRefused]);

  useEffect(
    () =>
      onCommand((command) => {
        if (command === 'export-everything') void start();
      }),
    [start],
  );

  return (
    <section>
      <h2>{say('archive.out')}</h2>
      <p className="soft">{say('archive.out.about')}</p>
      <p>
        <button type="button" className="button" disabled={busy} onClick={start}>
          {say('archive.out.do')}
        </button>
      </p>
      <WorkLine active={busy} />
      <p role="status">{told}</p>
    </section>
  );
}
