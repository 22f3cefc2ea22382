import { createHash } from 'node:crypto';
import { homedir } from 'node:os';
import { join } from 'node:path';

/**
 * Where Chromium keeps its own files for a data folder: never among the data, and one place for each data folder, so
 * that two programs on two folders do not share a lock, a cache or a page's storage.
 */
export function profileFolder(dataFolder: string, env: NodeJS.ProcessEnv = process.env): string {
  const mark = createHash('sha256').update(dataFolder).digest('hex').slice(0, 16);
  return join(cacheFolder(env), mark);
}

function cacheFolder(env: NodeJS.ProcessEnv): string {
  switch (process.platform) {
    case 'win32':
      return join(env.LOCALAPPDATA ?? join(homedir(), 'AppData', 'Local'), 'Kneelwright', 'Window');
    case 'darwin':
      return join(homedir(), 'Library', 'Caches', 'Kneelwright');
    default:
      return join(env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'kneelwright');
  }
}
