import { appendFileSync, existsSync, mkdirSync, readFileSync, renameSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { errorCode } from './error-code.ts';

const FOLDER = 'log';
const FILE = 'kneelwright.log';
/** A log is put aside when it has grown to this size, bytes; so many older ones are kept. */
const LARGEST = 256 * 1024;
const OLDER = 2;
/** Only the person whose data this is reads it. */
const PRIVATE_FOLDER = 0o700;
const PRIVATE_FILE = 0o600;

/** The program's own log. It holds what the program did and where it failed, never what anybody entered. */
export interface Log {
  readonly path: string;
  /** Adds one line; says nothing if it cannot be written. */
  write(line: string): void;
}

/** Where the log of a data folder lies. */
export function logPath(folder: string): string {
  return join(folder, FOLDER, FILE);
}

/** The log in a data folder. Each line gets the instant it was written at. */
export function openLog(folder: string, clock: () => number = Date.now): Log {
  const path = logPath(folder);
  return {
    path,
    write(line) {
      try {
        mkdirSync(join(folder, FOLDER), { recursive: true, mode: PRIVATE_FOLDER });
        rotate(path);
        const text = withoutHome(line).replaceAll(/[\p{Cc}\p{Cf}]+/gu, ' ');
        appendFileSync(path, `${new Date(clock()).toISOString()} ${text}\n`, { mode: PRIVATE_FILE });
      } catch {
        // A disk that takes no log is told of where it takes no data.
      }
    },
  };
}

function rotate(path: string): void {
  if (!existsSync(path) || statSync(path).size < LARGEST) return;
  for (let age = OLDER; age > 1; age--) {
    if (existsSync(`${path}.${age - 1}`)) renameSync(`${path}.${age - 1}`, `${path}.${age}`);
  }
  renameSync(path, `${path}.1`);
}

/** The last lines of a data folder's log, oldest first; none if there is no log. */
export function lastLogLines(folder: string, count: number): string[] {
  try {
    return readFileSync(logPath(folder), 'utf8').split('\n').filter(Boolean).slice(-count);
  } catch {
    return [];
  }
}

/**
 * What a fault may say in the log: its kind, its code and where it happened. Its message stays out: it may quote what
 * somebody entered.
 */
export function faultForLog(error: unknown): string {
  if (!(error instanceof Error)) return `a ${typeof error} was thrown`;
  const code = errorCode(error);
  const frames = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  const where = frames.slice(0, MOST_FRAMES).map((line) => line.trim());
  return [error.name, ...(code ? [code] : []), ...where].join(' ');
}

const MOST_FRAMES = 8;

/** The home folder's name is often the person's own. */
function withoutHome(line: string): string {
  const home = homedir();
  return home.length > 1 ? line.replaceAll(home, '~') : line;
}
