import { useEffect, useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { say, sayCount } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';

/** What of a boat a fit's figures depend on. */
const figuresOf = ({ hull, correction, centre, massKg, floorboard, hardware, skinM, seats }: Boat) =>
  JSON.stringify({ hull, correction, centre, massKg, floorboard, hardware, skinM, seats });

/** Fits of a boat that still hold it as it was before it was changed. */
async function olderFits(id: string, boat: Boat): Promise<OpenedFit[]> {
  const listed = await call('boats.fits', { id });
  if (!listed.ok) return [];
  const open = await Promise.all(
    listed.value.filter(({ archived }) => !archived).map((fit) => call('fits.open', { id: fit.id })),
  );
  return open
    .flatMap((result) => (result.ok ? [result.value] : []))
    .filter(
      ({ fit }) => fit.boat.seats.length === boat.seats.length && figuresOf(fit.boat) !== figuresOf(boat),
    );
}

/** Says how many fits still have the earlier boat, and updates all of them. */
export function OlderFits({ id, boat }: { id: string; boat: Boat }) {
  const [older, setOlder] = useState<readonly OpenedFit[]>([]);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  useEffect(() => {
    let wanted = true;
    void olderFits(id, boat).then((found) => wanted && setOlder(found));
    return () => {
      wanted = false;
    };
  }, [id, boat]);

  async function renew(): Promise<void> {
    for (const { fit, id: fitId, draftSavedAt } of older) {
      const basedOn = draftSavedAt;
      const result = await call('drafts.save', {
        id: fitId,
        fit: { ...fit, boat: { ...boat, id } },
        basedOn,
      });
      if (!result.ok) return setRefusal(result.error);
    }
    announce(say('boat.older.done'));
    setOlder([]);
  }

  if (older.length === 0) return null;
  return (
    <div className="older-fits stack" role="note">
      <p>{sayCount('boat.older', older.length)}</p>
      <ul>
        {older.map(({ id: fitId, fit }) => (
          <li key={fitId}>
            <Name text={fit.name} />
          </li>
        ))}
      </ul>
      <p>
        <Button onClick={() => void renew()}>{say('boat.older.take')}</Button>
      </p>
      {refusal && <ErrorMessage error={refusal} />}
    </div>
  );
}
