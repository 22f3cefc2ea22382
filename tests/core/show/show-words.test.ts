import { describe, expect, it } from 'vitest';
import { everyChangeSentence } from '../../../core/show/change-words.ts';
import { SHOW_CAUTIONS, SHOW_WORDS } from '../../../core/show/show-words.ts';
import { BARRED_WORDS } from '../text/barred-words.ts';

const EVERYTHING = [...Object.values(SHOW_WORDS), ...SHOW_CAUTIONS, ...everyChangeSentence()];

describe('the words of Show', () => {
  it.each(EVERYTHING)('%j is plain', (sentence) => {
    for (const word of BARRED_WORDS) expect(sentence.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
  });

  it('are sentences: they begin with a capital and end with a stop, and none is long', () => {
    for (const sentence of [...SHOW_CAUTIONS, ...everyChangeSentence()]) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(sentence.length).toBeLessThan(130);
    }
  });

  it('defer to those who know more, and never say that anything is safe', () => {
    expect(SHOW_CAUTIONS.join(' ')).toMatch(/physiotherapist or doctor/);
    expect(SHOW_CAUTIONS.join(' ')).toMatch(/local rules/);
    expect(EVERYTHING.join(' ')).not.toMatch(/\bsafe/i);
  });
});
