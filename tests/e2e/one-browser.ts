import { BROWSER_AT, serveTestBrowser } from './test-browser.ts';

/** Before all browser tests: one browser for all of them. Each test has contexts of its own in it. */
export async function setup(): Promise<() => Promise<void>> {
  const server = await serveTestBrowser();
  process.env[BROWSER_AT] = server.wsEndpoint();
  return () => server.close();
}
