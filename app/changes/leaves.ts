import type { Leaves } from './record-state.ts';

/** What a document is made of, as far as two people may change parts of it at once. Patterns: `*` is any key of a list. */
export interface DocumentShape {
  /** Objects whose fields are fields of their own. Everything else is one field, however much it holds. */
  readonly within: readonly string[];
  /** Lists whose elements are fields of their own, and what each element is known by. */
  readonly lists: Readonly<Record<string, (element: never, index: number) => string>>;
  /** Fields that only make sense together and are one field, called as the first of them. */
  readonly together: readonly (readonly string[])[];
  /** Lists that must be there even when they are empty. */
  readonly needed?: readonly string[];
}

type Json = Record<string, unknown>;

/** Takes a document apart; gives the JSON text of every field by its path. */
export function leavesOf(document: object, shape: DocumentShape): Map<string, string> {
  const leaves = new Map<string, string>();
  takeApart(withTogether(document as Json, shape), { path: [], pattern: '' }, { shape, leaves });
  return leaves;
}

/** Puts a document together again. Lists come in the order of their keys, what was empty is left out. */
export function documentOf(leaves: Leaves, shape: DocumentShape): Json {
  const root = new Map<string, unknown>();
  for (const path of [...leaves.keys()].sort()) {
    const steps = path.split('/').map(decoded);
    let here = root;
    for (const step of steps.slice(0, -1)) {
      if (!(here.get(step) instanceof Map)) here.set(step, new Map());
      here = here.get(step) as Map<string, unknown>;
    }
    here.set(steps.at(-1)!, JSON.parse(leaves.get(path)!));
  }
  const document = puttingTogether(root, '', shape) as Json;
  for (const [first] of shape.together) {
    const group = document[first!];
    if (group === undefined) continue;
    delete document[first!];
    Object.assign(document, group);
  }
  for (const name of shape.needed ?? []) document[name] ??= [];
  return document;
}

function withTogether(document: Json, { together }: DocumentShape): Json {
  const grouped = { ...document };
  for (const names of together) {
    const group = Object.fromEntries(
      names.flatMap((name) => (name in document ? [[name, document[name]]] : [])),
    );
    for (const name of names) delete grouped[name];
    if (Object.keys(group).length > 0) grouped[names[0]!] = group;
  }
  return grouped;
}

interface Place {
  readonly path: readonly string[];
  readonly pattern: string;
}

function takeApart(
  value: unknown,
  { path, pattern }: Place,
  into: { shape: DocumentShape; leaves: Map<string, string> },
): void {
  if (value === undefined) return;
  const { shape, leaves } = into;
  const keyOf = shape.lists[pattern];
  if (keyOf && Array.isArray(value)) {
    for (const [key, element] of keyed(value, keyOf)) {
      takeApart(element, { path: [...path, key], pattern: `${pattern}/*` }, into);
    }
    return;
  }
  const isWithin = pattern === '' || shape.within.includes(pattern);
  if (!isWithin || typeof value !== 'object' || value === null || Array.isArray(value)) {
    leaves.set(path.map(encoded).join('/'), JSON.stringify(value));
    return;
  }
  for (const [name, field] of Object.entries(value)) {
    takeApart(field, { path: [...path, name], pattern: pattern === '' ? name : `${pattern}/${name}` }, into);
  }
}

/** Elements by their keys; a second one of the same key gets a number behind it. */
function keyed(list: readonly unknown[], keyOf: (element: never, index: number) => string) {
  const elements = new Map<string, unknown>();
  for (const [index, element] of list.entries()) {
    const key = keyOf(element as never, index);
    let free = key;
    for (let n = 2; elements.has(free); n++) free = `${key} #${n}`;
    elements.set(free, element);
  }
  return elements;
}

function puttingTogether(value: unknown, pattern: string, shape: DocumentShape): unknown {
  if (!(value instanceof Map)) return value;
  const inner = (key: string) => {
    if (pattern in shape.lists) return `${pattern}/*`;
    return pattern === '' ? key : `${pattern}/${key}`;
  };
  const entries = [...value].map(([key, held]) => [key, puttingTogether(held, inner(key), shape)] as const);
  return pattern in shape.lists ? entries.map(([, element]) => element) : Object.fromEntries(entries);
}

/** RFC 6901: `~` and `/` in a name of a path. */
function encoded(name: string): string {
  return name.replaceAll('~', '~0').replaceAll('/', '~1');
}

function decoded(step: string): string {
  return step.replaceAll('~1', '/').replaceAll('~0', '~');
}
