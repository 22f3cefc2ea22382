import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packedViews } from '../../../core/setout/pack-views.ts';

const size = (width: number, height: number) => ({ width, height });

describe('views packed on a page', () => {
  it('stand under one another where the room is tall, beside one another where it is wide', () => {
    const two = [size(100, 50), size(100, 50)];
    expect(packedViews(two, size(110, 120))).toEqual([
      [0, 0],
      [0, 58],
    ]);
    expect(packedViews(two, size(210, 60))).toEqual([
      [0, 0],
      [108, 0],
    ]);
  });

  it('find no place where they need more room than there is', () => {
    expect(packedViews([size(100, 50), size(100, 50)], size(200, 100))).toBeNull();
    expect(packedViews([size(100, 50)], size(99, 200))).toBeNull();
  });

  it('find a place in another order than they are named in', () => {
    // The tall one first leaves no room beside it for the wide one; the two small ones share what is left.
    expect(packedViews([size(40, 40), size(100, 40), size(52, 40)], size(100, 88))).not.toBeNull();
  });

  it('never lie over one another or outside, 8 mm apart at least', () => {
    const view = fc.record({
      width: fc.integer({ min: 5, max: 150 }),
      height: fc.integer({ min: 5, max: 150 }),
    });
    let packed = 0;
    fc.assert(
      fc.property(fc.array(view, { minLength: 1, maxLength: 3 }), (views) => {
        const places = packedViews(views, size(185, 253));
        if (!places) return;
        packed++;
        places.forEach(([right, down], k) => {
          const { width, height } = views[k]!;
          expect(right).toBeGreaterThanOrEqual(0);
          expect(right + width).toBeLessThanOrEqual(185 + 1e-6);
          expect(down + height).toBeLessThanOrEqual(253 + 1e-6);
          places.slice(k + 1).forEach(([otherRight, otherDown], j) => {
            const other = views[k + 1 + j]!;
            const apart = Math.max(
              otherRight - right - width,
              right - otherRight - other.width,
              otherDown - down - height,
              down - otherDown - other.height,
            );
            expect(apart).toBeGreaterThanOrEqual(8 - 1e-6);
          });
        });
      }),
      { seed: 20261126, numRuns: 200 },
    );
    expect(packed).toBeGreaterThan(50);
  });
});
