import { parseArgs } from 'node:util';
import { unknownOption } from '../shell/unknown-option.ts';

/** What stands behind a command of `npm run library`. */
export type LibraryOptions = Partial<ReturnType<typeof parsed>['values']>;

export type LibraryArguments =
  | { readonly kind: 'run'; readonly command: string; readonly options: LibraryOptions }
  | { readonly kind: 'wrong'; readonly sentence: string };

/** Reads the command line. */
export function readArguments(args: readonly string[]): LibraryArguments {
  try {
    const { values, positionals } = parsed(args);
    return { kind: 'run', command: values.help ? 'help' : (positionals[0] ?? 'help'), options: values };
  } catch (error) {
    return { kind: 'wrong', sentence: unknownOption(args, error) };
  }
}

function parsed(args: readonly string[]) {
  return parseArgs({
    args: [...args],
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
}
