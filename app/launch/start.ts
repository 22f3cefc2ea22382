import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

// What one start compiled the next need not: half of the work until the program serves. It lies beside the installed
// packages, which whoever starts the program trusts already; where it cannot be written nothing is kept.
enableCompileCache(join(import.meta.dirname, '../../node_modules/.cache/compiled'));
await import('./open-workbench.ts');
