import { useState } from 'react';
import { Button as AriaButton, FileTrigger } from 'react-aria-components';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { upload } from '../../client/upload.ts';
import { instantText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { WorkLine } from '../../ui/work-line.tsx';
import { bringsNothing, MergeCountsList } from './merge-counts.tsx';
import { AskPassphrase } from './passphrase-fields.tsx';

type Preview = CallOutput<'bundle.preview'>;
type Ready = Extract<Preview, { kind: 'ready' }>;

interface ImportProps {
  readonly asksWithDialog: boolean;
  readonly onRefused: (error: CallError | null) => void;
  readonly onImported: () => void;
}

/** The steps of an import: the file is chosen, decrypted if necessary, previewed, imported. */
function useImport({ asksWithDialog, onRefused, onImported }: ImportProps) {
  const [busy, setBusy] = useState(false);
  const [preview, setPreview] = useState<Preview | null>(null);
  const [told, setTold] = useState('');

  /** Calls the program; reports a refusal and then returns null. */
  async function ask<T>(question: Promise<CallResult<T>>): Promise<T | null> {
    setBusy(true);
    const result = await question;
    setBusy(false);
    onRefused(result.ok ? null : result.error);
    return result.ok ? result.value : null;
  }

  const leave = () => setPreview(null);

  async function unlock(handle: string, passphrase: string): Promise<void> {
    setPreview(await ask(call('bundle.unlock', { handle, passphrase })));
  }

  async function choose(files: FileList | null): Promise<void> {
    setTold('');
    const file = files?.[0];
    if (asksWithDialog) setPreview(await ask(call('bundle.preview', { upload: null })));
    else if (file) {
      const sent = await ask(upload(file));
      if (sent) setPreview(await ask(call('bundle.preview', { upload: sent.upload })));
    }
  }

  async function importBundle({ handle }: Ready): Promise<void> {
    if (!(await ask(call('bundle.import', { handle })))) return;
    leave();
    setTold(say('archive.in.done'));
    onImported();
  }
  return { busy, preview, told, choose, unlock, importBundle, leave };
}

/** Imports a file of another store: first what would change, then, if wanted, the change. */
export function ImportFile(props: ImportProps) {
  const { busy, preview, told, choose, unlock, importBundle, leave } = useImport(props);
  return (
    <section>
      <h2>{say('archive.in')}</h2>
      <p className="soft">{say('archive.in.about')}</p>
      <ChooseFile asksWithDialog={props.asksWithDialog} busy={busy} onChosen={choose} />
      <WorkLine active={busy} />
      {preview?.kind === 'locked' && (
        <AskPassphrase
          key={preview.handle}
          wrong={preview.wrong}
          busy={busy}
          onGiven={(passphrase) => unlock(preview.handle, passphrase)}
          onLeave={leave}
        />
      )}
      {preview?.kind === 'ready' && (
        <ReadyToImport preview={preview} busy={busy} onImport={() => importBundle(preview)} onLeave={leave} />
      )}
      <p role="status">{told}</p>
    </section>
  );
}

/** Asks for the file: with the system's own dialog in the desktop program, with the browser's elsewhere. */
function ChooseFile(props: {
  asksWithDialog: boolean;
  busy: boolean;
  onChosen: (files: FileList | null) => void;
}) {
  const { busy, onChosen } = props;
  return (
    <p>
      {props.asksWithDialog ? (
        <Button disabled={busy} onClick={() => onChosen(null)}>
          {say('archive.in.do')}
        </Button>
      ) : (
        <FileTrigger onSelect={onChosen}>
          <AriaButton className="button" isDisabled={busy}>
            {say('archive.in.do')}
          </AriaButton>
        </FileTrigger>
      )}
    </p>
  );
}

/** What a file would bring, and the choice to import it. */
function ReadyToImport(props: { preview: Ready; busy: boolean; onImport: () => void; onLeave: () => void }) {
  const { madeAt, changes } = props.preview;
  const nothing = bringsNothing(changes);
  return (
    <div className="stack">
      <p>{say('archive.in.made', { when: instantText(madeAt) })}</p>
      <MergeCountsList counts={changes} />
      <p className="row">
        {!nothing && (
          <Button look="chief" disabled={props.busy} onClick={props.onImport}>
            {say('archive.in')}
          </Button>
        )}
        <Button onClick={props.onLeave}>{say(nothing ? 'menu.close' : 'revisions.cancel')}</Button>
      </p>
    </div>
  );
}
