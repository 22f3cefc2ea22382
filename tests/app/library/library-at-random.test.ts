import { describe, expect, it } from 'vitest';
import { cases, LONG } from '../../cases.ts';
import { libraryAtRandom } from '../../soak/library-run.ts';

describe('a club whose laptops are edited at random, with cuts, kills and wrong clocks', () => {
  it('ends with the same on all that may see the same: no field lost, nobody reads what is not theirs', async () => {
    const result = await libraryAtRandom({
      stores: LONG ? 8 : 3,
      changes: cases(60, 1500),
      seed: 20,
      cuts: cases(4, 40),
      laptopKills: LONG ? 6 : 0,
      serverKills: LONG ? 3 : 0,
      erasures: LONG ? 3 : 1,
    });
    expect(result).toMatchObject({ lostFields: 0, unequalStores: 0, wrongReaders: 0 });
    expect(result.cutCalls).toBeGreaterThan(0);
    expect(result.erased).toBeGreaterThan(0);
    if (LONG) expect(Math.min(result.killedLaptops, result.killedServers)).toBeGreaterThan(0);
  });
});
