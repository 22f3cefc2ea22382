import wasmUrl from 'highs/runtime?url';
import { bestDrilling, type Solve } from '../../core/drilling/best-drilling.ts';
import { drillingModel } from '../../core/drilling/drilling-model.ts';
import { dualBound } from './dual-bound.ts';
import { type Highs, loadHighs } from './load-highs.ts';
import type { DrillingAnswer, DrillingQuestion } from './plan-drilling.ts';

/** The time limit of a large plan, seconds. It then returns the best plan so far and how much better another might be. */
const SECONDS = 30;
/** Time for the stand-in on a grid of 3 mm, seconds. */
const COARSE_SECONDS = 15;
const COARSE_M = 0.003;
/** Where there is no plan, so much more moving is tried, metres. */
const MORE_M = [0.001, 0.002, 0.003, 0.005, 0.008, 0.012] as const;

/** The plan of the fewest new holes, or why there is none. Throws where the solver itself fails. */
export async function solveDrilling({ wishes, rules }: DrillingQuestion): Promise<DrillingAnswer> {
  const log: string[] = [];
  const highs = await loadHighs({ locateFile: () => wasmUrl, print: (line) => void log.push(line) });
  const within = (seconds: number) => solver(highs, { seconds, log });
  const coarse = drillingModel(wishes, { ...rules, stepM: COARSE_M });
  const found = bestDrilling(drillingModel(wishes, rules), within(SECONDS), {
    model: coarse,
    solve: within(COARSE_SECONDS),
  });
  if (found === 'late') return { kind: 'late' };
  if (found !== 'none') return { kind: 'plan', proven: found };
  const serves = (moreM: number) => {
    const wider = wishes.map((wish) => ({ ...wish, toleranceM: wish.toleranceM + moreM }));
    const plan = bestDrilling(drillingModel(wider, { ...rules, stepM: 0.002 }), within(COARSE_SECONDS / 3));
    return plan !== 'none' && plan !== 'late';
  };
  return { kind: 'none', moreM: MORE_M.find(serves) ?? null };
}

/** A solver with one time limit, seconds, for all its programmes together. */
function solver(highs: Highs, { seconds, log }: { seconds: number; log: string[] }): Solve {
  const until = performance.now() + 1000 * seconds;
  return (programme) => {
    const left = (until - performance.now()) / 1000;
    if (left <= 0) return 'late';
    log.length = 0;
    const { Status, Columns, ObjectiveValue } = highs.solve(programme, { mip_rel_gap: 0, time_limit: left });
    if (Status === 'Infeasible') return 'none';
    const optimal = Status === 'Optimal';
    const columns = Object.values(Columns);
    if (!optimal && !columns.some(({ Primal = 0 }) => Primal > 0.5)) return 'late';
    const bound = optimal ? ObjectiveValue : (dualBound(log) ?? 0);
    return { value: (name) => Columns[name]?.Primal ?? 0, optimal, bound };
  };
}
