import { useState } from 'react';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { forgetEntriesOf } from '../../ui/form/erased-entries.ts';
import { clearingDepth, EraseWords, type NameClearing } from './erase-words.tsx';

/** Erases an athlete from the store and its backups: first it shows what would be erased, then the name is typed. */
export function EraseAthlete(props: {
  id: string;
  name: string;
  onErased: (report: CallOutput<'athletes.erase'>) => void;
}) {
  const { id, name, onErased } = props;
  const [preview, setPreview] = useState<CallOutput<'athletes.previewErase'> | null>(null);
  const [typed, setTyped] = useState('');
  const [clearing, setClearing] = useState<NameClearing>({ full: true, parts: false });
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function begin(): Promise<void> {
    const result = await call('athletes.previewErase', { id });
    setRefusal(result.ok ? null : result.error);
    if (result.ok) setPreview(result.value);
  }

  async function erase(): Promise<void> {
    const result = await call('athletes.erase', { id, name: typed, clear: clearingDepth(clearing) });
    setRefusal(result.ok ? null : result.error);
    if (!result.ok) return;
    forgetEntriesOf({ id, name });
    onErased(result.value);
  }

  return (
    <section>
      <h2>{say('erase.title')}</h2>
      <p className="soft">{say('erase.about')}</p>
      {refusal && <ErrorMessage error={refusal} />}
      {!preview ? (
        <p>
          <Button onClick={begin}>{say('erase.begin')}</Button>
        </p>
      ) : (
        <div className="stack">
          <WhatGoes {...preview} />
          <EraseWords words={preview.words} clearing={clearing} onChange={setClearing} />
          <TextField label={say('erase.type-name', { name })} value={typed} onChange={setTyped} />
          <p className="row">
            <Button disabled={typed.trim() !== name.trim()} onClick={erase}>
              {say('erase.do')}
            </Button>
            <Button onClick={() => setPreview(null)}>{say('revisions.cancel')}</Button>
          </p>
        </div>
      )}
    </section>
  );
}

/** What was erased, and where copies are left that the program cannot reach. */
export function Erased({ message, copiesLeft }: CallOutput<'athletes.erase'>) {
  return (
    <section role="status">
      <p>{message}</p>
      {copiesLeft.length > 0 && <p>{say('erase.left', { files: words().row(copiesLeft) })}</p>}
      <p>
        <a className="button" href={hrefOf({ page: 'athletes' })}>
          {say('erase.back')}
        </a>
      </p>
    </section>
  );
}

/** Everything of the athlete that an erasure takes away. */
function WhatGoes({
  fits,
  crewFits,
  revisions,
  measurings,
  photos,
  trials,
}: CallOutput<'athletes.previewErase'>) {
  return (
    <>
      {fits.length > 0 && <p>{say('erase.fits', { fits: words().row(fits) })}</p>}
      {crewFits.length > 0 && <p>{say('erase.crew-fits', { fits: words().row(crewFits) })}</p>}
      {revisions > 0 && <p>{sayCount('erase.revisions', revisions)}</p>}
      {measurings > 0 && <p>{sayCount('erase.measurings', measurings)}</p>}
      {photos > 0 && <p>{sayCount('erase.photos', photos)}</p>}
      {trials > 0 && <p>{sayCount('erase.trials', trials)}</p>}
    </>
  );
}
