import { parseArgs } from 'node:util';
import { say } from '../shell/say.ts';
import { unknownOption } from '../shell/unknown-option.ts';

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

export type ParsedOptions =
  | { readonly kind: 'start'; readonly options: StartOptions }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly sentence: string };

/** Reads the command line. */
export function parseOptions(args: readonly string[]): ParsedOptions {
  const wrong = (problem: string) =>
    ({ kind: 'wrong', sentence: say('launch.see-help', { problem }) }) as const;
  let values: ReturnType<typeof read>;
  try {
    values = read(args);
  } catch (error) {
    return wrong(unknownOption(args, error));
  }
  if (values.help) return { kind: 'help' };
  const { shell = null, port: portText = '0' } = values;
  if (shell !== null && shell !== 'electron' && shell !== 'loopback') {
    return wrong(say('launch.bad-shell', { value: shell }));
  }
  const port = /^\d{1,5}$/.test(portText) ? Number(portText) : Number.NaN;
  if (!(port <= 65535)) return wrong(say('launch.bad-port', { value: portText }));
  if (values.data === '') return wrong(say('launch.bad-data'));
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
