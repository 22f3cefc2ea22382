import { useState } from 'react';
import type { FitSummary } from '../../../../app/contract/records.ts';
import type { CallError } from '../../../../app/contract/result.ts';
import type { Format } from '../../../../app/language/format.ts';
import { FITTING_COORDINATES } from '../../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../../core/document/fitting-coordinate.ts';
import type { Seat } from '../../../../core/document/seat-schema.ts';
import { seatFromSingle } from '../../../../core/transfer/transfer-fit.ts';
import { call } from '../../../client/client.ts';
import { useCall } from '../../../client/use-call.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { ErrorMessage } from '../../../ui/error-message.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { coordinateText } from '../../change-text.ts';
import { coordinateName } from '../../coordinate-name.ts';

/** The differences between two settings of a seat, in words, one line each. */
function differencesOf(before: Seat, after: Seat, format: Format): string[] {
  return FITTING_COORDINATES.flatMap((coordinate) => {
    const was = coordinateOf(before, coordinate);
    const is = coordinateOf(after, coordinate);
    if (was === is) return [];
    return say('crew.single.difference', {
      what: coordinateName(coordinate),
      from: coordinateText(coordinate, was, format),
      to: coordinateText(coordinate, is, format),
    });
  });
}

/** Starts the seat being worked on from its paddler's own single-boat fit: the stance comes along. */
export function CrewFromSingle() {
  const seat = useFit((state) => state.seat);
  const name = useFit(({ fit }) => fit.seats[seat]?.athlete?.name ?? null);
  if (name === null) return null;
  return <Singles key={name} name={name} seat={seat} />;
}

function Singles({ name, seat }: { name: string; seat: number }) {
  const document = useDocument();
  const format = useFormat();
  const listed = useCall('fits.list', { search: name });
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [changed, setChanged] = useState<readonly string[] | null>(null);
  const singles = (listed.value ?? []).filter(
    (fit) => fit.athleteNames.length === 1 && fit.athleteNames[0] === name,
  );

  async function take({ id, name: from }: FitSummary): Promise<void> {
    const opened = await call('fits.open', { id });
    setRefusal(opened.ok ? null : opened.error);
    if (!opened.ok) return;
    const before = document.getState().fit.seats[seat]!;
    document.apply(say('crew.single.step', { name, fit: from }), (now) =>
      seatFromSingle(now, seat, opened.value.fit),
    );
    setChanged(differencesOf(before, document.getState().fit.seats[seat]!, format));
  }

  const error = refusal ?? listed.error;
  if (listed.value && singles.length === 0)
    return <p className="soft">{say('crew.single.none', { name })}</p>;
  return (
    <>
      {error && <ErrorMessage error={error} />}
      <ul className="crew-places">
        {singles.map((single) => (
          <li key={single.id}>
            <Button look="words" onClick={() => void take(single)}>
              {say('crew.single.take', { name, fit: single.name })}
            </Button>
          </li>
        ))}
      </ul>
      {changed && (
        <ul className="crew-shifts soft" role="status">
          {changed.length === 0 ? (
            <li>{say('crew.single.same')}</li>
          ) : (
            changed.map((line) => <li key={line}>{line}</li>)
          )}
        </ul>
      )}
    </>
  );
}
