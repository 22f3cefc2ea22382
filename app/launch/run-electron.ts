import type { Log } from '../shell/log-file.ts';
import { say } from '../shell/say.ts';
import { findBinary } from './electron-binary.ts';
import { hasDisplay } from './open-browser.ts';
import { sandboxFacts, sandboxLimit } from './sandbox-limits.ts';
import { watchWindow } from './watch-window.ts';

/** How a start with Electron went. */
export type ElectronRun =
  /** `sentence`: what there is to say about the end, null after an ordinary one. */
  | { readonly kind: 'ended'; readonly code: number; readonly sentence: string | null }
  /**
   * No window came up; the reason is a whole sentence. `tried`: Electron was
   * started, so the log has something to say.
   */
  | { readonly kind: 'unavailable'; readonly reason: string; readonly tried: boolean };

/** The exit code of a program that was interrupted from the keyboard: 128 and the signal's number. */
const INTERRUPTED = 130;

/** Opens the program in its own window and waits until it is closed. `insist`: the person asked for this shell. */
export async function runElectron(start: {
  root: string;
  folder: string;
  log: Log;
  insist: boolean;
}): Promise<ElectronRun> {
  const { root, folder, log, insist } = start;
  const unavailable = (reason: string) => ({ kind: 'unavailable', reason, tried: false }) as const;
  if (!hasDisplay()) return unavailable(say('launch.no-display'));
  if (process.platform === 'linux' && process.getuid?.() === 0) {
    return unavailable(say('launch.root'));
  }
  const binary = await findBinary(root, { insist });
  if (binary.kind === 'interrupted') return { kind: 'ended', code: INTERRUPTED, sentence: null };
  if (binary.kind === 'none') return unavailable(binary.reason);
  const { buildElectron } = await import('./build-parts.ts');
  await buildElectron(root);
  return runWindow([binary.path, root, `--data=${folder}`], log);
}

/** Runs the window's command to its end and puts the end into words. */
export async function runWindow(
  command: readonly [string, ...string[]],
  log: Log,
  readyWithinMs?: number,
): Promise<ElectronRun> {
  const run = await watchWindow(command, { log, readyWithinMs });
  const ended = (code: number, sentence: string | null) => ({ kind: 'ended', code, sentence }) as const;
  switch (run.kind) {
    case 'closed':
      return ended(run.code, null);
    case 'already-open':
      return ended(0, say('launch.open-already'));
    case 'refused':
      return ended(1, run.sentence);
    case 'broke-off':
      return ended(1, say('launch.ended', { saved: say('error.saved'), detail: run.how, log: log.path }));
    case 'not-opened': {
      const [binary] = command;
      const limit = process.platform === 'linux' ? sandboxLimit(sandboxFacts(binary), binary) : null;
      const sandbox = run.said.some((line) => /sandbox|namespace/i.test(line));
      return { kind: 'unavailable', reason: sandbox && limit ? limit : run.reason, tried: true };
    }
  }
}
