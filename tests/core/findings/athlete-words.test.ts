import { describe, expect, it } from 'vitest';
import { WORDING } from '../../../core/findings/quantity-wording.ts';

/** Words that an athlete may not be shown: jargon, and anything about body mass. */
const BARRED = [
  'flexion',
  'extension',
  'dorsi',
  'plantar',
  'pitch',
  'roll',
  'yaw',
  'trim',
  'datum',
  'barycentric',
  'centre of mass',
  'metacentr',
  'moment',
  'newton',
  'pascal',
  'deviation',
  'sigma',
  'band',
  'quantity',
  'stature',
  'mass',
  'weigh',
  'kilogram',
  'fat',
  'heavy',
  'recess',
  'oblique',
  'aft',
  'hydro',
  'safe',
];

describe('athlete wording', () => {
  it.each(Object.entries(WORDING))('%s is free of jargon and of body mass', (_, { athlete }) => {
    for (const sentence of Object.values(athlete)) {
      for (const word of BARRED) expect(sentence.toLowerCase()).not.toMatch(new RegExp(`\\b${word}`));
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
