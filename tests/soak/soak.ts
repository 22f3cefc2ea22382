import { parseArgs } from 'node:util';
import { damageAndLook } from './damages.ts';
import { killAndLook } from './kill-and-look.ts';
import { soakLibrary } from './library-soak.ts';
import { mergesAtRandom } from './merges.ts';

/**
 * `npm run soak -- [--kills N] [--damages N] [--stores N] [--edits N] [--seed N] [--json]` kills the program at random moments
 * while it is edited, damages its files in every way it knows, edits so many stores with wrong clocks and exchanges files between
 * them at random. With `--library` it edits laptops that share a club's library instead (`--stores` 8, `--changes` 1500). Both count
 * what was lost, and end with exit 1 if anything was.
 */
const { values } = parseArgs({
  options: {
    kills: { type: 'string' },
    damages: { type: 'string' },
    stores: { type: 'string' },
    edits: { type: 'string' },
    seed: { type: 'string' },
    json: { type: 'boolean' },
    library: { type: 'boolean' },
    changes: { type: 'string' },
  },
});
const kills = Number(values.kills ?? 200);
const damages = Number(values.damages ?? 500);
const stores = Number(values.stores ?? 6);
const edits = Number(values.edits ?? 600);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
if (![kills, damages, stores, edits, seed].every((count) => Number.isInteger(count) && count >= 0)) {
  console.error('--kills, --damages, --stores, --edits and --seed need whole numbers');
  process.exit(2);
}
// Standard output is for the result alone, if a program is to read it.
const report = (line: string) => (values.json ? console.error(line) : console.log(line));
const { library: onLibrary } = values;
if (onLibrary) {
  const changes = Number(values.changes ?? 1500);
  process.exit(
    await soakLibrary({
      stores: Number(values.stores ?? 8),
      changes,
      seed,
      report,
      json: values.json === true,
    }),
  );
}
const result = await killAndLook({ kills, seed, report });
const damaged = await damageAndLook({ damages, seed, report });
const merges = mergesAtRandom({ stores: Math.max(2, stores), edits, seed });
if (values.json) console.log(JSON.stringify({ ...merges, ...damaged, ...result }));
else {
  const { acknowledgedEdits, lostEdits, damagedFiles, seconds } = result;
  const { exchanges, lostFields, conflictsShown, unequalStores } = merges;
  console.log(
    `${kills} kills in ${seconds} s (seed ${seed}): ${acknowledgedEdits} edits acknowledged, ${lostEdits} lost, ${damagedFiles} files damaged`,
  );
  console.log(`${damages} damages: ${damaged.lossy} with a loss, ${damaged.silent} of them silent`);
  console.log(
    `${merges.stores} stores, ${exchanges} exchanges, ${edits} edits: ${lostFields} fields lost, ${conflictsShown} conflicts shown, ${unequalStores} stores unequal at the end`,
  );
}
const lostByMerging = merges.lostFields + merges.unequalStores;
const losses = result.lostEdits + result.damagedFiles + damaged.silent + damaged.lossy + damaged.speechless;
process.exitCode = losses + lostByMerging > 0 ? 1 : 0;
