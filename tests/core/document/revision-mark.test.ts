import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { revisionMark } from '../../../core/document/revision-mark.ts';

describe('the mark of a revision', () => {
  it('is five signs, none of them like another when written by hand, and always the same', () => {
    fc.assert(
      fc.property(fc.uuid(), (id) => {
        expect(revisionMark(id)).toMatch(/^[2-9A-HJ-NP-Y]{5}$/);
        expect(revisionMark(id.toUpperCase())).toBe(revisionMark(id));
      }),
    );
    expect(revisionMark('00000000-0000-4000-8000-000000000000')).toBe('22222');
  });

  it('tells the revisions of a long life apart', () => {
    // Spread evenly over the first digits, as random identifiers are.
    const ids = Array.from(
      { length: 1000 },
      (_, i) => `${((i * 0x9e3779b1) >>> 0).toString(16).padStart(8, '0')}-0000-4000-8000-000000000000`,
    );
    expect(new Set(ids.map(revisionMark)).size).toBe(1000);
  });
});
