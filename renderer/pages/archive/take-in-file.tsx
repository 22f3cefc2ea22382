import { useState } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { upload } from '../../client/upload.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { WorkLine } from '../../ui/work-line.tsx';
import { MergeCounts } from './merge-counts.tsx';

type Ready = Extract<CallOutput<'bundle.preview'>, { kind: 'ready' }>;

/** Takes in a file of another store: first what would change, then, if wanted, the change. */
export function TakeInFile(props: {
  asksWithDialog: boolean;
  onRefused: (error: CallError | null) => void;
  onTakenIn: () => void;
}) {
  const [busy, setBusy] = useState(false);
  const [ready, setReady] = useState<Ready | null>(null);
  const [told, setTold] = useState('');

  async function preview(handle: string | null): Promise<void> {
    const result = await call('bundle.preview', { upload: handle });
    props.onRefused(result.ok ? null : result.error);
    setReady(result.ok && result.value.kind === 'ready' ? result.value : null);
  }

  async function choose(files: FileList | null): Promise<void> {
    setTold('');
    setBusy(true);
    const file = files?.[0];
    if (props.asksWithDialog) await preview(null);
    else if (file) {
      const sent = await upload(file);
      if (sent.ok) await preview(sent.value.upload);
      else props.onRefused(sent.error);
    }
    setBusy(false);
  }

  async function takeIn({ handle }: Ready): Promise<void> {
    setBusy(true);
    const result = await call('bundle.import', { handle });
    setBusy(false);
    props.onRefused(result.ok ? null : result.error);
    if (!result.ok) return;
    setReady(null);
    setTold(say('archive.in.done'));
    props.onTakenIn();
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
      {ready && (
        <div className="stack">
          <p>{say('archive.in.made', { when: instantText(ready.madeAt) })}</p>
          <MergeCounts counts={ready.changes} />
          <p className="row">
            <button type="button" className="button chief" disabled={busy} onClick={() => takeIn(ready)}>
              {say('archive.in.take')}
            </button>
            <button type="button" className="button" onClick={() => setReady(null)}>
              {say('archive.in.not')}
            </button>
          </p>
        </div>
      )}
      <p role="status">{told}</p>
    </section>
  );
}
