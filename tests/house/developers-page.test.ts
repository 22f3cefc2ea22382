import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';
import { folderImports } from './folder-circles.ts';

const ROOT = join(import.meta.dirname, '../..');
const page = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
/** Made by a build, or only served. */
const NOT_SOURCE = ['dist', 'public'];

describe('the page for developers', () => {
  it.each(['core', 'app', 'renderer', 'tests'])('names every folder of %s', (folder) => {
    const folders = readdirSync(join(ROOT, folder), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !NOT_SOURCE.includes(entry.name))
      .map(({ name }) => name);
    const unnamed = notEmpty(folders).filter(
      (name) =>
        !page.includes(`\`${name}\``) && !page.includes(`${folder}/${name}`) && !page.includes(`\`${name}/`),
    );
    expect(unnamed).toEqual([]);
  });

  it('names no file that is not there', () => {
    const files = [...page.matchAll(/`((?:core|app|renderer|tests)\/[\w./-]+\.tsx?)`/g)].map(
      ([, file]) => file!,
    );
    for (const file of notEmpty(files)) expect(() => readFileSync(join(ROOT, file)), file).not.toThrow();
  });

  it('has beside it the promises, each with a test that is there', () => {
    const promises = readFileSync(join(ROOT, 'SECURITY.md'), 'utf8')
      .split('\n')
      .filter((line) => line.startsWith('| ') && !line.startsWith('| promise'));
    for (const promise of notEmpty(promises)) {
      const named = [...promise.matchAll(/`(tests\/[\w./-]+)`/g)].map(([, path]) => path!);
      for (const path of notEmpty(named)) expect(existsSync(join(ROOT, path)), path).toBe(true);
    }
  });

  it.each(['core', 'renderer'])(
    'has the folders of %s in an order in which each imports only upwards',
    (start) => {
      const table = page.slice(page.indexOf(`### The ${start}, lowest first`)).split('\n\n')[0]!;
      const rows = table.split('\n').filter((line) => line.startsWith('| `'));
      const named = rows.map((row) =>
        [...row.split('|')[1]!.matchAll(/`([\w-]+)`/g)].map(([, name]) => name!),
      );
      const level = new Map(named.flatMap((names, row) => names.map((name) => [name, row] as const)));
      const graph = folderImports(
        ROOT,
        start,
        (file) => new RegExp(`^${start}/([^/]+)/`).exec(file)?.[1] ?? null,
      );
      const downwards = [...graph].flatMap(([from, to]) =>
        [...to]
          .filter((one) => (level.get(one) ?? 99) > (level.get(from) ?? -1))
          .map((one) => `${from} → ${one}`),
      );
      expect(graph.size).toBeGreaterThan(10);
      expect(downwards).toEqual([]);
    },
  );
});
