import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';
import { manyHomes, missedRules } from './page-styles.ts';

const RENDERER = join(import.meta.dirname, '../../renderer');
const ORDER = '@layer base, controls, pages, bench;';

const sheets = readdirSync(RENDERER, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.css') && !/^(dist|theme)[\\/]/.test(file))
  .map((file) => ({ file, text: readFileSync(join(RENDERER, file), 'utf8') }));

/** A page's style sheet is fetched with the page, maybe before the theme's: without the order its layer would come first of all. */
describe('style sheets beside their pages', () => {
  it('name the order of layers before their first rule, and have every rule in a layer', () => {
    for (const { file, text } of notEmpty(sheets)) {
      const bare = text.replace(/\/\*.*?\*\//gs, '').trim();
      expect(bare.startsWith(ORDER), file).toBe(true);
      const heads = bare.slice(ORDER.length).match(/^[^\s}].*\{$/gm) ?? [];
      expect(
        heads.filter((head) => !head.startsWith('@layer ')),
        file,
      ).toEqual([]);
    }
  });

  it('keep the theme for what every page shares', () => {
    const theme = readdirSync(join(RENDERER, 'theme')).filter((file) => file.endsWith('.css'));
    expect(theme.sort()).toEqual([
      'controls.css',
      'fonts.css',
      'ink-and-paper.css',
      'pages.css',
      'plots.css',
      'sheet.css',
      'theme.css',
    ]);
  });

  it('give a class its look in one place; elsewhere it is only placed', () => {
    const { shared, elsewhere } = manyHomes(RENDERER);
    expect([...shared]).toEqual([]);
    expect(elsewhere).toEqual([]);
  });

  it('come with every page that writes their classes, whichever page is opened first', () => {
    expect(missedRules(RENDERER)).toEqual([]);
  });
});
