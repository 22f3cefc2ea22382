import { join } from 'node:path';
import { dataFolder } from '../shell/data-folder.ts';
import { programFolder } from '../shell/installed.ts';
import { buildPage } from './build-page.ts';
import { HELP, parseOptions, type StartOptions } from './options.ts';
import { runElectron } from './run-electron.ts';
import { runLoopback } from './run-loopback.ts';

/** `npm start`: opens the program in its own window, or serves it to a browser on this computer. */
async function start(options: StartOptions): Promise<number> {
  const root = programFolder(import.meta.dirname);
  const folder = dataFolder(options.data);
  await buildPage(root);
  if (options.shell !== 'loopback') {
    const run = await runElectron(root, folder);
    if (run.kind === 'ended') return run.code;
    const said = `The desktop window cannot be opened here: ${run.reason}`;
    if (options.shell === 'electron') {
      console.error(`${said}. Leave --shell out to use a browser instead.`);
      return 1;
    }
    console.log(`${said}; the same program is served to a browser on this computer.`);
  }
  const page = join(root, 'renderer/dist');
  return runLoopback({ root, page, folder, port: options.port, browser: options.browser });
}

const parsed = parseOptions(process.argv.slice(2));
if (parsed.kind === 'help') {
  console.log(HELP);
} else if (parsed.kind === 'wrong') {
  console.error(parsed.sentence);
  process.exitCode = 2;
} else {
  const code = await start(parsed.options).catch((error: unknown) => {
    console.error(`The program could not be started: ${error instanceof Error ? error.message : error}`);
    return 1;
  });
  process.exit(code);
}
