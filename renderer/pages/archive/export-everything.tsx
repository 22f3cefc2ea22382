import { useCallback, useEffect, useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { fetchDelivery } from '../../client/upload.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { onCommand } from '../../ui/menu-commands.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import { isPassphrase, NewPassphrase, type TypedPassphrase } from './passphrase-fields.tsx';

const NOTHING_TYPED: TypedPassphrase = { first: '', again: '' };

/** Everything as one file, encrypted if wanted. */
export function ExportEverything({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState('');
  const [encrypts, setEncrypts] = useState(false);
  const [typed, setTyped] = useState(NOTHING_TYPED);
  const passphrase = encrypts ? typed.first : null;
  const ready = !encrypts || isPassphrase(typed);

  const start = useCallback(async () => {
    if (!ready) return;
    setBusy(true);
    setTold('');
    const result = await call('bundle.export', { passphrase });
    setBusy(false);
    onRefused(result.ok ? null : result.error);
    if (!result.ok || result.value.kind === 'cancelled') return;
    setTyped(NOTHING_TYPED);
    if (result.value.kind === 'saved') return setTold(say('paper.saved', { path: result.value.path }));
    fetchDelivery(result.value.href);
    setTold(say('paper.fetched'));
  }, [onRefused, passphrase, ready]);

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
      <Tick name={say('archive.out.encrypt')} isOn={encrypts} onChange={setEncrypts} />
      {encrypts && <NewPassphrase typed={typed} onChange={setTyped} />}
      <p>
        <Button disabled={busy || !ready} onClick={start}>
          {say('menu.export')}
        </Button>
      </p>
      <WorkLine active={busy} />
      <p role="status">{told}</p>
    </section>
  );
}
