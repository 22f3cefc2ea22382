import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hasDisplay } from './open-browser.ts';

/** A window that goes within this time of being opened never came up, milliseconds. */
const EARLY_EXIT_MS = 8000;
/** How long the first fetch of Electron's program file may take, milliseconds. */
const FETCH_LIMIT_MS = 180_000;

/** How a start with Electron went. */
export type ElectronRun =
  | { readonly kind: 'ended'; readonly code: number }
  /** No window came up; the reason completes "The desktop window cannot be opened here: ...". */
  | { readonly kind: 'unavailable'; readonly reason: string };

/** Opens the program in its own window and waits until it is closed. */
export async function runElectron(root: string, folder: string): Promise<ElectronRun> {
  const unavailable = (reason: string) => ({ kind: 'unavailable', reason }) as const;
  if (!hasDisplay()) return unavailable('there is no display');
  if (process.platform === 'linux' && process.getuid?.() === 0) {
    return unavailable('Electron does not run as the root user');
  }
  const binary = electronBinary(root) ?? (await fetchBinary(root));
  if (!binary) return unavailable("Electron's program file is not installed and could not be fetched");
  const { buildElectron } = await import('./build-page.ts');
  await buildElectron(root);
  const started = performance.now();
  const code = await runToEnd(binary, [root, `--data=${folder}`]);
  if (code === 0) return { kind: 'ended', code };
  if (performance.now() - started < EARLY_EXIT_MS) return unavailable('Electron closed again at once');
  return { kind: 'ended', code };
}

/** Electron's program file, if it is there. Importing the package instead would try to fetch it, and hang off-line. */
export function electronBinary(root: string, env: NodeJS.ProcessEnv = process.env): string | null {
  const folder = join(root, 'node_modules/electron');
  const pathFile = join(folder, 'path.txt');
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8').trim() : null;
  const override = env.ELECTRON_OVERRIDE_DIST_PATH;
  const path = override ? join(override, name ?? 'electron') : name && join(folder, 'dist', name);
  return path && existsSync(path) ? path : null;
}

async function fetchBinary(root: string): Promise<string | null> {
  const installer = join(root, 'node_modules/electron/install.js');
  if (!existsSync(installer)) return null;
  console.log("Fetching Electron's program file (only once) ...");
  await runToEnd(process.execPath, [installer], { quiet: true, limitMs: FETCH_LIMIT_MS });
  return electronBinary(root);
}

function runToEnd(
  command: string,
  args: readonly string[],
  { quiet = false, limitMs }: { quiet?: boolean; limitMs?: number } = {},
): Promise<number> {
  return new Promise((resolve) => {
    const child = spawn(command, args, { stdio: quiet ? 'ignore' : 'inherit', timeout: limitMs });
    const pass = (signal: NodeJS.Signals) => child.kill(signal);
    process.on('SIGINT', pass).on('SIGTERM', pass);
    const finish = (code: number) => {
      process.off('SIGINT', pass).off('SIGTERM', pass);
      resolve(code);
    };
    child.on('error', () => finish(1));
    child.on('exit', (code) => finish(code ?? 1));
  });
}
