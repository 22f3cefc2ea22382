/**
 * Runs the built desktop program, `app/dist/electron/main.js`, with the stand-in in Electron's place, makes the calls
 * named on the command line as its page would, and prints their results as JSON.
 */
import { registerHooks } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { CALL_CHANNEL, PAGE_HOME } from '../../app/electron/electron-api.ts';

const named = pathToFileURL(join(import.meta.dirname, 'electron-named.ts')).href;
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === 'electron' ? { url: named, shortCircuit: true } : next(specifier, context),
});

// Chromium's own files lie in the user's cache; a test has one of its own.
process.env.XDG_CACHE_HOME = `${process.argv[2]!.slice('--data='.length)}-cache`;
const { standIn } = (await import(named)) as typeof import('./electron-named.ts');
await import(pathToFileURL(join(import.meta.dirname, '../../app/dist/electron/main.js')).href);
while (!standIn.ipcHandlers.has(CALL_CHANNEL)) {
  if (standIn.app.exitCode !== null) throw new Error(standIn.errorBoxes.map(({ text }) => text).join());
  await new Promise((resolve) => setTimeout(resolve, 10));
}

const results: unknown[] = [];
for (const call of process.argv.slice(3)) {
  const { name, input } = JSON.parse(call) as { name: string; input: unknown };
  const event = { senderFrame: { url: PAGE_HOME, parent: null } };
  results.push(await standIn.ipcHandlers.get(CALL_CHANNEL)!(event, name, input));
}
const page = await standIn.protocolHandlers.get('app')!(new Request(PAGE_HOME));
standIn.app.emit('will-quit');
console.log(
  JSON.stringify({ results, page: page.status, preload: standIn.windows[0]?.options.webPreferences }),
);
process.exit(0);
