import { existsSync } from 'node:fs';
import { type Browser, type BrowserServer, chromium } from 'playwright-core';

const SYSTEM_BROWSERS = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** The environment variable with the address of the browser that all browser tests share. */
export const BROWSER_AT = 'KNEELWRIGHT_TEST_BROWSER';

/** A headless Chromium: the one named by CHROMIUM_PATH, a system one, or the one that comes as an npm package. */
export async function launchTestBrowser(): Promise<Browser> {
  return chromium.launch(await howToLaunch());
}

/**
 * The same, for the processes of a test run to share. A page lives for seconds there: the slowest compiler takes more of the
 * processor than it saves (38.1 against 35.7 s). A bench has it.
 */
export async function serveTestBrowser(): Promise<BrowserServer> {
  const { executablePath, args } = await howToLaunch();
  return chromium.launchServer({ executablePath, args: [...args, '--js-flags=--no-turbofan'] });
}

async function howToLaunch() {
  return {
    executablePath: await browserPath(),
    // The sandbox needs a user of its own; a test machine often runs as root, and the page under test is our own.
    args: ['--no-sandbox', '--disable-dev-shm-usage', '--hide-scrollbars', '--force-color-profile=srgb'],
  };
}

let shared: Promise<Browser> | null = null;

/** The browser that all browser tests share, connected to once in a process; null where nobody serves one. */
export function sharedBrowser(): Promise<Browser> | null {
  const at = process.env[BROWSER_AT];
  if (at) shared ??= chromium.connect(at);
  return shared;
}

async function browserPath(): Promise<string> {
  const system = SYSTEM_BROWSERS.find((path) => path && existsSync(path));
  if (system) return system;
  // Read at import: makes the package unpack the libraries that a bare machine lacks.
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs22.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}
