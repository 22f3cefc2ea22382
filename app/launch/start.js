import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

// The one file of plain JavaScript: for a file of TypeScript that is not compiled yet the runtime loads a compiler, 50 ms.
// What one start compiled the next need not. It lies beside the installed packages, which whoever starts the program trusts
// already; where it cannot be written nothing is kept.
enableCompileCache(join(import.meta.dirname, '../../node_modules/.cache/compiled'));
// While this copy runs, a build by another one leaves the files that this one may still load (`place-build.ts`).
const running = join(import.meta.dirname, '../dist/running');
const mark = join(running, String(process.pid));
try {
  mkdirSync(running, { recursive: true });
  writeFileSync(mark, '');
  process.on('exit', () => rmSync(mark, { force: true }));
} catch {
  // Who may not write here cannot build here either.
}
const built = new URL('../dist/launch/start-built.js', import.meta.url);
await import(existsSync(built) ? built.href : './open-workbench.ts');
