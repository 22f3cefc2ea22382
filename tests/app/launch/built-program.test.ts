import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { isProgramBuilt } from '../../../app/launch/build-parts.ts';
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
  write('app/dist/launch/worker.js', 2000);
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
