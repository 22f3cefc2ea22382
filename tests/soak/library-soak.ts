import { libraryAtRandom } from './library-run.ts';

/** A month of a club: `changes` over `stores` laptops, with cuts and kills in proportion. Prints what was found; gives the exit code. */
export async function soakLibrary(run: {
  stores: number;
  changes: number;
  seed: number;
  report: (line: string) => void;
  json: boolean;
}): Promise<number> {
  const { stores, changes, seed, report } = run;
  const result = await libraryAtRandom({
    stores: Math.max(2, stores),
    changes,
    seed,
    report,
    cuts: Math.ceil(changes / 40),
    laptopKills: Math.ceil(changes / 200),
    serverKills: Math.ceil(changes / 400),
    erasures: 3,
  });
  if (run.json) console.log(JSON.stringify(result));
  else {
    report(
      `${result.stores} laptops, ${result.changes} changes (seed ${seed}), ${result.calls} calls, ${result.cutCalls} of them cut: ` +
        `${result.lostFields} fields lost, ${result.unequalStores} laptops unequal, ${result.wrongReaders} wrong readers; ` +
        `all had the same ${result.secondsToConverge} s after the last edit`,
    );
  }
  return result.lostFields + result.unequalStores + result.wrongReaders > 0 ? 1 : 0;
}
