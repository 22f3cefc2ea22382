import { parseArgs } from 'node:util';
import { damageAndLook } from './damages.ts';
import { killAndLook } from './kill-and-look.ts';

/**
 * `npm run soak -- [--kills N] [--damages N] [--seed N] [--json]`: kills the program at random moments while it is edited,
 * then damages its files in every way it knows, and counts what was lost. Ends with exit 1 if anything was, or if a loss
 * was not told.
 */
const { values } = parseArgs({
  options: {
    kills: { type: 'string' },
    damages: { type: 'string' },
    seed: { type: 'string' },
    json: { type: 'boolean' },
  },
});
const kills = Number(values.kills ?? 200);
const damages = Number(values.damages ?? 500);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
if (![kills, damages, seed].every((count) => Number.isInteger(count) && count >= 0)) {
  console.error('--kills, --damages and --seed need whole numbers');
  process.exit(2);
}
const report = (line: string) => console.log(line);
const result = await killAndLook({ kills, seed, report });
const damaged = await damageAndLook({ damages, seed, report });
if (values.json) console.log(JSON.stringify({ ...damaged, ...result }));
else {
  const { acknowledgedEdits, lostEdits, damagedFiles, seconds } = result;
  console.log(
    `${kills} kills in ${seconds} s (seed ${seed}): ${acknowledgedEdits} edits acknowledged, ${lostEdits} lost, ${damagedFiles} files damaged`,
  );
  console.log(`${damages} damages: ${damaged.lossy} with a loss, ${damaged.silent} of them silent`);
}
const losses = result.lostEdits + result.damagedFiles + damaged.silent + damaged.lossy + damaged.speechless;
process.exitCode = losses > 0 ? 1 : 0;
