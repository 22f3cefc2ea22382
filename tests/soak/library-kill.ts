import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import type { LibraryAddress } from '../../app/library/address.ts';
import { closeStore } from '../../app/store/open-store.ts';
import type { Store } from '../../app/store/store.ts';

const CHILD = join(import.meta.dirname, 'library-child.ts');
/** When a call is killed after it has begun, milliseconds. */
const KILLED_WITHIN_MS = 400;

/**
 * Lets a process of its own call for a laptop, and kills it within the call. Gives whether it came to its end before that. The
 * store is opened again afterwards, as after any crash.
 */
export async function killedCall(
  laptop: { store: Store; readonly folder: string; readonly address: LibraryAddress },
  { random, reopen }: { random: () => number; reopen: () => Store },
): Promise<boolean> {
  closeStore(laptop.store);
  const child = spawn(process.execPath, [CHILD, laptop.folder, JSON.stringify(laptop.address)], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const ended = once(child, 'exit') as Promise<[number | null]>;
  // The child says a word when its store is open.
  await Promise.race([once(child.stdout!, 'data'), ended]);
  const wait = setTimeout(() => child.kill('SIGKILL'), KILLED_WITHIN_MS * random());
  const [code] = await ended;
  clearTimeout(wait);
  laptop.store = reopen();
  return code === 0;
}
