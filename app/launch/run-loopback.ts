import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { createLoopbackShell } from '../loopback/loopback-shell.ts';
import { serveLoopback } from '../loopback/server.ts';
import { refusalSentence } from '../services/sentences.ts';
import { programVersion } from '../shell/installed.ts';
import { listPageFiles } from '../shell/page-files.ts';
import { closeStore, openStore } from '../store/open-store.ts';
import { openBrowser } from './open-browser.ts';

/** Serves the program until it is asked to end; gives the process's exit code. */
export async function runLoopback(start: {
  root: string;
  folder: string;
  port: number;
  browser: boolean;
}): Promise<number> {
  const opening = openStore(start.folder);
  if (opening.kind === 'refused') {
    console.error(refusalSentence(opening.refusal));
    return 1;
  }
  const { store } = opening;
  let end: () => void = () => {};
  const asked = new Promise<void>((resolve) => {
    end = resolve;
  });
  const shell = createLoopbackShell(() => setTimeout(end, 50));
  const version = programVersion(start.root);
  try {
    const server = await serveLoopback({
      program: { store, shell, version, assets: join(start.root, 'assets') },
      shell,
      page: listPageFiles(join(start.root, 'renderer/dist')),
      port: start.port,
    });
    announce(server.address, start.browser);
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end);
    await asked;
    await server.close();
    return 0;
  } catch (error) {
    console.error(portSentence(error, start.port));
    return 1;
  } finally {
    closeStore(store);
  }
}

function announce(address: () => string, browser: boolean): void {
  const first = address();
  console.log(first);
  console.log('Press Enter for a fresh address, Ctrl+C to end.');
  if (browser) openBrowser(first);
  createInterface({ input: process.stdin }).on('line', () => console.log(address()));
}

function portSentence(error: unknown, port: number): string {
  const { code } = error as { code?: string };
  if (code === 'EADDRINUSE') return `Port ${port} is in use. Leave --port out to take any free one.`;
  if (code === 'EACCES') return `Port ${port} may not be used here. Leave --port out to take any free one.`;
  throw error;
}
