import type { Found, Row } from './row.ts';
import { storeBench } from './store-bench.ts';

/** The store's figures as rows of the table: a full store beside an empty one. */
export async function storeRows(): Promise<Found> {
  const { figures, openStoreMs, athletes, revisions, fileMb } = await storeBench();
  const opened = { what: 'open the store', emptyMs: openStoreMs.empty, fullMs: openStoreMs.full };
  const fact = (name: string, value: number, unit: string) =>
    ({ group: 'store', name, value, unit }) as const;
  return {
    rows: [...figures, opened].map(
      ({ what, emptyMs, fullMs }): Row => ({
        group: 'store',
        name: `${what}, full store`,
        medianUs: 1000 * fullMs,
        p95Us: null,
        runs: what === opened.what ? 1 : figures.length,
        ratio: { to: 'an empty store', times: fullMs / emptyMs },
      }),
    ),
    facts: [
      fact('athletes in the full store', athletes, ''),
      fact('revisions in the full store', revisions, ''),
      fact('size of the full store', fileMb, 'MB'),
    ],
  };
}
