import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Fit } from '../../core/document/fit-schema.ts';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { problemLine, problemsOf } from '../problems/problem-sentences.ts';
import { oddText } from '../shell/plain-text.ts';
import { say } from '../shell/say.ts';
import { unreadFile } from '../shell/unread-file.ts';

/** The largest fit that is read, bytes; four seats in a finely drawn hull stay far below it. */
const LARGEST_FIT = 64 * 1024 * 1024;
/** Read at a time, bytes. */
const CHUNK = 1024 * 1024;

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
    return refused(say('evaluate.not-json', { file: path, detail: oneLine((error as Error).message) }));
  }
  const parsed = fitSchema.safeParse(value);
  const odd = parsed.success ? oddText(parsed.data) : null;
  if (odd) return refused(`${odd.path}: ${odd.message}`);
  if (parsed.success) return { kind: 'fit', fit: parsed.data };
  return refused(...problemsOf(parsed.error, fitSchema, value).map(problemLine));
}

function readText(path: string): { kind: 'text'; text: string } | Extract<ReadFit, { kind: 'refused' }> {
  try {
    const { size } = statSync(path);
    const values = { file: path, most: LARGEST_FIT / 2 ** 20 };
    if (size > LARGEST_FIT) return refused(say('evaluate.too-large', values));
    const text = readWithin(path);
    return text === null ? refused(say('evaluate.endless', values)) : { kind: 'text', text };
  } catch (error) {
    return refused(unreadFile(path, error));
  }
}

/** A file's text; null if it goes on beyond what a fit may be: a device has no size, and no end. */
function readWithin(path: string): string | null {
  const handle = openSync(path, 'r');
  try {
    const chunks: Buffer[] = [];
    for (let size = 0; size <= LARGEST_FIT; ) {
      const chunk = Buffer.alloc(CHUNK);
      const read = readSync(handle, chunk, 0, CHUNK, null);
      if (read === 0) return Buffer.concat(chunks).toString('utf8');
      chunks.push(chunk.subarray(0, read));
      size += read;
    }
    return null;
  } finally {
    closeSync(handle);
  }
}

function refused(...lines: string[]): Extract<ReadFit, { kind: 'refused' }> {
  return { kind: 'refused', lines };
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').slice(0, 160);
}
