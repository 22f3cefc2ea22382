import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

/** Folders that import one another: all of them, sorted by name. */
export type Circle = readonly string[];

/** Every import and re-export of another file of the house, `import type` and `typeof import()` included. */
const IMPORTS = /(?:\bfrom\s*|\bimport\s*\(?\s*|\bnew URL\(\s*)'(\.{1,2}\/[^']+)'/g;

/** Source files of a folder, paths from `root`; nothing that was built. */
function sources(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/(^|\/)dist\//.test(name))
    .map((name) => join(folder, name));
}

/**
 * Which folder imports which, from the sources below `start`. `folderOf` names the folder of a file (a path from `root`), or
 * null for one that counts for none.
 */
export function folderImports(
  root: string,
  start: string,
  folderOf: (file: string) => string | null,
): Map<string, Set<string>> {
  const graph = new Map<string, Set<string>>();
  for (const file of sources(root, start)) {
    const from = folderOf(file);
    if (from === null) continue;
    const to = graph.get(from) ?? new Set<string>();
    graph.set(from, to);
    const text = readFileSync(join(root, file), 'utf8');
    for (const [, path] of text.matchAll(IMPORTS)) {
      const target = folderOf(relative(root, resolve(root, dirname(file), path!)));
      if (target !== null && target !== from) to.add(target);
    }
  }
  return graph;
}

/** The folders of `graph` that reach one another, group by group (strongly connected components), sorted. */
export function circlesIn(graph: ReadonlyMap<string, ReadonlySet<string>>): Circle[] {
  const reach = new Map([...graph.keys()].map((folder) => [folder, reachOf(graph, folder)]));
  const groups = new Map<string, Circle>();
  for (const [folder, reached] of reach) {
    if (!reached.has(folder)) continue;
    const group = [...reached].filter((other) => reach.get(other)?.has(folder)).sort();
    groups.set(group.join(), group);
  }
  return [...groups.keys()].sort().map((key) => groups.get(key)!);
}

function reachOf(graph: ReadonlyMap<string, ReadonlySet<string>>, from: string): Set<string> {
  const reached = new Set<string>();
  const next = [...(graph.get(from) ?? [])];
  for (let folder = next.pop(); folder !== undefined; folder = next.pop()) {
    if (reached.has(folder)) continue;
    reached.add(folder);
    next.push(...(graph.get(folder) ?? []));
  }
  return reached;
}
