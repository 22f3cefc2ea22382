import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isProgramBuilt } from '../../../app/launch/build-parts.ts';
import { buildingFolder, placeBuild } from '../../../app/launch/place-build.ts';
import { pageAnswer } from '../../../app/shell/answer.ts';
import { listPageFiles } from '../../../app/shell/page-files.ts';
import { temporaryFolder } from '../temporary.ts';

it('the built program is run only while it is newer than every source and text', () => {
  const root = temporaryFolder();
  const write = (path: string, at: number) => {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), '');
    utimesSync(join(root, path), at, at);
  };
  write('app/shell/a.ts', 1000);
  write('core/body/b.ts', 1000);
  write('assets/messages/en/c.json', 1000);
  expect(isProgramBuilt(root)).toBe(false);
  write('app/dist/launch/start-built.js', 2000);
  expect(isProgramBuilt(root)).toBe(true);
  for (const source of ['app/shell/a.ts', 'core/body/b.ts', 'assets/messages/en/c.json']) {
    utimesSync(join(root, source), 3000, 3000);
    expect(isProgramBuilt(root), source).toBe(false);
    utimesSync(join(root, source), 1000, 1000);
  }
  // What is built itself is no source.
  write('app/dist/electron/main.js', 3000);
  expect(isProgramBuilt(root)).toBe(true);
});

describe('a build while another copy of the program runs', () => {
  const DEAD = 2 ** 30;
  function built(root: string, files: Readonly<Record<string, string>>): void {
    const from = buildingFolder(root, 'page');
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(join(from, name, '..'), { recursive: true });
      writeFileSync(join(from, name), text);
    }
    placeBuild(root, { from, to: join(root, 'page'), last: 'index.html' });
  }
  function runs(root: string, pid: number): void {
    mkdirSync(join(root, 'app/dist/running'), { recursive: true });
    writeFileSync(join(root, `app/dist/running/${pid}`), '');
  }
  const filesOf = (root: string) =>
    readdirSync(join(root, 'page'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.includes('.'))
      .toSorted();

  it('leaves the files that it may still load, and it goes on serving its own page', () => {
    const root = temporaryFolder();
    built(root, { 'index.html': 'old', 'assets/a-1.js': 'a1', 'assets/analysis-worker.js': 'old' });
    const served = listPageFiles(join(root, 'page'));
    runs(root, process.ppid);
    built(root, { 'index.html': 'new', 'assets/a-2.js': 'a2', 'assets/analysis-worker.js': 'new' });
    for (const [path, text] of [
      ['/', 'old'],
      ['/assets/a-1.js', 'a1'],
      ['/assets/analysis-worker.js', 'old'],
    ] as const)
      expect(String(pageAnswer(served.get(path)).body)).toContain(text);
    expect(readFileSync(join(root, 'page/index.html'), 'utf8')).toBe('new');
  });

  it('removes what is old once no other copy runs, and what a killed build left', () => {
    const root = temporaryFolder();
    built(root, { 'index.html': 'old', 'a-1.js': 'a1', 'same.svg': 'same' });
    runs(root, process.pid);
    runs(root, DEAD);
    const left = join(root, `app/dist/building-${DEAD}-page`);
    mkdirSync(left);
    built(root, { 'index.html': 'new', 'a-2.js': 'a2', 'same.svg': 'same' });
    expect(filesOf(root)).toEqual(['a-2.js', 'files.txt', 'index.html', 'same.svg']);
    expect(existsSync(left)).toBe(false);
    expect(readdirSync(join(root, 'app/dist/running'))).toEqual([String(process.pid)]);
  });
});
