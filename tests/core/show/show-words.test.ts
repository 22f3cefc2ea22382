import { describe, expect, it } from 'vitest';
import { englishMessages } from '../../english.ts';
import { BARRED_WORDS } from '../text/barred-words.ts';

const CAUTIONS = englishMessages('athlete-caution.');
const CHANGES = englishMessages('change.');
const EVERYTHING = [...englishMessages('athlete-page.'), ...CAUTIONS, ...CHANGES];

describe('the words of the athlete’s page', () => {
  it.each(EVERYTHING.filter(([key]) => key !== 'athlete-page.mass'))('%s is plain: %s', (_, text) => {
    for (const word of BARRED_WORDS) expect(text.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
  });

  it('are sentences: they begin with a capital and end with a stop, and none is long', () => {
    for (const [, text] of [...CAUTIONS, ...CHANGES.filter(([key]) => !key.startsWith('change.part.'))]) {
      // A part that moves begins its sentence: itself a name with a capital.
      expect(text).toMatch(/^([A-Z]|\{part\}|\{side, select, left \{\{part\}).*\.\}*$/);
      expect(text.length).toBeLessThan(130);
    }
  });

  it('defer to those who know more, and never say that anything is safe', () => {
    const cautions = CAUTIONS.map(([, text]) => text).join(' ');
    expect(cautions).toMatch(/physiotherapist or doctor/);
    expect(cautions).toMatch(/local rules/);
    expect(EVERYTHING.map(([, text]) => text).join(' ')).not.toMatch(/\bsafe/i);
  });
});
