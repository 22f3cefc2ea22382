/**
 * The program in a process of its own, without the page being built first: `serve.ts DATA PAGE`. Everything else is as
 * `npm start -- --shell loopback --no-browser` does it.
 */
import { join } from 'node:path';
import { runLoopback } from '../../../app/launch/run-loopback.ts';

const [folder, page] = process.argv.slice(2);
const root = join(import.meta.dirname, '../../..');
process.exit(await runLoopback({ root, page: page!, folder: folder!, port: 0, browser: false }));
