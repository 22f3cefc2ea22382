import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { upload } from '../../client/upload.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { WorkLine } from '../../ui/work-line.tsx';
import { bringsNothing, MergeCounts } from './merge-counts.tsx';
import { AskPassphrase } from './passphrase-fields.tsx';

type Preview = CallOutput<'bundle.preview'>;
type Ready = Extract<Preview, { kind: 'ready' }>;

/** Imports a file of another store: first what would change, then, if wanted, the change. */
export function ImportFile(props: {
  asksWithDialog: boolean;
  onRefused: (error: CallError | null) => void;
  onImported: () => void;
}) {
  const [busy, setBusy] = useState(false);
  const [preview, setPreview] = useState<Preview | null>(null);
  const [told, setTold] = useState('');

  function show(result: CallResult<Preview>): void {
    props.onRefused(result.ok ? null : result.error);
    setPreview(result.ok ? result.value : null);
  }

  async function unlock(handle: string, passphrase: string): Promise<void> {
    setBusy(true);
    show(await call('bundle.unlock', { handle, passphrase }));
    setBusy(false);
  }

  async function choose(files: FileList | null): Promise<void> {
    setTold('');
    setBusy(true);
    const file = files?.[0];
    if (props.asksWithDialog) show(await call('bundle.preview', { upload: null }));
    else if (file) {
      const sent = await upload(file);
      if (sent.ok) show(await call('bundle.preview', { upload: sent.value.upload }));
      else props.onRefused(sent.error);
    }
    setBusy(false);
  }

  async function importBundle({ handle }: Ready): Promise<void> {
    setBusy(true);
    const result = await call('bundle.import', { handle });
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    if (!result.ok) return;
    setPreview(null);
    setTold(say('archive.in.done'));
    props.onImported();
  }

  return (
    <section>
      <h2>{say('archive.in')}</h2>
      <p className="soft">{say('archive.in.about')}</p>
      <p>
        {props.asksWithDialog ? (
          <button type="button" className="button" disabled={busy} onClick={() => choose(null)}>
            {say('archive.in.do')}
          </button>
        ) : (
          <FileTrigger onSelect={choose}>
            <Button className="button" isDisabled={busy}>
              {say('archive.in.do')}
            </Button>
          </FileTrigger>
        )}
      </p>
      <WorkLine active={busy} />
      {preview?.kind === 'locked' && (
        <AskPassphrase
          key={preview.handle}
          wrong={preview.wrong}
          busy={busy}
          onGiven={(passphrase) => unlock(preview.handle, passphrase)}
          onLeave={() => setPreview(null)}
        />
      )}
      {preview?.kind === 'ready' && (
        <div className="stack">
          <p>{say('archive.in.made', { when: instantText(preview.madeAt) })}</p>
          <MergeCounts counts={preview.changes} />
          <p className="row">
            {!bringsNothing(preview.changes) && (
              <button
                type="button"
                className="button chief"
                disabled={busy}
                onClick={() => importBundle(preview)}
              >
                {say('archive.in')}
              </button>
            )}
            <button type="button" className="button" onClick={() => setPreview(null)}>
              {say(bringsNothing(preview.changes) ? 'archive.in.close' : 'revisions.cancel')}
            </button>
          </p>
        </div>
      )}
      <p role="status">{told}</p>
    </section>
  );
}
