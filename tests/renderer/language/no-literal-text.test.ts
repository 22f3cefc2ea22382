import { parseAst } from 'vite';
import { describe, expect, it } from 'vitest';
import { pageSources } from './page-sources.ts';

/** Attributes that a person reads or hears. */
const READ = [
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'alt',
  'title',
  'placeholder',
  'label',
  'hint',
  'name',
];

/** Something to read: two letters together. Marks such as × and − are drawings, not words. */
const WORDS = /\p{L}{2,}/u;

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

function* nodes(value: unknown): Generator<Node> {
  if (Array.isArray(value)) for (const item of value) yield* nodes(item);
  else if (value !== null && typeof value === 'object') {
    if (typeof (value as Node).type === 'string') yield value as Node;
    for (const field of Object.values(value)) if (typeof field === 'object') yield* nodes(field);
  }
}

/** Texts for people that stand in JSX instead of the catalogue. */
function literalTexts(source: string): string[] {
  const found: string[] = [];
  for (const node of nodes(parseAst(source, { lang: 'tsx' }))) {
    if (node.type === 'JSXText' && WORDS.test(String(node.value))) found.push(String(node.value).trim());
    if (node.type !== 'JSXAttribute') continue;
    const name = (node.name as { name: string }).name;
    const value = node.value as { type: string; value?: unknown } | null;
    if (READ.includes(name) && value?.type === 'Literal' && WORDS.test(String(value.value))) {
      found.push(`${name}="${String(value.value)}"`);
    }
  }
  return found;
}

describe('the texts of the page', () => {
  it('are found where they hide', () => {
    expect(literalTexts('const a = <p title="Knee pad">{b} Take it <i>×</i></p>;')).toEqual([
      'title="Knee pad"',
      'Take it',
    ]);
  });

  it('stand in the one catalogue, never in JSX', () => {
    const hidden = pageSources()
      .filter(({ path }) => path.endsWith('.tsx'))
      .flatMap(({ path, text }) => literalTexts(text).map((literal) => `${path}: ${literal}`));
    expect(hidden).toEqual([]);
  });
});
