import { describe, expect, it } from 'vitest';
import type { MergeCountsRecord } from '../../../../app/contract/safekeeping.ts';
import { bringsNothing } from '../../../../renderer/pages/archive/merge-counts.tsx';

const none = { added: 0, updated: 0, same: 3, keptNewer: 1, conflicts: 0 };
const counts = (part: object = {}): MergeCountsRecord =>
  ({
    athletes: none,
    boats: none,
    paddles: none,
    fits: none,
    revisions: none,
    trials: none,
    photos: none,
    refusedErased: 0,
    erasedHere: 0,
    ...part,
  }) as MergeCountsRecord;

describe('a file that brings nothing new', () => {
  it('is one whose every record is here already, or older than here', () => {
    expect(bringsNothing(counts())).toBe(true);
    expect(bringsNothing(counts({ boats: { ...none, added: 1 } }))).toBe(false);
    expect(bringsNothing(counts({ fits: { ...none, conflicts: 1 } }))).toBe(false);
    expect(bringsNothing(counts({ erasedHere: 1 }))).toBe(false);
  });
});
