import { existsSync } from 'node:fs';
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

// The one file of plain JavaScript: for a file of TypeScript that is not compiled yet the runtime loads a compiler, 50 ms.
// What one start compiled the next need not. It lies beside the installed packages, which whoever starts the program trusts
// already; where it cannot be written nothing is kept.
enableCompileCache(join(import.meta.dirname, '../../node_modules/.cache/compiled'));
const built = new URL('../dist/launch/start-built.js', import.meta.url);
await import(existsSync(built) ? built.href : './open-workbench.ts');
