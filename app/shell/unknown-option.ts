import { say } from './say.ts';

/** Names the option that `parseArgs` refuses, from its message: "Unknown option '--x'". */
export function unknownOption(args: readonly string[], refusal: unknown): string {
  const [, option = args.join(' ')] = /'(-[^']*)'/.exec((refusal as Error).message) ?? [];
  return say('evaluate.unknown', { option });
}
