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

  it('names no file, no folder and no command that is not there', () => {
    const tree = ['core', 'app', 'renderer', 'tests', 'assets', '.ci', '.github'].flatMap((top) =>
      readdirSync(join(ROOT, top), { recursive: true, encoding: 'utf8' }).map((path) => `${top}/${path}`),
    );
    const there = new Set(tree.map((path) => `/${path}`));
    const names = new Set([...tree.map((path) => path.split('/').at(-1)!), ...readdirSync(ROOT)]);
    const quoted = [...page.matchAll(/`([\w./-]+)`/g)].map(([, text]) => text!);
    // What a build makes is not there before the first one.
    const kept = quoted.filter((text) => !text.includes('/dist/'));
    const paths = kept.filter((text) => /^(core|app|renderer|tests|assets)\/./.test(text));
    for (const path of notEmpty(paths)) expect(there, path).toContain(`/${path.replace(/\/$/, '')}`);
    const files = quoted.filter((text) => /\w\.(tsx?|json|md|css|sql)$/.test(text));
    for (const file of notEmpty(files)) expect(names, file).toContain(file.split('/').at(-1));
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    const commands = [...page.matchAll(/npm run ([\w:-]+)/g)].map(([, name]) => name!);
    for (const name of notEmpty(commands)) expect(Object.keys(scripts)).toContain(name);
  });

  it('names no value, function or table that the sources do not have', () => {
    const sources = ['core', 'app', 'renderer', 'tests'].flatMap((top) =>
      readdirSync(join(ROOT, top), { recursive: true, encoding: 'utf8' })
        .filter((path) => /\.(tsx?|sql)$/.test(path) && !/(^|\/)dist\//.test(path))
        .map((path) => readFileSync(join(ROOT, top, path), 'utf8')),
    );
    const text = sources.join('\n');
    const named = [...page.matchAll(/`([a-z]\w*[A-Z]\w*|[A-Z]+_[A-Z_]+)`/g)].map(([, word]) => word!);
    for (const word of notEmpty(named)) expect(text.includes(word), word).toBe(true);
  });

  it('has beside it the promises, each with a test that is there', () => {
    const promises = readFileSync(join(ROOT, '.github/SECURITY.md'), 'utf8')
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
