import { evaluationBench } from './evaluation-bench.ts';
import { floatBench } from './float-bench.ts';
import { photographBench } from './photograph-bench.ts';
import { type Found, together } from './row.ts';
import { searchBench } from './search-bench.ts';
import { stanceBench } from './stance-bench.ts';
import { waterBench } from './water-bench.ts';

/** What the core costs: a stance, a drag's step, a whole evaluation, a proposal, floating, and photographs. */
export async function coreBench(): Promise<Found> {
  return together([
    await stanceBench(),
    await evaluationBench(),
    searchBench(),
    await floatBench(),
    waterBench(),
    photographBench(),
  ]);
}
