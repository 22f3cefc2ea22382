import type { MessageKey } from '../language/messages.ts';
import type { SayValues } from '../language/translator.ts';
import { say } from '../shell/say.ts';

/** What may be wrong with a bundle, or with a file in it. */
export const BUNDLE_PROBLEMS = {
  'not-a-zip': 'bundle.not-zip',
  'cut-off': 'bundle.cut-off',
  damaged: 'bundle.damaged',
  'too-large': 'bundle.too-large',
  'too-many': 'bundle.too-many',
  'strange-name': 'bundle.foreign',
  twice: 'bundle.twice',
  'not-there': 'bundle.missing',
  'not-listed': 'bundle.foreign',
  changed: 'bundle.altered',
  'no-picture': 'bundle.not-picture',
  newer: 'bundle.newer',
  encrypted: 'bundle.locked',
  'not-json': 'bundle.not-json',
} as const satisfies Readonly<Record<string, MessageKey>>;

export type BundleProblem = keyof typeof BUNDLE_PROBLEMS;

/** A bundle, or a file in it, is not as it must be. `path` names the file; it is empty for the bundle itself. */
export class BundleRefused extends Error {
  readonly path: string;
  constructor(path: string, sentence: string) {
    super(sentence);
    this.path = path;
  }
}

/** A refusal by its kind, said in the program's language. */
export function bundleRefusal(path: string, problem: BundleProblem, values?: SayValues): BundleRefused {
  return new BundleRefused(path, say(BUNDLE_PROBLEMS[problem], { file: path, ...values }));
}
