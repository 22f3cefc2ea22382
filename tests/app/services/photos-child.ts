import { existsSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { STORE_FILE } from '../../../app/store/open-store.ts';
import { openedProgram } from '../opened-program.ts';
import { peakMemory } from './peak-memory.ts';

/**
 * Loses the store's file in one folder, so that everything comes back from the journal; takes a backup, exports the store,
 * imports what came out into the store of another folder, and opens that again. Says how large the file was, how many photographs came
 * back and arrived, and how much memory the process had at most, bytes.
 */
const [fromFolder, intoFolder] = process.argv.slice(2) as [string, string];

function opened(folder: string) {
  const shell = createLoopbackShell(() => {});
  const program = openedProgram(folder, { shell });
  const call = async (name: string, input: object) => {
    const result = await dispatch(program.program, name, input);
    if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
    return result.value as never as { href: string; handle: string };
  };
  return { ...program, shell, call };
}

function photosIn({ program }: ReturnType<typeof opened>): unknown {
  return program.store.db.prepare('SELECT count(*) FROM boat_photos').pluck().get();
}

for (const ending of ['', '-wal', '-shm']) rmSync(join(fromFolder, STORE_FILE + ending), { force: true });
const from = opened(fromFolder);
const back = photosIn(from);
await from.call('backups.take', {});
const { href } = await from.call('bundle.export', {});
const file = from.shell.fetch(href.split('/').at(-1)!)!;
if (!('path' in file)) throw new Error('the bundle is in memory');
const { size } = statSync(file.path);
from.close();

const into = opened(intoFolder);
const { handle } = await into.call('bundle.preview', { upload: into.shell.accept(file.path) });
await into.call('bundle.import', { handle });
into.close();
const again = opened(intoFolder);
const photos = photosIn(again);
again.close();
const bytes = peakMemory();
console.log(JSON.stringify({ bytes, size, back, photos, leftBehind: existsSync(file.path) }));
