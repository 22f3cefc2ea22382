import { describe, expect, it } from 'vitest';
import { loadMessages } from '../../../app/language/messages.ts';
import { translatorOf } from '../../../app/language/spoken.ts';
import { explainedPieces, explainedTitle } from '../../../renderer/language/explained.tsx';
import { TERMS } from '../../../renderer/language/term.tsx';
import { notEmpty } from '../../not-empty.ts';

const english = await translatorOf('en');
const terms = (text: string, words = english) =>
  explainedPieces(text, words).flatMap(({ text: piece, term }) => (term ? [`${term}: ${piece}`] : []));

describe('trade words in a text', () => {
  it('are each set off once, where they stand first', () => {
    expect(terms('Places and their bands; another band')).toEqual(['band: bands']);
    expect(terms('Unsaved: save a revision')).toEqual(['revision: revision']);
    expect(terms('Fitting, outfit, marker')).toEqual([]);
  });

  it('are found with the endings of a language', async () => {
    for (const language of ['de', 'hu', 'pl', 'es', 'zh'] as const) {
      const words = await translatorOf(language);
      for (const term of TERMS) {
        const word = words.say(`term.${term}`);
        expect(terms(word, words).length, `${language} ${term}`).toBeGreaterThan(0);
      }
    }
  });

  it('are not found in other words that begin alike', async () => {
    const [german, hungarian] = [await translatorOf('de'), await translatorOf('hu')];
    expect(terms('Standard, Markenzeichen', german)).toEqual([]);
    expect(terms('Jelzés, jelent, sávos', hungarian)).toEqual([]);
    expect(terms('a változatok, az ülés jele, sávban', hungarian)).toEqual([
      'revision: változatok',
      'mark: jele',
      'band: sávban',
    ]);
  });

  it('of two meanings are found only in the boat’s', async () => {
    expect(terms('Front heel ahead of mark')).toEqual(['mark: mark']);
    expect(terms('Draft amidships')).toEqual(['draft: Draft']);
    const [german, hungarian] = [await translatorOf('de'), await translatorOf('hu')];
    expect(terms('Vordere Ferse; Krängung nach rechts', german)).toEqual(['heel: Krängung']);
    expect(terms('A törzs dőlése', hungarian)).toEqual([]);
    const draft = Object.entries(await loadMessages('en')).filter(([, text]) => /\bdraft\b/i.test(text));
    for (const [key] of notEmpty(draft)) expect(key).toMatch(/^(boat|hull|photograph|quantity|term)\./);
  });

  it('leave the text as it is', () => {
    const text = 'At each: distance from stern, keel and sheer above the base line.';
    expect(
      explainedPieces(text, english)
        .map(({ text: piece }) => piece)
        .join(''),
    ).toBe(text);
    expect(explainedTitle('Aft of the mark', english)).toMatch(
      /^Aft of the mark\nMark: Line on the floorboard/,
    );
  });
});
