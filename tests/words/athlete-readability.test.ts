import readability from 'text-readability';
import { describe, expect, it } from 'vitest';
import { englishMessages } from '../english.ts';
import { spokenPart } from './catalogue.ts';

/** What an athlete reads: findings, changes, headings and cautions. */
const READ = ['told.', 'change.', 'athlete-page.', 'athlete-caution.'].flatMap(englishMessages);

/** Grade of the whole by Flesch and Kincaid (1975): years of school that a reader needs. A twelve-year-old is in the sixth. */
const GRADE = 6;

describe('what an athlete reads', () => {
  it('is read by a twelve-year-old', () => {
    const text = READ.map(([, message]) => `${spokenPart(message).replace(/[.:]?$/, '')}.`).join(' ');
    expect(readability.fleschKincaidGrade(text)).toBeLessThanOrEqual(GRADE);
  });

  it('has no long sentence', () => {
    for (const [key, message] of READ) {
      const longest = Math.max(
        ...spokenPart(message)
          .split(/[.:;?!]/)
          .map((part) => part.trim().split(/\s+/).length),
      );
      expect(longest, key).toBeLessThanOrEqual(22);
    }
  });

  it('would be found too hard: the coach’s sources are', () => {
    const text = englishMessages('band-source.')
      .map(([, message]) => `${message}.`)
      .join(' ');
    expect(readability.fleschKincaidGrade(text)).toBeGreaterThan(GRADE);
  });
});
