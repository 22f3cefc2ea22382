import { describe, expect, it } from 'vitest';
import { shownPlaces } from '../../../core/units/shown-places.ts';

describe('shownPlaces', () => {
  // Particle Data Group, Review of Particle Physics, Introduction, “Rounding”: 0.827 ± 0.119 is written 0.83 ± 0.12, and
  // 0.827 ± 0.367 is written 0.8 ± 0.4. Its limits are 355 and 950 (from memory).
  it.each([
    [0.119, 2],
    [0.367, 1],
    [0.354, 2],
    [0.355, 1],
    [0.95, 1],
    [1.4, 1],
    [8.3, 0],
    [14, 0],
    [35.4, 0],
    [36, -1],
    [83, -1],
    [120, -1],
    [420, -2],
  ])('a doubt of %f allows %i places', (doubt, places) => {
    expect(shownPlaces(doubt, 6)).toBe(places);
  });

  it('is no finer than asked, and as asked without a doubt', () => {
    expect(shownPlaces(0.0001, 1)).toBe(1);
    for (const none of [0, Number.NaN, Number.POSITIVE_INFINITY]) expect(shownPlaces(none, 1)).toBe(1);
  });
});
