import type { CallError } from '../../../app/contract/result.ts';
import { call } from '../../client/client.ts';
import { useCall } from '../../client/use-call.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';

const ALL = { archived: true } as const;

type Kind = 'fit' | 'athlete' | 'boat' | 'paddle';

interface Archived {
  readonly kind: Kind;
  readonly id: string;
  readonly name: string;
}

/** The four lists of what was archived, and their rows in one. */
function useArchived() {
  const fits = useCall('fits.list', ALL);
  const athletes = useCall('athletes.list', ALL);
  const boats = useCall('boats.list', ALL);
  const paddles = useCall('paddles.list', ALL);
  const rows: Archived[] = [
    ...(fits.value ?? []).map(({ id, name }) => ({ kind: 'fit' as const, id, name })),
    ...(athletes.value ?? []).map(({ id, athlete }) => ({
      kind: 'athlete' as const,
      id,
      name: athlete.name,
    })),
    ...(boats.value ?? []).map(({ id, boat }) => ({ kind: 'boat' as const, id, name: boat.name })),
    ...(paddles.value ?? []).map(({ id, paddle }) => ({ kind: 'paddle' as const, id, name: paddle.name })),
  ];
  return { lists: { fit: fits, athlete: athletes, boat: boats, paddle: paddles }, rows };
}

/** Everything that was archived, each with a button that restores it: fits, athletes, boats, paddles. */
export function ArchivedRecords({ onRefused }: { onRefused: (error: CallError | null) => void }) {
  const { lists, rows } = useArchived();
  const failed = Object.values(lists).find(({ error }) => error !== null);
  const known = Object.values(lists).every(({ value }) => value !== null);

  async function restore({ kind, id }: Archived): Promise<void> {
    const result = await call(`${kind}s.restore` as 'fits.restore', { id });
    onRefused(result.ok ? null : result.error);
    lists[kind].reload();
  }

  return (
    <section className="archived">
      <h2>{say('trials.aside')}</h2>
      <p className="soft">{say('list.archived.about')}</p>
      {failed?.error && <ErrorMessage error={failed.error} onRetry={failed.reload} />}
      <DataTable
        rows={rows}
        rowKey={({ id }) => id}
        empty={!failed && <p>{say(known ? 'list.archived.none' : 'sheet.loading')}</p>}
        columns={[
          {
            title: say('athletes.name'),
            id: 'name',
            isName: true,
            cell: ({ name }) => name,
            sortBy: ({ name }) => name,
          },
          { title: say('list.kind'), cell: ({ kind }) => say(`kind.${kind}`), sortBy: ({ kind }) => kind },
          {
            title: '',
            id: 'restore',
            className: 'row-tool',
            cell: (row) => (
              <Button
                look="words"
                aria-label={say('list.for', { action: say('archive.back.replace'), name: row.name })}
                onClick={() => void restore(row)}
              >
                {say('archive.back.replace')}
              </Button>
            ),
          },
        ]}
      />
    </section>
  );
}
