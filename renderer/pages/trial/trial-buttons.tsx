import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';

/** Buttons that save a trial, and archive or restore a saved one. */
export function TrialButtons({ fitId, record }: { fitId: string; record: TrialRecord | null }) {
  const [refusal, setRefusal] = useState<CallError | null>(null);

  async function move(id: string, archived: boolean): Promise<void> {
    const result = await call(archived ? 'trials.restore' : 'trials.archive', { id });
    if (!result.ok) return setRefusal(result.error);
    go({ page: 'fit', id: fitId, tab: 'trials' });
  }

  return (
    <>
      <Button look="chief" type="submit">
        {say('trial.keep')}
      </Button>
      {record && (
        <Button onClick={() => void move(record.id, record.archived)}>
          {say(record.archived ? 'trial.bring-back' : 'trial.aside')}
        </Button>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </>
  );
}
