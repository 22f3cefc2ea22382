import { parseSync } from 'oxc-parser';
import { describe, expect, it } from 'vitest';
import { englishMessages } from '../english.ts';
import { notEmpty } from '../not-empty.ts';
import { sources } from '../renderer/language/page-sources.ts';
import { placesOf } from './catalogue.ts';

const english = new Map(englishMessages(''));

interface Said {
  readonly at: string;
  readonly key: string;
  /** Names of the values given; null where they are not written out. */
  readonly given: readonly string[] | null;
}

type Node = Readonly<Record<string, unknown>> & { readonly type?: string };

/** Every `say('key', { … })` and `words.say(…)` of a source whose key is written out. */
function saidIn(path: string, text: string): Said[] {
  const found: Said[] = [];
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) {
      for (const one of node) visit(one);
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const one = node as Node;
    const said = one.type === 'CallExpression' ? saidBy(one) : null;
    if (said) found.push({ at: path, ...said });
    for (const value of Object.values(one)) visit(value);
  };
  visit(parseSync(path, text).program);
  return found;
}

function saidBy({ callee, arguments: args }: Node): Omit<Said, 'at'> | null {
  const called = callee as Node;
  const name = called.type === 'MemberExpression' ? (called.property as Node).name : called.name;
  if (name !== 'say' && name !== 'sayCount') return null;
  const [key, values] = args as Node[];
  if (key?.type !== 'Literal' || typeof key.value !== 'string') return null;
  if (name === 'sayCount') return { key: key.value, given: ['count'] };
  if (!values) return { key: key.value, given: [] };
  if (values.type !== 'ObjectExpression') return { key: key.value, given: null };
  const properties = values.properties as Node[];
  if (properties.some(({ type }) => type !== 'Property')) return { key: key.value, given: null };
  return {
    key: key.value,
    given: properties.map((one) => String((one.key as Node).name ?? (one.key as Node).value)),
  };
}

describe('what the program says', () => {
  const said = ['core', 'app', 'renderer'].flatMap((folder) =>
    sources(folder)
      .filter(({ path }) => !/(^|[\\/])dist[\\/]/.test(path))
      .flatMap(({ path, text }) => saidIn(`${folder}/${path}`, text)),
  );

  it('is in the catalogue, key by key', () => {
    expect(notEmpty(said).filter(({ key }) => !english.has(key))).toEqual([]);
  });

  it('fills every place of its message, and gives nothing that has no place', () => {
    const wrong = said.flatMap(({ at, key, given }) => {
      const text = english.get(key);
      if (!given || text === undefined) return [];
      const places = new Set(placesOf(text).map((place) => place.split(':')[0]!));
      const empty = [...places].filter((place) => !given.includes(place));
      const idle = given.filter((name) => !places.has(name));
      return empty.length + idle.length > 0 ? [`${at}: ${key}: empty ${empty}, no place ${idle}`] : [];
    });
    expect(said.length).toBeGreaterThan(1000);
    expect(wrong).toEqual([]);
  });
});
