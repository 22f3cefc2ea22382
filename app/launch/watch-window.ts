import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { launcherReport } from '../electron/launcher-report.ts';
import type { Log } from '../shell/log-file.ts';
import { say } from '../shell/say.ts';

/** A window that has not reported within this time is taken for hung, milliseconds. */
export const READY_WITHIN_MS = 20_000;
/** How long a hung window may take to end before it is ended by force, milliseconds. */
const END_WITHIN_MS = 3000;
/** How long the last lines of a window that has ended are waited for, milliseconds. */
const LAST_WORDS_MS = 500;
/** Lines of the window's error stream that are kept. */
const MOST_LINES = 40;

/** How a window went. */
export type WindowRun =
  /** It was open and has been closed, or the person ended the program. */
  | { readonly kind: 'closed'; readonly code: number }
  | { readonly kind: 'already-open' }
  | { readonly kind: 'refused'; readonly sentence: string }
  /** It was open and ended by itself with an error. */
  | { readonly kind: 'broke-off'; readonly how: string }
  /** It never came up. `said`: the last lines of its error stream. */
  | { readonly kind: 'not-opened'; readonly reason: string; readonly said: readonly string[] };

/**
 * Starts the desktop program and watches it until it ends. Only a window that has reported "ready" counts as open: one
 * that ends or stays silent before that never came up, whatever its exit code.
 */
export async function watchWindow(
  command: readonly [string, ...string[]],
  { log, readyWithinMs = READY_WITHIN_MS }: { log: Log; readyWithinMs?: number },
): Promise<WindowRun> {
  const [file, ...args] = command;
  const child = spawn(file, args, { stdio: ['ignore', 'inherit', 'pipe', 'ipc'] });
  const said = listenTo(child, log);
  const heard = { ready: false, silent: false, asked: false, told: null as WindowRun | null };
  child.on('message', (message) => {
    const report = launcherReport(message);
    if (report?.kind === 'ready') heard.ready = true;
    else if (report?.kind === 'failed') heard.told = notOpened(report.detail, said);
    else if (report) heard.told = report;
  });
  const patience = setTimeout(() => {
    if (heard.ready || heard.told) return;
    heard.silent = true;
    endByForce(child);
  }, readyWithinMs);
  const pass = (signal: NodeJS.Signals) => {
    heard.asked = true;
    child.kill(signal);
  };
  process.on('SIGINT', pass).on('SIGTERM', pass);
  const ended = await endOf(child);
  process.off('SIGINT', pass).off('SIGTERM', pass);
  clearTimeout(patience);
  log.write(`window: ended, ${ended.how}`);
  if (heard.asked) return { kind: 'closed', code: ended.code };
  if (heard.told) return heard.told;
  if (heard.silent)
    return notOpened(say('launch.no-sign', { seconds: Math.round(readyWithinMs / 1000) }), said);
  if (!heard.ready) return notOpened(say('launch.ended-early', { detail: ended.how }), said);
  return ended.code === 0 ? { kind: 'closed', code: 0 } : { kind: 'broke-off', how: ended.how };
}

function notOpened(reason: string, said: readonly string[]): WindowRun {
  return { kind: 'not-opened', reason, said };
}

/** Keeps the last lines of the error stream, and puts each into the log. */
function listenTo(child: ChildProcess, log: Log): readonly string[] {
  const said: string[] = [];
  createInterface({ input: child.stderr! }).on('line', (line) => {
    if (line.trim() === '') return;
    said.push(line);
    if (said.length > MOST_LINES) said.shift();
    log.write(`window: ${line}`);
  });
  return said;
}

function endOf(child: ChildProcess): Promise<{ code: number; how: string }> {
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ code: 1, how: error.message }));
    child.on('exit', (code, signal) => {
      const end = { code: code ?? 1, how: signal ?? `exit ${code}` };
      // `close` comes when the error stream has been read to its end; a helper process left behind may hold it open.
      child.on('close', () => resolve(end));
      setTimeout(() => resolve(end), LAST_WORDS_MS).unref();
    });
  });
}

function endByForce(child: ChildProcess): void {
  child.kill('SIGTERM');
  setTimeout(() => child.kill('SIGKILL'), END_WITHIN_MS).unref();
}
