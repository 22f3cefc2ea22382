import { useState } from 'react';
import type { CallOutput } from '../../../app/contract/contract.ts';
import type { AthleteRecord } from '../../../app/contract/records.ts';
import type { CallError, CallResult } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { SelectField } from '../../ui/fields/select-field.tsx';
import { athleteChoices } from '../../ui/told-apart.ts';

type Entries = CallOutput<'athletes.entries'>;

/** Merges another record of the same person into this one, and separates merged records again. */
export function JoinedEntries({ id, name }: { id: string; name: string }) {
  const asked = useCall('athletes.entries', { id });
  const others = useCall('athletes.list', {});
  const [refusal, setRefusal] = useState<CallError | null>(null);

  function heard(result: CallResult<Entries>): void {
    setRefusal(result.ok ? null : result.error);
    if (!result.ok) return;
    asked.reload();
    others.reload();
  }

  const entries = asked.value;
  const error = asked.error ?? refusal;
  const free = (others.value ?? []).filter(
    (other) => other.id !== id && !entries?.joined.some((one) => one.id === other.id),
  );
  if (!entries) return error && <ErrorMessage error={error} />;
  // Where there is nobody else there is nothing to merge.
  if (!error && !entries.joinedInto && entries.joined.length === 0 && free.length === 0) return null;
  return (
    <section>
      <h2>{say('join.title')}</h2>
      <p className="soft">{say('join.about')}</p>
      {error && <ErrorMessage error={error} />}
      {entries.joinedInto && (
        <p className="row">
          <a href={hrefOf({ page: 'athlete', id: entries.joinedInto.id })}>
            {say('join.is-joined', { name: entries.joinedInto.name })}
          </a>
          <Apart id={id} name={name} onDone={heard} />
        </p>
      )}
      {entries.joined.map((entry) => (
        <p className="row" key={entry.id}>
          <span>{say('join.joined', { name: entry.name })}</span>
          <Apart {...entry} onDone={heard} />
        </p>
      ))}
      {!entries.joinedInto && (
        <JoinSecond
          key={entries.joined.length}
          free={free}
          name={name}
          onJoin={async (second) => heard(await call('athletes.join', { id: second, into: id }))}
        />
      )}
    </section>
  );
}

/** The entry that is joined to this one, chosen from all others. */
function JoinSecond(props: {
  free: readonly AthleteRecord[];
  name: string;
  onJoin: (id: string) => Promise<void>;
}) {
  const { free, name, onJoin } = props;
  const format = useFormat();
  const [chosen, setChosen] = useState('');
  if (free.length === 0) return null;
  return (
    <div className="row">
      <SelectField
        label={say('join.second')}
        value={chosen}
        onChange={setChosen}
        options={[{ value: '', name: say('join.choose') }, ...athleteChoices(free, format)]}
      />
      <Button disabled={chosen === ''} onClick={() => onJoin(chosen)}>
        {say('join.do', { name })}
      </Button>
    </div>
  );
}

function Apart(props: { id: string; name: string; onDone: (result: CallResult<Entries>) => void }) {
  return (
    <Button
      look="words"
      onClick={async () => props.onDone(await call('athletes.takeApart', { id: props.id }))}
    >
      {say('join.apart', { name: props.name })}
    </Button>
  );
}
