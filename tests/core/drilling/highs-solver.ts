import createHighs from 'highs';
import type { Solve } from '../../../core/drilling/best-drilling.ts';

interface Answer {
  readonly Status: string;
  readonly ObjectiveValue: number;
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>;
}

// The package's types are those of a script; what it exports as a module is the loader itself.
const load = createHighs as unknown as () => Promise<{ solve(text: string, options: object): Answer }>;

/** A solver of integer programmes (HiGHS, WebAssembly) that goes on until its answer is proved the best. */
export async function exactSolver(): Promise<Solve> {
  const highs = await load();
  return (programme) => {
    const { Status, Columns, ObjectiveValue } = highs.solve(programme, { mip_rel_gap: 0 });
    if (Status !== 'Optimal') return 'none';
    return { value: (name) => Columns[name]?.Primal ?? 0, optimal: true, bound: ObjectiveValue };
  };
}
