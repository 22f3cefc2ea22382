import { readFileSync, statSync } from 'node:fs';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { fitSchema } from '../../core/fit/fit-schema.ts';
import { problemLine, problemsOf } from '../services/problem-sentences.ts';

/** The largest fit that is read, bytes; four seats in a finely drawn hull stay far below it. */
const LARGEST_FIT = 64 * 1024 * 1024;

export type ReadFit =
  | { readonly kind: 'fit'; readonly fit: Fit }
  /** One plain line per problem. */
  | { readonly kind: 'refused'; readonly lines: readonly string[] };

/** Reads one fit from a file. Nothing is thrown: whatever is wrong with the file comes back as lines. */
export function readFit(path: string): ReadFit {
  const text = readText(path);
  if (text.kind === 'refused') return text;
  let value: unknown;
  try {
    value = JSON.parse(text.text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return refused(`${path}: is not JSON (${oneLine((error as Error).message)}); a fit is one JSON object`);
  }
  const parsed = fitSchema.safeParse(value);
  if (parsed.success) return { kind: 'fit', fit: parsed.data };
  return refused(...problemsOf(parsed.error, fitSchema, value).map(problemLine));
}

function readText(path: string): { kind: 'text'; text: string } | Extract<ReadFit, { kind: 'refused' }> {
  try {
    const { size } = statSync(path);
    if (size > LARGEST_FIT) {
      return refused(
        `${path}: is ${Math.ceil(size / 2 ** 20)} MB; allowed is at most ${LARGEST_FIT / 2 ** 20} MB`,
      );
    }
    return { kind: 'text', text: readFileSync(path, 'utf8') };
  } catch (error) {
    const { code = '' } = error as { code?: string };
    return refused(
      `${path}: ${FILE_PROBLEMS[code] ?? 'cannot be read'}; the path of one fit as JSON is needed`,
    );
  }
}

const FILE_PROBLEMS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EISDIR: 'is a folder',
  EACCES: 'may not be read',
  EPERM: 'may not be read',
  ENAMETOOLONG: 'is too long a path',
};

function refused(...lines: string[]): Extract<ReadFit, { kind: 'refused' }> {
  return { kind: 'refused', lines };
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').slice(0, 160);
}
