import { describe, expect, it } from 'vitest';
import { speaksOfPain } from '../../../core/trial/pain-words.ts';

describe('pain in free text', () => {
  it.each([
    'Her knee hurts on the pad',
    'Painful after twenty minutes',
    'rear foot ASLEEP',
    'pins and needles in the toes',
    'lower back aches',
    'a swollen ankle',
    'Toes went numb. Bow fine.',
    'No wind. Tingling in the left foot.',
    'Not much wind, but sharp stabs in the hip',
  ])('is heard: %s', (text) => {
    expect(speaksOfPain(text)).toBe(true);
  });

  it.each([
    '',
    'Bow digs in at pace',
    'No pain at all',
    'without any pain',
    'not numb any more',
    'He never hurt himself',
    'She reached the bank',
    'a teacher watched from the beach',
  ])('is not heard: %s', (text) => {
    expect(speaksOfPain(text)).toBe(false);
  });
});
