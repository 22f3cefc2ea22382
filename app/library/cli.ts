import { speakAsTerminal } from '../shell/say.ts';
import { readArguments } from './arguments.ts';
import { runCommand } from './commands.ts';
import { ADDRESS_VARIABLE } from './usage.ts';

/** `npm run library -- <command>`: what a club's volunteer does with the library. */
await speakAsTerminal();
// The package of the local server would end every command with 0.
process.once('beforeExit', () => process.exit(process.exitCode));
const read = readArguments(process.argv.slice(2));
if (read.kind === 'wrong') {
  console.error(read.sentence);
  process.exitCode = 2;
} else {
  const at = read.options.at ?? process.env[ADDRESS_VARIABLE];
  process.exitCode = await runCommand(read.command, { ...read.options, at }, (line) => console.log(line));
}
