import {
  copyFileSync,
  cpSync,
  existsSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { STORE_FILE } from '../../../app/store/open-store.ts';
import { startChild } from '../child/child-program.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder } from '../temporary.ts';

const EDITS = 5;
let ground: string;
/** The same, closed: without a log, all hangs on the file. */
let closed: string;
let other: string;
let older: string;

/** The program, started on a folder, edits and is killed: its log stays beside the file. */
beforeAll(async () => {
  [ground, other] = [join(temporaryFolder(), 'data'), join(temporaryFolder(), 'data')];
  older = join(temporaryFolder(), 'older.db');
  await edited(other, 'elsewhere');
  const program = await edited(ground, 'here', 'stay');
  value(await program.call('backups.take', {}));
  copyFileSync(join(ground, STORE_FILE), older);
  for (let i = 0; i < EDITS; i++)
    value(await program.call('fits.create', { fit: inventedFit({ name: `late ${i}` }) }));
  program.process.kill('SIGKILL');
  await program.ended;
  closed = join(temporaryFolder(), 'data');
  cpSync(ground, closed, { recursive: true });
  const again = await startChild(closed);
  again.process.kill('SIGTERM');
  await again.ended;
});

async function edited(folder: string, name: string, then: 'end' | 'stay' = 'end') {
  const program = await startChild(folder);
  for (let i = 0; i < EDITS; i++) {
    value(await program.call('athletes.save', { athlete: inventedAthlete(`${name} ${i}`) }));
    value(await program.call('fits.create', { fit: inventedFit({ name: `${name} ${i}` }) }));
  }
  if (then === 'end') {
    program.process.kill('SIGTERM');
    await program.ended;
  }
  return program;
}

const store = (folder: string) => join(folder, STORE_FILE);
const fill = (path: string, from: number, to: number) => {
  const bytes = readFileSync(path);
  bytes.fill(0xa7, from, Math.min(to, bytes.length));
  writeFileSync(path, bytes);
};
const remove = (...paths: string[]) => {
  for (const path of paths) rmSync(path, { recursive: true, force: true });
};
const withoutHelp = (folder: string) =>
  remove(join(folder, 'journal'), join(folder, 'manifest.json'), join(folder, 'backups'));

/** What befalls the files, and whether a word must be said though everything is there again. */
const DAMAGES: readonly (readonly [string, (folder: string) => void, RegExp | null])[] = [
  ['missing', (folder) => remove(...['', '-wal', '-shm'].map((end) => store(folder) + end)), /missing/],
  ['empty', (folder) => writeFileSync(store(folder), ''), /empty/],
  ['cut off', (folder) => truncateSync(store(folder), 8192), null],
  [
    'without its last 4 KB',
    (folder) => truncateSync(store(folder), readFileSync(store(folder)).length - 4096),
    null,
  ],
  ['without a header, which the log holds', (folder) => fill(store(folder), 0, 100), null],
  [
    'without a header, alone',
    (folder) => {
      cpSync(store(closed), store(folder));
      remove(`${store(folder)}-wal`, `${store(folder)}-shm`);
      fill(store(folder), 0, 4096);
      withoutHelp(folder);
    },
    /Restored as far as readable\. From the damaged file: 5 athletes/,
  ],
  [
    'with a log that is damaged at its beginning',
    (folder) => fill(`${store(folder)}-wal`, 40, 41),
    /older than before/,
  ],
  [
    'with a log that is damaged near its end',
    (folder) => {
      const { size } = statSync(`${store(folder)}-wal`);
      fill(`${store(folder)}-wal`, size - 3 * 4096, size - 3 * 4096 + 1);
    },
    /journal restored the last \d+ changes/,
  ],
  [
    'of another store',
    (folder) => {
      remove(`${store(folder)}-wal`, `${store(folder)}-shm`);
      copyFileSync(store(other), store(folder));
    },
    /Another folder’s data file/,
  ],
  [
    'an older one',
    (folder) => {
      remove(`${store(folder)}-wal`, `${store(folder)}-shm`);
      copyFileSync(older, store(folder));
    },
    null,
  ],
  [
    'with one letter changed',
    (folder) => {
      const path = store(folder);
      writeFileSync(path, readFileSync(path, 'latin1').replaceAll('here 2', 'hexe 2'), 'latin1');
    },
    null,
  ],
];

describe('the program, started on a data file that is', () => {
  it.each(DAMAGES)(
    '%s, opens with everything that was kept, and says what it did',
    async (_, damage, word) => {
      const folder = join(temporaryFolder(), 'data');
      cpSync(ground, folder, { recursive: true });
      damage(folder);
      const program = await startChild(folder);
      const athletes = value(await program.call('athletes.list', { limit: 1000 }));
      const fits = value(await program.call('fits.list', { limit: 1000 }));
      const state = value(await program.call('program.state', {}));
      const said = [state.recovery?.message ?? '', ...state.notices].join(' ');
      expect(athletes.map(({ athlete }) => athlete.name).sort()).toEqual(names('here'));
      expect(fits.map(({ name }) => name).sort()).toEqual([...names('here'), ...names('late')].sort());
      if (word) expect(said).toMatch(word);
      program.process.kill('SIGTERM');
      await program.ended;
      expect(existsSync(store(folder))).toBe(true);
    },
  );
});

function names(begin: string): string[] {
  return Array.from({ length: EDITS }, (_, i) => `${begin} ${i}`);
}
