import type { MergeCountsRecord } from '../../../app/contract/safekeeping.ts';
import { say, sayCount } from '../../language/messages.ts';
import { DataTable } from '../../ui/table/data-table.tsx';

const KINDS = ['athletes', 'boats', 'paddles', 'fits', 'revisions', 'trials', 'photos'] as const;

/** What is counted of each kind: its text, and the count's name. */
const COUNTED = [
  ['added', 'added'],
  ['updated', 'updated'],
  ['same', 'same'],
  ['newer', 'keptNewer'],
  ['conflicts', 'conflicts'],
] as const;

/** True if the file holds nothing new, such as the store's own export. */
export function bringsNothing(counts: MergeCountsRecord): boolean {
  const { refusedErased, erasedHere } = counts;
  const news = KINDS.map((kind) => counts[kind].added + counts[kind].updated + counts[kind].conflicts);
  return refusedErased + erasedHere === 0 && news.every((count) => count === 0);
}

/** The result of an import, by kind of record. */
export function MergeCountsList({ counts }: { counts: MergeCountsRecord }) {
  const conflicts = KINDS.reduce((sum, kind) => sum + counts[kind].conflicts, 0);
  return (
    <div className="stack">
      {bringsNothing(counts) && <p>{say('archive.counts.nothing')}</p>}
      <DataTable
        rows={KINDS}
        rowKey={(kind) => kind}
        columns={[
          {
            title: say('transfer.what'),
            isName: true,
            cell: (kind) => say(`archive.counts.${kind}`),
          },
          ...COUNTED.map(([text, count]) => ({
            title: say(`archive.counts.${text}`),
            numeric: true,
            cell: (kind: (typeof KINDS)[number]) => counts[kind][count],
          })),
        ]}
      />
      {conflicts > 0 && <p>{sayCount('archive.counts.to-decide', conflicts)}</p>}
      {counts.refusedErased > 0 && <p>{sayCount('archive.counts.refused', counts.refusedErased)}</p>}
      {counts.erasedHere > 0 && <p>{sayCount('archive.counts.erased', counts.erasedHere)}</p>}
    </div>
  );
}
