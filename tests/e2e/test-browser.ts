import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const SYSTEM_BROWSERS = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

/** A headless Chromium: the one named by CHROMIUM_PATH, a system one, or the one that comes as an npm package. */
export async function launchTestBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: await browserPath(),
    // The sandbox needs a user of its own; a test machine often runs as root, and the page under test is our own.
    args: ['--no-sandbox', '--disable-dev-shm-usage', '--hide-scrollbars', '--force-color-profile=srgb'],
  });
}

async function browserPath(): Promise<string> {
  const system = SYSTEM_BROWSERS.find((path) => path && existsSync(path));
  if (system) return system;
  // Read at import: makes the package unpack the libraries that a bare machine lacks.
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs22.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}
