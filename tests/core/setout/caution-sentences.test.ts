import { describe, expect, it } from 'vitest';
import { cautionSentence, STANDING_CAUTIONS } from '../../../core/setout/caution-sentences.ts';
import type { SetOutCaution } from '../../../core/setout/set-out-caution.ts';
import { english, plainSpaces } from '../../english.ts';

/** One of every caution, to read their sentences. */
const EVERY: readonly SetOutCaution[] = [
  { code: 'knee-estimated', breadthMm: 108, doubtMm: 14 },
  { code: 'between-holes', fitting: 'kneePad', aftMm: 183, nearestMm: 175, number: 7 },
  { code: 'no-hole-in-travel', fitting: 'rearRest' },
  { code: 'outside-travel', fitting: 'kneePad', byMm: 15 },
  { code: 'pitch-too-fine', fitting: 'kneePad' },
  { code: 'one-bolt', fitting: 'rearRest' },
  { code: 'hole-off-board', fitting: 'rearRest' },
  { code: 'bevel', fitting: 'kneePad', byMm: 14 },
  { code: 'foot-in-hull', byMm: 22 },
  { code: 'hole-at-skin', fitting: 'kneePad', roomMm: -4 },
  { code: 'hole-at-skin', fitting: 'rearRest', roomMm: 2 },
  { code: 'overhang', part: 'rearRest', byMm: 12 },
  { code: 'board-in-hull', byMm: 64 },
  { code: 'thin-wall', wallMm: 4 },
  { code: 'thin-floor', woodMm: -3 },
  { code: 'shank-off-axis', offDeg: 11.4 },
  { code: 'recess-open-aft' },
  { code: 'no-reach', part: 'rearRest', byMm: 40 },
  { code: 'wedge-below-floor' },
  { code: 'strap', strap: 'none' },
  { code: 'strap', strap: 'fixed' },
  { code: 'not-braced' },
  { code: 'not-non-slip' },
];

describe('the sentences of cautions', () => {
  it.each(EVERY)('$code says what is the matter, whole and without a promise', (caution) => {
    const sentence = cautionSentence(caution, english, 'mm');
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/undefined|NaN|\bsafe/i);
  });

  it('are each another', () => {
    const sentences = EVERY.map((caution) => cautionSentence(caution, english, 'mm'));
    expect(new Set(sentences).size).toBe(EVERY.length);
  });

  it('carry their lengths in the sheet’s own unit', () => {
    const [knee, between] = EVERY;
    // No line ends inside a measure or between a value and its doubt.
    expect(cautionSentence(knee!, english, 'mm')).toContain('108\u{202f}mm\u{a0}±\u{a0}14\u{202f}mm');
    expect(plainSpaces(cautionSentence(between!, english, 'mm'))).toContain('7 at 175 mm');
    expect(cautionSentence(between!, english, 'in')).toContain('7 at 6\u{202f}7/8\u{202f}in');
  });

  it('never print less wood than none', () => {
    const sentence = cautionSentence(EVERY.find(({ code }) => code === 'thin-floor')!, english, 'mm');
    expect(plainSpaces(sentence)).toContain('Only 0 mm of wood');
  });

  it('say who measures what: the knee, bent, across the bone', () => {
    expect(cautionSentence(EVERY[0]!, english, 'mm')).toMatch(/^Measure the bent knee: /);
  });

  it('stand beside cautions of every sheet: rules, what lies under the board, pain, straps, water, estimates', () => {
    const all = STANDING_CAUTIONS.map((key) => english.say(key)).join(' ');
    for (const word of [/Class rules/, /underneath/, /tingling/, /open by itself/, /shore/, /estimates/]) {
      expect(all).toMatch(word);
    }
    expect(all).not.toMatch(/\bsafe/i);
  });
});
