import type { Solve } from '../../../core/drilling/best-drilling.ts';
import { loadHighs } from '../../../renderer/jobs/load-highs.ts';

/** A solver of integer programmes (HiGHS, WebAssembly) that goes on until its answer is proved the best. */
export async function exactSolver(): Promise<Solve> {
  const highs = await loadHighs({ print() {} });
  return (programme) => {
    const { Status, Columns, ObjectiveValue } = highs.solve(programme, { mip_rel_gap: 0 });
    if (Status !== 'Optimal') return 'none';
    return { value: (name) => Columns[name]?.Primal ?? 0, optimal: true, bound: ObjectiveValue };
  };
}
