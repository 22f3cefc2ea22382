import { describe, expect, it } from 'vitest';
import { WORDING } from '../../../core/text/quantity-wording.ts';
import { spoken, type Words } from '../../../core/text/wording.ts';
import { BARRED_WORDS } from './barred-words.ts';

/** A sentence in every form that its value and severity give it. */
const everyForm = (words: Words) =>
  [-1, 0, 1].flatMap((value) =>
    (['good', 'stop'] as const).map((severity) => spoken(words, { value, severity })),
  );

describe('athlete wording', () => {
  it.each(Object.entries(WORDING))('%s is free of jargon and of body mass', (_, { athlete }) => {
    for (const sentence of Object.values(athlete).flatMap(everyForm)) {
      for (const word of BARRED_WORDS) expect(sentence.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
    }
  });

  it('never prints that something is safe, to anyone', () => {
    for (const { coach, athlete } of Object.values(WORDING)) {
      for (const sentence of [...Object.values(coach), ...Object.values(athlete)].flatMap(everyForm)) {
        expect(sentence).not.toMatch(/\bsafe/i);
      }
    }
  });
});
