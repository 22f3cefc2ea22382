import { createInterface } from 'node:readline';
import { createLoopbackShell } from '../loopback/loopback-shell.ts';
import { serveLoopback } from '../loopback/server.ts';
import { openProgram } from '../services/open-program.ts';
import { errorCode } from '../shell/error-code.ts';
import { listPageFiles } from '../shell/page-files.ts';
import { say } from '../shell/say.ts';
import { type Handover, writeHandover } from './handover.ts';
import { openBrowser } from './open-browser.ts';

/** Time for the answer to the page that asked the program to end, milliseconds. */
const LAST_ANSWER_MS = 50;

/** Serves the program until it is asked to end; gives the process's exit code. */
export async function runLoopback(start: {
  root: string;
  /** The folder of the built page. */
  page: string;
  folder: string;
  port: number;
  browser: boolean;
}): Promise<number> {
  const { promise: asked, resolve: end } = Promise.withResolvers<void>();
  const shell = createLoopbackShell(() => setTimeout(end, LAST_ANSWER_MS));
  const opened = openProgram({ root: start.root, folder: start.folder, shell });
  if (opened.kind === 'refused') {
    console.error(opened.sentence);
    return 1;
  }
  const { program } = opened;
  let handover: Handover | null = null;
  if (program.recovery) console.log(program.recovery.message);
  try {
    const server = await serveLoopback({
      program,
      shell,
      page: listPageFiles(start.page),
      port: start.port,
      entered: () => handover?.remove(),
    });
    if (start.browser) {
      handover = writeHandover(server.entrance());
      openBrowser(handover.path);
    }
    announce(server.address, start.browser);
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => end());
    await asked;
    await server.close();
    return 0;
  } catch (error) {
    console.error(portSentence(error, start.port));
    return 1;
  } finally {
    handover?.remove();
    opened.close();
  }
}

function announce(address: () => string, browser: boolean): void {
  if (browser) console.log(say('launch.opening'));
  console.log(address());
  console.log(say('launch.enter'));
  createInterface({ input: process.stdin }).on('line', () => console.log(address()));
}

function portSentence(error: unknown, port: number): string {
  const code = errorCode(error);
  if (code === 'EADDRINUSE') return say('launch.port-used', { port });
  if (code === 'EACCES') return say('launch.port-refused', { port });
  throw error;
}
