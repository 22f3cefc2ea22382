import { parseArgs } from 'node:util';
import { killAndLook } from './kill-and-look.ts';

/**
 * `npm run soak -- [--kills N] [--seed N] [--json]`: kills the program at random moments while it is edited, and counts
 * what was lost. Ends with exit 1 if anything was.
 */
const { values } = parseArgs({
  options: { kills: { type: 'string' }, seed: { type: 'string' }, json: { type: 'boolean' } },
});
const kills = Number(values.kills ?? 200);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
if (!(Number.isInteger(kills) && kills > 0 && Number.isInteger(seed))) {
  console.error('--kills and --seed need whole numbers, kills at least 1');
  process.exit(2);
}
const result = await killAndLook({ kills, seed, report: (line) => console.log(line) });
if (values.json) console.log(JSON.stringify(result));
else {
  const { acknowledgedEdits, lostEdits, damagedFiles, seconds } = result;
  console.log(
    `${kills} kills in ${seconds} s (seed ${seed}): ${acknowledgedEdits} edits acknowledged, ${lostEdits} lost, ${damagedFiles} files damaged`,
  );
}
process.exitCode = result.lostEdits + result.damagedFiles > 0 ? 1 : 0;
