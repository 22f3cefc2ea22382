import { describe, expect, it } from 'vitest';
import { englishMessages } from '../../english.ts';
import { BARRED_WORDS } from './barred-words.ts';

/** A message without what chooses in it. */
const spokenPart = (text: string) => text.replace(/\{\w+, select, /g, '');

describe('athlete wording', () => {
  it.each(englishMessages('told.'))('%s is free of jargon and of body mass', (_, text) => {
    for (const word of BARRED_WORDS)
      expect(spokenPart(text).toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
  });

  it('never prints that something is safe, to anyone', () => {
    for (const [, text] of [...englishMessages('told.'), ...englishMessages('finding.')])
      expect(text).not.toMatch(/\bsafe/i);
  });
});
