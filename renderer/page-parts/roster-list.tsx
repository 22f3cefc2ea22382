import { useState } from 'react';
import type { CallName } from '../../app/contract/contract.ts';
import type { CallError } from '../../app/contract/result.ts';
import { call } from '../client/client.ts';
import { useCall } from '../client/use-call.ts';
import { TextField } from '../fields/text-field.tsx';
import { say } from '../language/messages.ts';
import { Trouble } from './trouble.tsx';

type Listed = 'fits' | 'athletes' | 'boats' | 'paddles';

/** One column after the name: its heading, and what stands in a row. */
export interface Column<T> {
  readonly title: string;
  readonly cell: (record: T) => React.ReactNode;
  readonly numeric?: boolean;
}

/** Lists shorter than this need no search. */
const SEARCH_FROM = 8;

/** A ruled list of stored things: found by name, opened by a click, set aside and brought back. Nothing is deleted. */
export function RosterList<T extends { readonly id: string; readonly archived: boolean }>(props: {
  of: Listed;
  nameTitle: string;
  nameOf: (record: T) => string;
  hrefOf: (record: T) => string;
  columns: readonly Column<T>[];
  empty: React.ReactNode;
}) {
  const [search, setSearch] = useState('');
  const [aside, setAside] = useState(false);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const listed = useCall(`${props.of}.list` as 'fits.list', { archived: aside, search, limit: 1000 });
  const records = listed.value as unknown as readonly T[] | null;

  async function move(record: T): Promise<void> {
    const name = `${props.of}.${record.archived ? 'restore' : 'archive'}` as CallName & `${Listed}.archive`;
    const result = await call(name, { id: record.id });
    setRefusal(result.ok ? null : result.error);
    listed.reload();
  }

  if (listed.error) return <Trouble error={listed.error} onRetry={listed.reload} />;
  if (!records) return <p className="soft">{say('sheet.loading')}</p>;
  const switchAside = (
    <button type="button" className="button words" onClick={() => setAside(!aside)}>
      {say(aside ? 'list.hide-aside' : 'list.show-aside')}
    </button>
  );
  if (records.length === 0 && search === '') {
    return (
      <div className="stack">
        {aside ? <p className="soft">{say('list.nothing-aside')}</p> : props.empty}
        <p>{switchAside}</p>
      </div>
    );
  }
  return (
    <div className="stack">
      {refusal && <Trouble error={refusal} />}
      {(records.length >= SEARCH_FROM || search !== '') && (
        <div className="roster-search">
          <TextField label={say('list.search')} type="search" value={search} onChange={setSearch} />
        </div>
      )}
      {records.length === 0 ? (
        <p className="soft">{say('list.nothing-found', { text: search })}</p>
      ) : (
        <RosterTable {...props} records={records} onMove={move} />
      )}
      <p>{switchAside}</p>
    </div>
  );
}

function RosterTable<T extends { readonly id: string; readonly archived: boolean }>(props: {
  nameTitle: string;
  nameOf: (record: T) => string;
  hrefOf: (record: T) => string;
  columns: readonly Column<T>[];
  records: readonly T[];
  onMove: (record: T) => void;
}) {
  return (
    <table className="ruled roster">
      <thead>
        <tr>
          <th scope="col">{props.nameTitle}</th>
          {props.columns.map(({ title, numeric }) => (
            <th key={title} scope="col" className={numeric ? 'numeric' : undefined}>
              {title}
            </th>
          ))}
          <td />
        </tr>
      </thead>
      <tbody>
        {props.records.map((record) => {
          const name = props.nameOf(record);
          const action = say(record.archived ? 'list.bring-back' : 'list.set-aside');
          return (
            <tr key={record.id}>
              <th scope="row">
                <a className="row-link" href={props.hrefOf(record)}>
                  {name}
                </a>
              </th>
              {props.columns.map(({ title, cell, numeric }) => (
                <td key={title} className={numeric ? 'numeric' : undefined}>
                  {cell(record)}
                </td>
              ))}
              <td className="row-tool">
                <button
                  type="button"
                  className="button words"
                  aria-label={say('list.for', { action, name })}
                  onClick={() => props.onMove(record)}
                >
                  {action}
                </button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
