import { describe, expect, it } from 'vitest';
import { WORDING } from '../../../core/findings/quantity-wording.ts';
import { BARRED_WORDS } from './barred-words.ts';

describe('athlete wording', () => {
  it.each(Object.entries(WORDING))('%s is free of jargon and of body mass', (_, { athlete }) => {
    for (const sentence of Object.values(athlete)) {
      for (const word of BARRED_WORDS) expect(sentence.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
    }
  });

  it('never prints that something is safe, to anyone', () => {
    for (const { coach, athlete } of Object.values(WORDING)) {
      for (const sentence of [...Object.values(coach), ...Object.values(athlete)]) {
        expect(sentence).not.toMatch(/\bsafe/i);
      }
    }
  });
});
