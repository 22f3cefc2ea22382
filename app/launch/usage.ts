import { commandTable } from '../shell/command-table.ts';
import { say } from '../shell/say.ts';

/** Every option of `npm start` with what it does. */
export function usage(): string {
  return commandTable([
    ['npm start', say('launch.help.start')],
    ['  -- --shell loopback', say('launch.help.loopback')],
    ['  -- --shell electron', say('launch.help.electron')],
    ['  -- --port NUMBER', say('launch.help.port')],
    ['  -- --data DIR', say('launch.help.data')],
    ['  -- --no-browser', say('launch.help.no-browser')],
  ]);
}
