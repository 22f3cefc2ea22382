import { join } from 'node:path';
import { dataFolder } from '../shell/data-folder.ts';
import { programFolder } from '../shell/installed.ts';
import { faultForLog, type Log, lastLogLines, openLog } from '../shell/log-file.ts';
import { say, speakAsTerminal, words } from '../shell/say.ts';
import { buildPage, buildProgram } from './build-parts.ts';
import { parseOptions, type StartOptions } from './options.ts';
import { runElectron } from './run-electron.ts';
import { runLoopback } from './run-loopback.ts';
import { usage } from './usage.ts';

/** So many lines of the log are shown when the window did not come up. */
const SHOWN_LINES = 6;

/** `npm start`: opens the program in its own window, or serves it to a browser on this computer. */
async function start(options: StartOptions): Promise<number> {
  const root = programFolder(import.meta.dirname);
  const folder = dataFolder(options.data);
  const log = openLog(folder);
  await buildPage(root);
  // As sources, which is slow to start: the next start finds it built.
  if (import.meta.url.endsWith('.ts')) await buildProgram(root);
  if (options.shell !== 'loopback') {
    const insist = options.shell === 'electron';
    const run = await runElectron({ root, folder, log, insist });
    if (run.kind === 'ended') {
      if (run.sentence) console.error(run.sentence);
      return run.code;
    }
    sayUnavailable(run, { folder, log, insist });
    if (insist) return 1;
  }
  const page = join(root, 'renderer/dist');
  return runLoopback({ root, page, folder, port: options.port, browser: options.browser });
}

/** Says why there is no window, with the log's last lines where the window left any. */
function sayUnavailable(
  { reason, tried }: { reason: string; tried: boolean },
  { folder, log, insist }: { folder: string; log: Log; insist: boolean },
): void {
  log.write(`start: no window, ${reason}`);
  const said = say('launch.no-window', { reason });
  if (insist) console.error(words().sentences([said, say('launch.no-browser')]));
  else console.log(words().sentences([said, say('launch.browser')]));
  if (!tried) return;
  console.log(say('launch.log', { log: log.path }));
  for (const line of lastLogLines(folder, SHOWN_LINES)) console.log(`  ${line}`);
}

await speakAsTerminal();
const parsed = parseOptions(process.argv.slice(2));
if (parsed.kind === 'help') {
  console.log(usage());
} else if (parsed.kind === 'wrong') {
  console.error(parsed.sentence);
  process.exitCode = 2;
} else {
  const code = await start(parsed.options).catch((error: unknown) => {
    openLog(dataFolder(parsed.options.data)).write(`start: ${faultForLog(error)}`);
    console.error(say('launch.failed', { detail: error instanceof Error ? error.message : String(error) }));
    return 1;
  });
  process.exit(code);
}
