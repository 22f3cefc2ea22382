import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { say } from '../shell/say.ts';

/** What the built page is made from. */
const PAGE_SOURCES = ['renderer', 'core', 'app/contract', 'package-lock.json'];
const ELECTRON_SOURCES = ['app', 'core', 'package-lock.json'];

/** Builds the page if it is missing or older than what it is made from. */
export async function buildPage(root: string): Promise<void> {
  await buildIfOlder(root, {
    made: join(root, 'renderer/dist/index.html'),
    from: PAGE_SOURCES,
    config: join(root, 'renderer/vite.config.ts'),
    says: say('launch.building'),
  });
}

/** Builds Electron's two scripts if they are missing or older than what they are made from. */
export async function buildElectron(root: string): Promise<void> {
  await buildIfOlder(root, {
    made: join(root, 'app/dist/electron/preload.cjs'),
    from: ELECTRON_SOURCES,
    config: join(root, 'app/electron/vite.config.ts'),
    says: say('launch.building-shell'),
  });
}

async function buildIfOlder(
  root: string,
  target: { made: string; from: readonly string[]; config: string; says: string },
): Promise<void> {
  const newest = Math.max(...target.from.map((path) => newestChange(join(root, path))));
  if (existsSync(target.made) && statSync(target.made).mtimeMs >= newest) return;
  console.log(target.says);
  // Whatever started us (a test run, say), the page is built as it is shipped.
  process.env.NODE_ENV = 'production';
  const { createBuilder } = await import('vite');
  const builder = await createBuilder({
    configFile: target.config,
    configLoader: 'native',
    logLevel: 'warn',
  });
  await builder.buildApp();
}

function newestChange(path: string): number {
  if (!existsSync(path)) return 0;
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  const inside = readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.name !== 'dist' && entry.name !== 'node_modules')
    .map((entry) => newestChange(join(path, entry.name)));
  return Math.max(0, ...inside);
}
