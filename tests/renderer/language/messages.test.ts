import { describe, expect, it } from 'vitest';
import * as german from '../../../app/language/catalogues/de.ts';
import * as english from '../../../app/language/catalogues/en.ts';
import * as spanish from '../../../app/language/catalogues/es.ts';
import * as hungarian from '../../../app/language/catalogues/hu.ts';
import * as polish from '../../../app/language/catalogues/pl.ts';
import * as chinese from '../../../app/language/catalogues/zh.ts';
import { allOf, type MessageKey } from '../../../app/language/messages.ts';
import { translator } from '../../../app/language/translator.ts';
import { say, sayCount } from '../../../renderer/language/messages.ts';
import { sources } from './page-sources.ts';

/** Beginnings of the two sentences of a finding, which `core/text/sentences.ts` puts together from a table. */
const FINDINGS = ['finding.', 'told.'];
const MESSAGES = allOf(english);
const KEYS = Object.keys(MESSAGES);

/** Keys named in the sources, and the beginnings of keys that are put together there. */
function usesInSources(): { whole: Set<string>; beginnings: string[] } {
  const texts = ['renderer', 'app', 'core']
    .flatMap(sources)
    .filter(({ path }) => !path.startsWith('catalogues/'))
    .map(({ text }) => text)
    .join('\n');
  const whole = new Set(
    [...texts.matchAll(/['"`]([a-z][\w-]*(?:\.[\w-]+)+)['"`]|\bsay\('([\w-]+)'/gi)].map(
      ([, key, said]) => (key ?? said)!,
    ),
  );
  const beginnings = [
    ...FINDINGS,
    ...[...texts.matchAll(/`([a-z][\w.-]*[.-])\$\{/gi)].map((match) => match[1]!),
  ];
  return { whole, beginnings };
}

describe('the catalogue', () => {
  it('fills places with what it is given', () => {
    expect(say('do.undo', { step: 'move the knee pad' })).toBe('Undo: move the knee pad');
    expect(say('centimetre.title', { step: '1\u{202f}cm' })).toBe('Effect of 1\u{202f}cm');
  });

  it('ends no line with a Polish word of one letter', () => {
    const messages = allOf(polish);
    const said = translator('pl', messages);
    expect(said.say('show.said.not-yet')).toBe(
      'Jeszcze nie zmieniono. Porozmawiaj o\u{a0}tym z\u{a0}trenerem.',
    );
    expect(said.say('consent.missing.list', { first: 'A', second: 'B' })).toBe('A i\u{a0}B');
    for (const key of Object.keys(messages).filter((one) => !messages[one]!.includes('{')))
      expect(said.say(key as MessageKey), key).not.toMatch(/ [aiouwz] \p{L}/u);
  });

  it('ends no line between a number and its unit: a space that does not break parts them', () => {
    expect(say('under-way.bow.periods', { pitch: '0.41', heave: '0.40', stroke: '1.00' })).toBe(
      'Periods: pitch 0.41\u{202f}s, heave 0.40\u{202f}s, stroke 1.00\u{202f}s.',
    );
    expect(say('band-source.trimCatch')).toMatch(/^10\u{202f}mm down/u);
    expect(say('move.in', { part: 'Knee pad', by: '1', to: '2' })).toBe('Knee pad 1 in: 2');
  });

  it('ends no line between a value and its doubt, in any language', () => {
    const catalogues = {
      en: english,
      de: german,
      hu: hungarian,
      es: spanish,
      pl: polish,
      zh: chinese,
    } as const;
    // Whatever place a message has, a figure stands in it.
    const figures = new Proxy<Record<string, string>>({}, { has: () => true, get: () => '0.56' });
    for (const tag of ['en', 'de', 'hu', 'es', 'pl', 'zh'] as const) {
      const messages = allOf(catalogues[tag]);
      const said = translator(tag, messages);
      const doubted = Object.keys(messages).filter((key) => messages[key]!.includes('±'));
      expect(doubted.length).toBeGreaterThan(20);
      for (const key of doubted)
        expect(said.say(key as MessageKey, figures), key).not.toMatch(/[\d°%N] ±|± /u);
    }
    expect(say('under-way.with-doubt', { value: '0.56', doubt: '0.06' })).toBe('0.56\u{a0}±\u{a0}0.06');
  });

  it('counts', () => {
    expect(sayCount('fits.revisions', 1)).toBe('1 revision');
    expect(sayCount('fits.revisions', 0)).toBe('0 revisions');
    expect(sayCount('fits.revisions', 12)).toBe('12 revisions');
  });

  it('has no empty text and none with stray blanks or straight quotation marks', () => {
    for (const text of Object.values(MESSAGES)) {
      expect(text).not.toBe('');
      expect(text).toBe(text.trim());
      expect(text).not.toMatch(/["]/);
    }
  });

  it('never promises what nobody can: that a fit is safe', () => {
    for (const text of Object.values(MESSAGES)) expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i);
  });

  it('holds no text that nothing shows', () => {
    const { whole, beginnings } = usesInSources();
    const shown = (key: string) =>
      whole.has(key) || beginnings.some((beginning) => key.startsWith(beginning));
    expect(KEYS.filter((key) => !shown(key))).toEqual([]);
  });
});
