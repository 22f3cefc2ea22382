import loadHighs from 'highs';
import wasmUrl from 'highs/runtime?url';
import { bestDrilling, type ProvenPlan, type Solve } from '../../core/drilling/best-drilling.ts';
import { type DrillingModel, type DrillingRules, drillingModel } from '../../core/drilling/drilling-model.ts';
import type { DrillingWish } from '../../core/drilling/drilling-wish.ts';

/** What the planner of holes is asked. */
export interface DrillingQuestion {
  readonly wishes: readonly DrillingWish[];
  readonly rules: DrillingRules;
}

/** Its answer: the plan (null where there is none) and the model that it chooses from; or why it failed. */
export type DrillingAnswer =
  | { readonly kind: 'answer'; readonly model: DrillingModel; readonly proven: ProvenPlan | null }
  | { readonly kind: 'failed'; readonly why: string };

/** A large plan ends after so many seconds with what is known then, and says how much better another might be. */
const SECONDS = 20;

interface Answer {
  readonly Status: string;
  readonly ObjectiveValue: number;
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>;
}

// The package's types are those of a script; what it exports as a module is the loader itself.
const load = loadHighs as unknown as (options: {
  locateFile: () => string;
}) => Promise<{ solve(text: string, options: object): Answer }>;

self.onmessage = ({ data }: MessageEvent<DrillingQuestion>) => {
  void answer(data).then(
    (found) => self.postMessage(found),
    (error: unknown) => self.postMessage({ kind: 'failed', why: String(error) } satisfies DrillingAnswer),
  );
};

async function answer({ wishes, rules }: DrillingQuestion): Promise<DrillingAnswer> {
  const highs = await load({ locateFile: () => wasmUrl });
  const solve: Solve = (programme) => {
    const { Status, Columns, ObjectiveValue } = highs.solve(programme, {
      mip_rel_gap: 0,
      time_limit: SECONDS,
    });
    const optimal = Status === 'Optimal';
    if (!optimal && Status !== 'Time limit reached') return null;
    // Where the time ran out nothing better than "no new hole" is proved.
    return { value: (name) => Columns[name]?.Primal ?? 0, optimal, bound: optimal ? ObjectiveValue : 0 };
  };
  const model = drillingModel(wishes, rules);
  return { kind: 'answer', model, proven: bestDrilling(model, solve) };
}
