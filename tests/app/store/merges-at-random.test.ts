import { setImmediate } from 'node:timers/promises';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../cases.ts';
import { mergesAtRandom } from '../../soak/merges.ts';

describe('stores that are edited at random and meet at random, their clocks off by days', () => {
  it('end with the same content, and lose no field without a shown conflict', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 2, max: 5 }), fc.nat(), async (stores, seed) => {
        // A run takes seconds: between two the process answers whoever asks it.
        await setImmediate();
        const result = mergesAtRandom({ stores, edits: cases(60, 240), seed });
        expect(result).toMatchObject({ lostFields: 0, unequalStores: 0 });
      }),
      { numRuns: cases(3, 60), seed: 17, endOnFailure: true },
    );
  });
});
