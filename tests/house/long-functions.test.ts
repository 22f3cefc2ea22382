import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'oxc-parser';
import { expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
/** The most lines that a function has by agreement, and how many may have more: two factories, the PDF, one inner loop. */
const MOST_LINES = 60;
const MOST_OVER = 4;

interface Node {
  readonly type?: string;
  readonly body?: unknown;
  readonly start: number;
  readonly end: number;
}

/** Lines of every function of a file, those within it included. */
function functionLengths(file: string, text: string): number[] {
  const lengths: number[] = [];
  const visit = (node: unknown): void => {
    if (!node || typeof node !== 'object') return;
    const { type = '', body, start, end } = node as Node;
    if (type.includes('Function') && body) lengths.push(text.slice(start, end).split('\n').length);
    for (const part of Object.values(node)) visit(part);
  };
  visit(parseSync(file, text).program);
  return lengths;
}

it(`no more than ${MOST_OVER} functions of the program are longer than ${MOST_LINES} lines`, () => {
  const files = ['core', 'app', 'renderer'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file) && !/(^|\/)(dist|node_modules)\//.test(file))
      .map((file) => join(folder, file)),
  );
  const over = files.flatMap((file) =>
    functionLengths(file, readFileSync(join(ROOT, file), 'utf8'))
      .filter((lines) => lines > MOST_LINES)
      .map((lines) => `${lines} ${file}`),
  );
  expect(files.length).toBeGreaterThan(500);
  expect(over.length, over.join('\n')).toBeLessThanOrEqual(MOST_OVER);
});
