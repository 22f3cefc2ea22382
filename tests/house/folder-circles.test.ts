import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { circlesIn, folderImports } from './folder-circles.ts';

const root = join(import.meta.dirname, '../..');

/** The first folder in `start` that a file lies in; null for files that lie in `start` itself or elsewhere. */
const firstFolderIn = (start: string) => (file: string) => {
  const [folder, below] = file.startsWith(`${start}/`) ? file.slice(start.length + 1).split('/') : [];
  return folder && below ? folder : null;
};

/** Every folder by itself, at any depth: a folder and the folders in it are different ones. */
const ownFolder = (file: string) => dirname(file);

describe('folders import one another in no circle, type imports included', () => {
  it.each(['core', 'app', 'renderer', 'renderer/pages'])('in %s, by its first folders', (start) => {
    expect(circlesIn(folderImports(root, start, firstFolderIn(start)))).toEqual([]);
  });

  it.each(['core', 'app', 'renderer'])('in %s, at any depth', (start) => {
    expect(circlesIn(folderImports(root, start, ownFolder))).toEqual([]);
  });
});

describe('the check itself', () => {
  const graph = (edges: Record<string, string[]>) =>
    new Map(Object.entries(edges).map(([from, to]) => [from, new Set(to)]));

  it('finds circles of two and of more, and tells apart those that do not touch', () => {
    const edges = { a: ['b'], b: ['c'], c: ['a', 'd'], d: ['e'], e: ['d'], f: ['a'] };
    expect(circlesIn(graph(edges))).toEqual([
      ['a', 'b', 'c'],
      ['d', 'e'],
    ]);
  });

  it('finds none where there is none', () => {
    expect(circlesIn(graph({ a: ['b', 'c'], b: ['c'], c: [] }))).toEqual([]);
  });

  it('reads the imports of the house: the renderer’s pages use its drawing', () => {
    const imports = folderImports(root, 'renderer', firstFolderIn('renderer'));
    expect([...imports.get('pages')!]).toContain('drawing');
  });
});
