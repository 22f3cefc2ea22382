import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { speakAsTerminal } from '../shell/say.ts';
import { runCommand } from './commands.ts';
import { ADDRESS_VARIABLE } from './usage.ts';

/** `npm run library -- <command>`: what a club's volunteer does with the library. */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    at: { type: 'string' },
    club: { type: 'string' },
    name: { type: 'string' },
    role: { type: 'string' },
    group: { type: 'string', multiple: true },
    athlete: { type: 'string', multiple: true },
    host: { type: 'string' },
    to: { type: 'string' },
    from: { type: 'string' },
    folder: { type: 'string' },
    port: { type: 'string' },
    minors: { type: 'boolean' },
    json: { type: 'boolean' },
    help: { type: 'boolean' },
  },
});
await speakAsTerminal();
const url = values.at ?? process.env[ADDRESS_VARIABLE];
// A password on the command line is seen by everybody on this machine: a file holds it as well.
const at = url?.startsWith('@') ? readFileSync(url.slice(1), 'utf8').trim() : url;
process.exitCode = await runCommand(
  values.help ? 'help' : (positionals[0] ?? 'help'),
  { ...values, at },
  (line) => console.log(line),
);
