import { say, sayCount } from '../language/messages.ts';
import { Button } from './button.tsx';
import type { Column } from './table/data-table.tsx';

interface Selectable {
  readonly id: string;
}

/** Which rows of a list are ticked, by their ids. */
export interface Selection {
  readonly ids: readonly string[];
  readonly choose: (ids: readonly string[]) => void;
}

/** A column of boxes to tick; the heading's box ticks all rows or none. */
export function selectionColumn<T extends Selectable>(
  { ids, choose }: Selection,
  { rows, nameOf }: { rows: readonly T[]; nameOf: (row: T) => string },
): Column<T> {
  const all = ids.length === rows.length;
  return {
    id: 'selection',
    title: say('list.select'),
    head: (
      <label className="tick-box">
        <input
          type="checkbox"
          aria-label={say('list.select.all')}
          checked={all}
          onChange={() => choose(all ? [] : rows.map(({ id }) => id))}
        />
      </label>
    ),
    className: 'row-tick',
    cell: (row) => (
      <label className="tick-box">
        <input
          type="checkbox"
          aria-label={say('list.select.of', { name: nameOf(row) })}
          checked={ids.includes(row.id)}
          onChange={() => choose(ids.includes(row.id) ? ids.filter((id) => id !== row.id) : [...ids, row.id])}
        />
      </label>
    ),
  };
}

/** What can be done with all ticked rows at once; nothing while none is ticked. */
export function SelectionBar(props: {
  selection: Selection;
  actions: readonly { readonly name: string; readonly run: (ids: readonly string[]) => Promise<void> }[];
}) {
  const { ids, choose } = props.selection;
  if (ids.length === 0) return null;
  return (
    <div className="row selection-bar" role="toolbar" aria-label={say('list.selected.do')}>
      <span role="status">{sayCount('list.selected', ids.length)}</span>
      {props.actions.map(({ name, run }) => (
        <Button key={name} onClick={() => void run(ids).then(() => choose([]))}>
          {name}
        </Button>
      ))}
      <Button look="words" onClick={() => choose([])}>
        {say('list.select.none')}
      </Button>
    </div>
  );
}
