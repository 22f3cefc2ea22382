import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** Where this system keeps programs' data: both shells use the same folder, so they open the same store. */
export function dataFolder(chosen: string | null, env: NodeJS.ProcessEnv = process.env): string {
  if (chosen !== null) return resolve(chosen);
  switch (process.platform) {
    case 'win32':
      return join(env.APPDATA ?? join(homedir(), 'AppData', 'Roaming'), 'Kneelwright');
    case 'darwin':
      return join(homedir(), 'Library', 'Application Support', 'Kneelwright');
    default:
      return join(env.XDG_DATA_HOME || join(homedir(), '.local', 'share'), 'kneelwright');
  }
}
