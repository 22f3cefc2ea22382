import { join } from 'node:path';
import { buildParts } from './build-parts.ts';

// `npm run build`: the page, the desktop program and the program for a browser, or the one that is named.
await buildParts(join(import.meta.dirname, '../..'), process.argv.slice(2));
