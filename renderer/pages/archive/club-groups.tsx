import { useEffect, useRef, useState } from 'react';
import type { CallInput, CallOutput } from '../../../app/contract/contract.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { libraryStore } from '../../library/library-store.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';
import { athleteChoices } from '../../ui/told-apart.ts';

type Group = CallOutput<'library.groups'>['groups'][number];
type Listed = CallOutput<'athletes.list'>[number];
type Refused = (error: CallError | null) => void;

/**
 * Who is in which group: a coach of a group sees its athletes. It shows nothing to anybody but the head coach, whom it tells why
 * where the library does not answer.
 */
export function ClubGroups({ onRefused }: { onRefused: Refused }) {
  const asked = useCall('library.groups', {});
  useReachedAgain(asked.reload);
  const athletes = useCall('athletes.list', {});
  const [changed, setChanged] = useState<readonly Group[] | null>(null);
  const groups = changed ?? asked.value?.groups ?? [];
  if (groups.length === 0 && !asked.error) return null;

  async function change<N extends 'library.makeGroup' | 'library.setInGroup'>(
    name: N,
    input: CallInput<N>,
  ): Promise<void> {
    const answer = await call(name, input);
    onRefused(answer.ok ? null : answer.error);
    if (answer.ok) setChanged(answer.value.groups);
  }
  return (
    <section className="stack" aria-label={say('library.groups')}>
      <h3>{say('library.groups')}</h3>
      {asked.error && (
        <p className="row">
          <span className="soft">{asked.error.message}</span>
          <Button onClick={asked.reload}>{say('error.retry')}</Button>
        </p>
      )}
      {groups.map((group) => (
        <OneGroup
          key={group.id}
          group={group}
          athletes={athletes.value ?? []}
          onChange={(athleteId, isIn) =>
            void change('library.setInGroup', { groupId: group.id, athleteId, isIn })
          }
        />
      ))}
      {groups.length > 0 && <NewGroup onMake={(name) => void change('library.makeGroup', { name })} />}
    </section>
  );
}

/** Calls `ask` each time that the library answers again after it did not. */
function useReachedAgain(ask: () => void): void {
  const problem = libraryStore(({ state }) => state?.problem ?? null);
  const before = useRef(problem);
  useEffect(() => {
    if (before.current !== null && problem === null) ask();
    before.current = problem;
  }, [problem, ask]);
}

function OneGroup(props: {
  group: Group;
  athletes: readonly Listed[];
  onChange: (athleteId: string, isIn: boolean) => void;
}) {
  const { group, athletes, onChange } = props;
  const format = useFormat();
  const coaches = group.people.map(({ name }) => name);
  const people = (
    <p className="soft">
      {say('library.group.people', { count: coaches.length, people: words().row(coaches) })}
    </p>
  );
  if (group.everyone)
    return (
      <div>
        <p>{say('library.group.everyone')}</p>
        {people}
      </div>
    );
  return (
    <details>
      <summary>{say('library.group', { name: group.name, count: group.athletes.length })}</summary>
      {people}
      <div className="row">
        {athleteChoices(athletes, format).map(({ value: id, name }) => (
          <Tick
            key={id}
            name={name}
            isOn={group.athletes.includes(id)}
            onChange={(isIn) => onChange(id, isIn)}
          />
        ))}
      </div>
    </details>
  );
}

function NewGroup({ onMake }: { onMake: (name: string) => void }) {
  const [name, setName] = useState('');
  const given = name.trim();
  return (
    <div className="row">
      <TextField label={say('library.group.new')} value={name} maxLength={60} onChange={setName} />
      <Button
        disabled={given === ''}
        onClick={() => {
          onMake(given);
          setName('');
        }}
      >
        {say('library.group.make')}
      </Button>
    </div>
  );
}
