import { existsSync, statSync } from 'node:fs';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { openProgram } from '../../../app/services/open-program.ts';

/**
 * Exports the store in one folder, imports what came out into the store of another, and says how large the file was, how many
 * photographs arrived and how much memory the process had at most, bytes.
 */
const [root, fromFolder, intoFolder] = process.argv.slice(2) as [string, string, string];

function opened(folder: string) {
  const shell = createLoopbackShell(() => {});
  const program = openProgram({ root, folder, shell });
  if (program.kind === 'refused') throw new Error(program.sentence);
  const call = async (name: string, input: object) => {
    const result = await dispatch(program.program, name, input);
    if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
    return result.value as never as { href: string; handle: string };
  };
  return { ...program, shell, call };
}

const from = opened(fromFolder);
const { href } = await from.call('bundle.export', {});
const file = from.shell.fetch(href.split('/').at(-1)!)!;
if (!('path' in file)) throw new Error('the bundle is in memory');
const { size } = statSync(file.path);
from.close();

const into = opened(intoFolder);
const { handle } = await into.call('bundle.preview', { upload: into.shell.accept(file.path) });
await into.call('bundle.import', { handle });
const photos = into.program.store.db.prepare('SELECT count(*) FROM boat_photos').pluck().get();
into.close();
const bytes = process.resourceUsage().maxRSS * 1024;
console.log(JSON.stringify({ bytes, size, photos, leftBehind: existsSync(file.path) }));
