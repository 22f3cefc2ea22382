import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface, type Interface } from 'node:readline';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { launchTestBrowser, sharedBrowser } from './test-browser.ts';

const ROOT = join(import.meta.dirname, '../..');
/** The page may have to be built first, milliseconds. */
const START_LIMIT_MS = 240_000;
/** Longest wait for something on the page, on a machine that is busy with other things, milliseconds. */
const PAGE_LIMIT_MS = 120_000;

/** How a browser context is opened. With `clock` its time goes as usual, and `nextFrame` can put it on. */
export type OpenOptions = BrowserContextOptions & { readonly clock?: boolean };

/** The program as a person starts it, in a process of its own. */
export interface RunningProgram {
  /** Where it serves, without a token: `http://127.0.0.1:PORT`. */
  readonly origin: string;
  /** The address it printed first, with its one-time token. */
  readonly firstAddress: string;
  readonly dataDir: string;
  readonly pid: number;
  /** A fresh address with a token of its own. */
  freshAddress(): Promise<string>;
  /** Opens the program in a new browser context and waits for the page to load. */
  openBrowser(options?: OpenOptions): Promise<Page>;
  /** Ends the process (SIGTERM unless said otherwise) and waits until it is gone; its data stays. */
  kill(signal?: NodeJS.Signals): Promise<number | null>;
  /** Ends everything and removes a data folder that was made for it. Fails if a page or a worker of it has thrown. */
  dispose(): Promise<void>;
}

/** Starts the real launcher with the loopback shell. Without `dataDir` it gets a new, empty folder. */
export async function startProgram(
  options: { dataDir?: string; port?: number } = {},
): Promise<RunningProgram> {
  const dataDir = options.dataDir ?? mkdtempSync(join(tmpdir(), 'kneelwright-e2e-'));
  const child = spawn(
    join(ROOT, 'node_modules/.bin/node'),
    [
      'app/launch/start.js',
      ...['--shell', 'loopback', '--no-browser', '--data', dataDir, '--port', String(options.port ?? 0)],
    ],
    { cwd: ROOT, stdio: ['pipe', 'pipe', 'pipe'] },
  );
  const exited = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const addresses = addressReader(child, exited);
  const firstAddress = await addresses.next();
  const contexts: BrowserContext[] = [];
  const thrown: Error[] = [];
  let ownBrowser: Promise<Browser> | null = null;

  async function freshAddress(): Promise<string> {
    child.stdin!.write('\n');
    return addresses.next();
  }

  async function kill(signal: NodeJS.Signals = 'SIGTERM'): Promise<number | null> {
    child.kill(signal);
    return exited;
  }

  return {
    origin: new URL(firstAddress).origin,
    firstAddress,
    dataDir,
    pid: child.pid!,
    freshAddress,
    kill,
    async openBrowser({ clock = false, ...contextOptions } = {}) {
      if (!sharedBrowser()) ownBrowser ??= launchTestBrowser();
      const browser = await (sharedBrowser() ?? ownBrowser)!;
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...contextOptions });
      contexts.push(context);
      context.on('weberror', (fault) => thrown.push(fault.error()));
      context.setDefaultTimeout(PAGE_LIMIT_MS);
      if (clock) await context.clock.install();
      const page = await context.newPage();
      await page.goto(await freshAddress());
      return page;
    },
    async dispose() {
      await Promise.all(contexts.map((context) => context.close()));
      await (await ownBrowser)?.close();
      await kill('SIGKILL');
      addresses.close();
      if (!options.dataDir) rmSync(dataDir, { recursive: true, force: true });
      if (thrown.length > 0) throw new AggregateError(thrown, `a page or its worker threw: ${thrown[0]}`);
    },
  };
}

/** Reads the addresses that the launcher prints, one by one; fails with what it said if it ends instead. */
function addressReader(child: ChildProcess, exited: Promise<unknown>) {
  const said: string[] = [];
  const printed: string[] = [];
  const waiting: ((address: string) => void)[] = [];
  const lines: Interface = createInterface({ input: child.stdout! });
  lines.on('line', (line) => {
    said.push(line);
    if (!line.startsWith('http://')) return;
    const next = waiting.shift();
    if (next) next(line);
    else printed.push(line);
  });
  child.stderr!.on('data', (chunk) => said.push(String(chunk)));
  return {
    close: () => lines.close(),
    next(): Promise<string> {
      const ready = printed.shift();
      if (ready) return Promise.resolve(ready);
      return new Promise((resolve, reject) => {
        const fail = (why: string) => reject(new Error(`${why}\n${said.join('\n')}`));
        const timer = setTimeout(() => fail('the program printed no address in time'), START_LIMIT_MS);
        waiting.push((address) => {
          clearTimeout(timer);
          resolve(address);
        });
        void exited.then(() => {
          clearTimeout(timer);
          fail('the program ended before it printed an address');
        });
      });
    },
  };
}
