import { useEffect, useRef, useState } from 'react';
import type { CallName } from '../../app/contract/contract.ts';
import type { CallError, CallResult } from '../../app/contract/result.ts';
import { call } from '../client/client.ts';
import { useCall } from '../client/use-call.ts';
import { say } from '../language/messages.ts';
import { Name } from '../language/name.tsx';
import { Button } from './button.tsx';
import { ErrorMessage } from './error-message.tsx';
import { TextField } from './fields/text-field.tsx';
import { type Selection, SelectionBar, selectionColumn } from './list-selection.tsx';
import { type Column, DataTable } from './table/data-table.tsx';
import { ToDecide } from './to-decide.tsx';

type Listed = 'fits' | 'athletes' | 'boats' | 'paddles';

/** Lists shorter than this need no search. */
const SEARCH_FROM = 4;

interface Listable {
  readonly id: string;
  readonly archived: boolean;
}

interface RosterProps<T> {
  readonly of: Listed;
  readonly nameTitle: string;
  readonly nameOf: (record: T) => string;
  readonly hrefOf: (record: T) => string;
  readonly columns: readonly Column<T>[];
  /** Makes a second record like the one with this id; left out, records are not duplicated here. */
  readonly duplicate?: (id: string) => Promise<CallResult<unknown>>;
  readonly empty: React.ReactNode;
}

/** The records of a list, and what is done with them. */
function useRoster<T extends Listable>(
  of: Listed,
  { archived, search }: { archived: boolean; search: string },
) {
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const listed = useCall(`${of}.list` as 'fits.list', { archived, search });

  /** Makes one call for each of them in turn; reports the first refusal and fetches the list again. */
  async function each(
    ids: readonly string[],
    act: (id: string) => Promise<CallResult<unknown>>,
  ): Promise<void> {
    const results: CallResult<unknown>[] = [];
    for (const id of ids) results.push(await act(id));
    const refused = results.find((result) => !result.ok);
    setRefusal(refused && !refused.ok ? refused.error : null);
    listed.reload();
  }
  const moveName = `${of}.${archived ? 'restore' : 'archive'}` as CallName & `${Listed}.archive`;
  const move = (ids: readonly string[]) => each(ids, (id) => call(moveName, { id }));
  return {
    listed,
    records: listed.value as readonly Listable[] | null as readonly T[] | null,
    refusal,
    each,
    move,
  };
}

/** A table of stored records: find one by name, open it by a click, archive and restore it. Nothing is deleted. */
export function RosterList<T extends Listable>(props: RosterProps<T>) {
  const [search, setSearch] = useState('');
  const [archived, showArchived] = useState(false);
  const [ids, choose] = useState<readonly string[]>([]);
  const roster = useRoster<T>(props.of, { archived, search });
  const { listed, records, refusal } = roster;

  if (listed.error) return <ErrorMessage error={listed.error} onRetry={listed.reload} />;
  if (!records) return <p className="soft">{say('sheet.loading')}</p>;
  const isEmpty = records.length === 0 && search === '';
  return (
    <div className="stack">
      <ToDecide />
      {archived && <h2 className="lettering">{say('trials.aside')}</h2>}
      {!isEmpty && refusal && <ErrorMessage error={refusal} />}
      {(records.length >= SEARCH_FROM || search !== '') && (
        <SearchEntry value={search} onChange={setSearch} />
      )}
      {isEmpty && (archived ? <p className="soft">{say('list.archived.none')}</p> : props.empty)}
      {records.length === 0 && !isEmpty && <p className="soft">{say('find.nothing', { text: search })}</p>}
      {records.length > 0 && (
        <RosterTable
          {...props}
          {...roster}
          records={records}
          archived={archived}
          selection={{ ids, choose }}
        />
      )}
      <p>
        <Button
          look="words"
          onClick={() => {
            showArchived(!archived);
            choose([]);
          }}
        >
          {say(archived ? 'list.hide-archived' : 'list.show-archived')}
        </Button>
      </p>
    </div>
  );
}

/** The table of a roster with a box to tick in each row, and what can be done with the ticked ones above it. */
function RosterTable<T extends Listable>(
  props: RosterProps<T> &
    Pick<ReturnType<typeof useRoster>, 'each' | 'move'> & {
      records: readonly T[];
      archived: boolean;
      selection: Selection;
    },
) {
  const { records, archived, selection, nameOf, duplicate, each, move } = props;
  const { ids, choose } = selection;
  const actions = [{ name: say(archived ? 'archive.back.replace' : 'list.archive'), run: move }];
  if (duplicate && !archived)
    actions.push({ name: say('boat.duplicate'), run: (some) => each(some, duplicate) });
  return (
    <>
      <SelectionBar
        selection={{ ids: ids.filter((id) => records.some((record) => record.id === id)), choose }}
        actions={actions}
      />
      <DataTable
        className="ruled roster"
        columns={[
          selectionColumn(selection, { rows: records, nameOf }),
          ...rosterColumns(props, ({ id }: T) => void move([id])),
        ]}
        rows={records}
        rowKey={({ id }) => id}
      />
    </>
  );
}

/** The search entry of a list. Letters typed anywhere else on the page go to it. */
function SearchEntry({ value, onChange }: { value: string; onChange: (text: string) => void }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const plain = !event.ctrlKey && !event.metaKey && !event.altKey && /^[\p{L}\p{N}]$/u.test(event.key);
      const idle = event.target === document.body || (event.target as HTMLElement).id === 'content';
      if (plain && idle && !event.defaultPrevented) place.current?.querySelector('input')?.focus();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
  return (
    <div className="roster-search" ref={place}>
      <TextField label={say('list.search')} type="search" value={value} onChange={onChange} />
    </div>
  );
}

/** The columns of a roster: the name that opens, the list's own columns, and the button that archives a record. */
function rosterColumns<T extends Listable>(
  { nameTitle, nameOf, hrefOf, columns }: RosterProps<T>,
  onMove: (record: T) => void,
): readonly Column<T>[] {
  const opening: Column<T> = {
    title: nameTitle,
    isName: true,
    sortBy: nameOf,
    cell: (record) => (
      <a className="row-link" href={hrefOf(record)}>
        <Name text={nameOf(record)} />
      </a>
    ),
  };
  const moving: Column<T> = {
    title: '',
    className: 'row-tool',
    cell: (record) => {
      const action = say(record.archived ? 'archive.back.replace' : 'list.archive');
      return (
        <Button
          look="words"
          aria-label={say('list.for', { action, name: nameOf(record) })}
          onClick={() => onMove(record)}
        >
          {action}
        </Button>
      );
    },
  };
  return [opening, ...columns, moving];
}
