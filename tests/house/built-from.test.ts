import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Build, isBuilt, noteBuild } from '../build/built-from.ts';

let root: string;
let build: Build;

const write = (path: string, text: string) => writeFileSync(join(root, path), text);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'kneelwright-built-'));
  build = { root, sources: ['src', 'lock.json', 'missing'], made: ['dist/page.html'], note: 'dist/note.txt' };
  mkdirSync(join(root, 'src/deep'), { recursive: true });
  mkdirSync(join(root, 'src/dist'));
  mkdirSync(join(root, 'dist'));
  write('src/a.ts', 'one');
  write('src/deep/b.ts', 'two');
  write('lock.json', '{}');
  write('dist/page.html', 'built');
  noteBuild(build);
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe('the build that tests begin with', () => {
  it('is left out when it was made from these very sources', () => {
    expect(isBuilt(build)).toBe(true);
    write('src/dist/made.js', 'not a source');
    expect(isBuilt(build)).toBe(true);
  });

  it('looks at content, not at times: a file written again as it was is no change, an old one with new text is', () => {
    write('src/a.ts', 'one');
    expect(isBuilt(build)).toBe(true);
    write('src/a.ts', 'new');
    utimesSync(join(root, 'src/a.ts'), new Date(0), new Date(0));
    expect(isBuilt(build)).toBe(false);
  });

  it.each([
    ['a file is added', () => write('src/deep/c.ts', '')],
    ['a file is gone', () => rmSync(join(root, 'src/deep/b.ts'))],
    ['a file has another name', () => renameSync(join(root, 'src/a.ts'), join(root, 'src/z.ts'))],
    ['text moves from one file to the next', () => [write('src/a.ts', 'onet'), write('src/deep/b.ts', 'wo')]],
    ['a package changes', () => write('lock.json', '{"a":1}')],
    ['what was built is gone', () => rmSync(join(root, 'dist/page.html'))],
    ['it was never noted', () => rmSync(join(root, 'dist/note.txt'))],
    ['somebody else built meanwhile', () => utimesSync(join(root, 'dist/page.html'), 1, 1)],
  ])('is made when %s', (_, change) => {
    change();
    expect(isBuilt(build)).toBe(false);
  });
});
