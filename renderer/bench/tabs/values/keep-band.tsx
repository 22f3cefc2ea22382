import { useState } from 'react';
import type { CallError } from '../../../../app/contract/result.ts';
import type { Athlete } from '../../../../core/document/athlete-schema.ts';
import type { BandOverride } from '../../../../core/document/band-override-schema.ts';
import { call } from '../../../client/client.ts';
import { say } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { ErrorMessage } from '../../../ui/error-message.tsx';

/** Keeps a band that was set in this fit with the athlete too, for every new fit. */
export function KeepBand({ band, athlete }: { band: BandOverride; athlete: Athlete }) {
  const [kept, setKept] = useState<BandOverride | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const { id, name } = athlete;
  if (!id) return null;
  const byId = { id };

  async function keep(): Promise<void> {
    const opened = await call('athletes.open', byId);
    if (!opened.ok) return setRefusal(opened.error);
    const known = opened.value.athlete;
    const others = (known.bands ?? []).filter(({ quantity }) => quantity !== band.quantity);
    const result = await call('athletes.save', {
      athlete: { ...known, ...byId, bands: [...others, band] },
      opened: known,
    });
    setRefusal(result.ok ? null : result.error);
    if (result.ok) setKept(band);
  }

  return (
    <>
      {kept === band ? (
        <p role="status">{say('values.own-band.kept-with', { name })}</p>
      ) : (
        <p>
          <Button look="words" onClick={keep}>
            {say('values.own-band.keep-with', { name })}
          </Button>
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </>
  );
}
