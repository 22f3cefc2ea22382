import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { say } from '../shell/say.ts';

/** How long the first fetch of Electron's program file may take, milliseconds. */
const FETCH_LIMIT_MS = 180_000;
/** A fetch that failed is not tried again for a day, milliseconds. */
const TRY_AGAIN_MS = 86_400_000;

/** Electron's program file, or why there is none. */
export type FoundBinary =
  | { readonly kind: 'found'; readonly path: string }
  /** The reason is a whole sentence. */
  | { readonly kind: 'none'; readonly reason: string }
  /** The person ended the program while it was being fetched. */
  | { readonly kind: 'interrupted' };

/** Electron's program file, if it is there. Importing the package instead would try to fetch it, and hang off-line. */
export function electronBinary(root: string, env: NodeJS.ProcessEnv = process.env): string | null {
  const folder = join(root, 'node_modules/electron');
  const pathFile = join(folder, 'path.txt');
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8').trim() : null;
  const override = env.ELECTRON_OVERRIDE_DIST_PATH;
  const path = override ? join(override, name ?? 'electron') : name && join(folder, 'dist', name);
  return path && existsSync(path) ? path : null;
}

/**
 * Finds Electron's program file, fetching it where it is missing. `insist` tries again although a fetch has failed
 * within the last day.
 */
export async function findBinary(
  root: string,
  given: { insist?: boolean; clock?: () => number; limitMs?: number } = {},
): Promise<FoundBinary> {
  const { insist = false, clock = Date.now, limitMs = FETCH_LIMIT_MS } = given;
  const there = electronBinary(root);
  if (there) return { kind: 'found', path: there };
  const installer = join(root, 'node_modules/electron/install.js');
  if (!existsSync(installer)) return { kind: 'none', reason: say('launch.no-electron') };
  const failedAt = failedFetch(root);
  const since = failedAt === null ? Number.POSITIVE_INFINITY : clock() - failedAt;
  if (!insist && since >= 0 && since < TRY_AGAIN_MS) return { kind: 'none', reason: say('launch.not-again') };
  console.log(say('launch.fetching'));
  if (await fetchWith(installer, limitMs)) return { kind: 'interrupted' };
  const fetched = electronBinary(root);
  rememberFetch(root, fetched ? null : clock());
  return fetched ? { kind: 'found', path: fetched } : { kind: 'none', reason: say('launch.not-fetched') };
}

/** Lies beside the installed packages, so that a fresh install forgets it. */
function notePath(root: string): string {
  return join(root, 'node_modules/.cache/kneelwright/electron-fetch.json');
}

/** When a fetch failed last, milliseconds since 1970; null if none is known to have failed. */
function failedFetch(root: string): number | null {
  try {
    const { failedAt } = JSON.parse(readFileSync(notePath(root), 'utf8')) as { failedAt?: unknown };
    return typeof failedAt === 'number' ? failedAt : null;
  } catch {
    return null;
  }
}

function rememberFetch(root: string, failedAt: number | null): void {
  try {
    if (failedAt === null) {
      rmSync(notePath(root), { force: true });
      return;
    }
    mkdirSync(dirname(notePath(root)), { recursive: true });
    writeFileSync(notePath(root), JSON.stringify({ failedAt }));
  } catch {
    // Where nothing can be written it is tried again at the next start.
  }
}

/** Runs the installer to its end; tells whether the person interrupted it. */
function fetchWith(installer: string, limitMs: number): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [installer], { stdio: 'ignore', timeout: limitMs });
    let interrupted = false;
    const pass = (signal: NodeJS.Signals) => {
      interrupted = true;
      child.kill(signal);
    };
    process.on('SIGINT', pass).on('SIGTERM', pass);
    const finish = () => {
      process.off('SIGINT', pass).off('SIGTERM', pass);
      resolve(interrupted);
    };
    child.on('error', finish);
    child.on('exit', finish);
  });
}
