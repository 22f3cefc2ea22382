import { parseArgs } from 'node:util';

/** How the program is to be started. */
export interface StartOptions {
  /** Null lets the launcher choose: Electron where it can run, else loopback. */
  readonly shell: 'electron' | 'loopback' | null;
  /** 0 takes any free port. */
  readonly port: number;
  /** Null is the usual folder of this system. */
  readonly data: string | null;
  readonly browser: boolean;
}

export const HELP = `Kneelwright: a workbench for planning how a sprint-canoe paddler kneels in the boat.

  npm start                        open the program
  npm start -- --shell loopback    serve it to a browser on this computer instead of opening its own window
  npm start -- --shell electron    open its own window or say why not
  npm start -- --port N            loopback: serve on port N (otherwise any free port)
  npm start -- --data DIR          keep everything in DIR (otherwise in this system's usual place for programs' data)
  npm start -- --no-browser        loopback: print the address, open no browser
  npm start -- --help              show this

Through loopback, the address printed holds a token that opens the program once. Press Enter in the window where the
program runs for a fresh one; end it there with Ctrl+C, or from its own menu.`;

export type ParsedOptions =
  | { readonly kind: 'start'; readonly options: StartOptions }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly sentence: string };

/** Reads the command line. */
export function parseOptions(args: readonly string[]): ParsedOptions {
  const wrong = (sentence: string) =>
    ({ kind: 'wrong', sentence: `${sentence} See: npm start -- --help` }) as const;
  let values: ReturnType<typeof read>;
  try {
    values = read(args);
  } catch (error) {
    return wrong(`${(error as Error).message.split(/\. |\n/)[0]}.`);
  }
  if (values.help) return { kind: 'help' };
  const { shell = null, port: portText = '0' } = values;
  if (shell !== null && shell !== 'electron' && shell !== 'loopback') {
    return wrong(`--shell ${shell} is not known; allowed are electron and loopback.`);
  }
  const port = /^\d{1,5}$/.test(portText) ? Number(portText) : Number.NaN;
  if (!(port <= 65535)) return wrong(`--port ${portText} is not a port; allowed are 1 to 65535.`);
  if (values.data === '') return wrong('--data needs a folder.');
  return {
    kind: 'start',
    options: { shell, port, data: values.data ?? null, browser: !values['no-browser'] },
  };
}

function read(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    options: {
      shell: { type: 'string' },
      port: { type: 'string' },
      data: { type: 'string' },
      'no-browser': { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  }).values;
}
