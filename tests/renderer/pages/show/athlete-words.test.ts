import { describe, expect, it } from 'vitest';
import SHOW from '../../../../assets/messages/en/show.json' with { type: 'json' };
import { BARRED_WORDS } from '../../../core/text/barred-words.ts';

/** What the coach chooses before the athlete looks; it may name what is hidden. */
const OF_THE_COACH = /^showing\./;
/** Words that the program's own people use and an athlete does not, over and above those barred everywhere. */
const OF_THE_PROGRAM = [
  'revision',
  'draft',
  'profile',
  'section',
  'render',
  'slider',
  'model',
  'estimate',
  'export',
  'fit\\b',
];

const SHOWN = Object.entries(SHOW).filter(([key]) => !OF_THE_COACH.test(key));

function barredIn(text: string, words: readonly string[]): string[] {
  return words.filter((word) => new RegExp(`\\b${word}`).test(text.toLowerCase()));
}

describe('what an athlete reads around the picture', () => {
  it('is there to be read', () => {
    expect(SHOWN.length).toBeGreaterThan(12);
  });

  it.each(SHOWN)('%s has no word of jargon: %s', (_, text) => {
    expect(barredIn(text, [...BARRED_WORDS, ...OF_THE_PROGRAM])).toEqual([]);
  });

  it('is short: no more than twelve words at once', () => {
    for (const [key, text] of SHOWN) {
      const longest = Math.max(...text.split(/[.:?!] /).map((sentence) => sentence.split(' ').length));
      expect(longest, key).toBeLessThanOrEqual(12);
    }
  });

  it('would be caught if it had: the list finds jargon in a sentence', () => {
    expect(barredIn('The trim moment exceeds its tolerance.', BARRED_WORDS)).toEqual([
      'trim',
      'moment',
      'tolerance',
    ]);
    expect(barredIn('You weigh 72 kg.', BARRED_WORDS)).toHaveLength(1);
  });
});

describe('what an athlete reads', () => {
  it('never names body mass', () => {
    expect(SHOWN.filter(([, text]) => /mass|weigh/i.test(text))).toEqual([]);
  });
});
