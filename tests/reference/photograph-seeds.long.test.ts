import { expect, it } from 'vitest';
import { cases } from '../cases.ts';
import { expectHonest, median, pictures, SAGITTAL } from './photograph-pictures.ts';

/**
 * Seeds of more pictures held against their stated doubt; no seed was left out. By chance alone (binomial, 500 draws at 95 %) a
 * share is within 95 ± 1.9 points 19 times in 20, so about one in twenty angles of a single seed lies outside 93 to 97 %. The three
 * seeds are judged together: 1,500 pictures are within 95 ± 1.1 points.
 */
const SEEDS = [31, 32, 33];

it('postures of three more seeds of pictures lie within their stated doubt', () => {
  const taken = SEEDS.map((seed) => pictures(cases(1, 500), { oblique: 35, seed }));
  for (const name of SAGITTAL) {
    const seen = taken.flatMap((of) => of[name]);
    expectHonest(seen, name);
    expect(median(seen.map(({ offDeg }) => offDeg)), name).toBeLessThanOrEqual(3);
  }
});
