import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { copyName } from '../new-fit/fit-name.ts';

/** Makes a second boat like this one, under a name of its own, and goes there. */
export function DuplicateBoat({ boat }: { boat: Boat }) {
  const [refusal, setRefusal] = useState<CallError | null>(null);
  async function duplicate(): Promise<void> {
    const { id: _own, ...copy } = boat;
    const listed = await call('boats.list', {});
    const taken = listed.ok ? listed.value.map((record) => record.boat.name) : [];
    const name = copyName(boat.name, taken);
    const result = await call('boats.save', { boat: { ...copy, name } });
    setRefusal(result.ok ? null : result.error);
    if (!result.ok) return;
    announce(say('boat.duplicated'));
    go({ page: 'boat', id: result.value.id });
  }
  return (
    <>
      {refusal && <ErrorMessage error={refusal} />}
      <Button onClick={duplicate}>{say('boat.duplicate')}</Button>
    </>
  );
}
