import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crosses,
  LABEL_MARGIN,
  type LabelWish,
  overlap,
  type PlacedLabel,
  placeLabels,
} from '../../../../renderer/drawing/view/label-placer.ts';

const bounds = { left: 0, top: 0, width: 600, height: 400 };
const nothing = { hard: [], soft: [] };
const SEED = 99;

const wish = (id: string, more: Partial<LabelWish> = {}): LabelWish => ({
  id,
  anchor: { x: 300, y: 200 },
  width: 40,
  height: 18,
  bounds,
  toward: 0,
  gap: 6,
  ...more,
});

const anyWish = fc.record({
  x: fc.integer({ min: 0, max: 600 }),
  y: fc.integer({ min: 0, max: 400 }),
  width: fc.integer({ min: 12, max: 120 }),
  toward: fc.double({ min: -4, max: 4, noNaN: true }),
});

const wishesOf = (given: { x: number; y: number; width: number; toward: number }[]) =>
  given.map(({ x, y, width, toward }, k) => wish(`w${k}`, { anchor: { x, y }, width, toward }));

function expectApart(placed: readonly PlacedLabel[]): void {
  placed.forEach((a, i) => {
    for (const b of placed.slice(i + 1)) {
      expect(overlap(a.rect, b.rect)).toBe(false);
      if (a.leader) expect(crosses(a.leader, b.rect)).toBe(false);
      if (b.leader) expect(crosses(b.leader, a.rect)).toBe(false);
    }
  });
}

describe('labels never collide', () => {
  it('with one another, with leaders, or with the edge, however crowded', () => {
    fc.assert(
      fc.property(fc.array(anyWish, { minLength: 1, maxLength: 24 }), (given) => {
        const placed = placeLabels(wishesOf(given), nothing);
        expectApart(placed);
        for (const { rect } of placed) {
          expect(rect.left).toBeGreaterThanOrEqual(0);
          expect(rect.top).toBeGreaterThanOrEqual(0);
          expect(rect.left + rect.width).toBeLessThanOrEqual(600);
          expect(rect.top + rect.height).toBeLessThanOrEqual(400);
        }
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('eight round one joint: every one finds a place, at least a margin apart', () => {
    const around = (k: number) => ({
      x: 300 + 24 * Math.cos((k * Math.PI) / 4),
      y: 200 + 24 * Math.sin((k * Math.PI) / 4),
    });
    const placed = placeLabels(
      Array.from({ length: 8 }, (_, k) => wish(`w${k}`, { anchor: around(k), toward: (k * Math.PI) / 4 })),
      nothing,
    );
    expect(placed).toHaveLength(8);
    expectApart(placed);
    const [a, b] = placed.map(({ rect }) => rect);
    const gap = Math.max(
      b!.left - a!.left - a!.width,
      a!.left - b!.left - b!.width,
      b!.top - a!.top - a!.height,
      a!.top - b!.top - b!.height,
    );
    expect(gap).toBeGreaterThanOrEqual(LABEL_MARGIN - 1e-9);
  });

  it('with what must not be covered', () => {
    const hard = [{ left: 290, top: 150, width: 120, height: 100 }];
    const [placed] = placeLabels([wish('a')], { hard, soft: [] });
    expect(overlap(placed!.rect, hard[0]!)).toBe(false);
  });
});

describe('where a label goes', () => {
  it('stands where it would like to when there is room, without a leader', () => {
    const [placed] = placeLabels([wish('a')], nothing);
    expect(placed!.rect.left).toBeCloseTo(306, 9);
    expect(placed!.leader).toBeNull();
  });

  it('steps aside from the figure, and draws a leader when that takes it away from its anchor', () => {
    const soft = [-60, -30, 0, 30, 60].map((dy) => ({ x: 300, y: 200 + dy, radius: 30 }));
    const [placed] = placeLabels([wish('a')], { hard: [], soft });
    for (const { x, y, radius } of soft) {
      const dx = Math.max(placed!.rect.left - x, 0, x - placed!.rect.left - placed!.rect.width);
      const dy = Math.max(placed!.rect.top - y, 0, y - placed!.rect.top - placed!.rect.height);
      expect(Math.hypot(dx, dy)).toBeGreaterThanOrEqual(radius - 1e-9);
    }
    expect(placed!.leader?.[0]).toEqual({ x: 300, y: 200 });
  });

  it('leaves a label out only where it is larger than its bounds', () => {
    expect(placeLabels([wish('a', { width: 700 })], nothing)).toEqual([]);
    const hard = [{ left: -10, top: -10, width: 700, height: 500 }];
    expect(placeLabels([wish('a')], { hard, soft: [] })).toHaveLength(1);
  });

  it('follows its anchor while the hand moves, and looks again once its place has become worse', () => {
    const first = placeLabels([wish('a')], nothing);
    const before = { placed: new Map(first.map((label) => [label.id, label])), following: true };
    const [moved] = placeLabels([wish('a', { anchor: { x: 330, y: 180 } })], nothing, before);
    expect(moved!.rect.left - first[0]!.rect.left).toBeCloseTo(30, 9);
    expect(moved!.rect.top - first[0]!.rect.top).toBeCloseTo(-20, 9);
    const soft = [{ x: 360, y: 180, radius: 30 }];
    const [away] = placeLabels([wish('a', { anchor: { x: 330, y: 180 } })], { hard: [], soft }, before);
    expect(away!.rect).not.toEqual(moved!.rect);
    const [inside] = placeLabels([wish('a', { anchor: { x: 598, y: 180 } })], nothing, before);
    expect(inside!.rect.left + inside!.rect.width).toBeLessThanOrEqual(600);
  });

  it('gives equal answers to equal questions', () => {
    fc.assert(
      fc.property(fc.array(anyWish, { minLength: 1, maxLength: 12 }), (given) => {
        expect(placeLabels(wishesOf(given), nothing)).toEqual(placeLabels(wishesOf(given), nothing));
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('keeps a label where it was in a drag, so long as that is nearly as good', () => {
    const soft = [{ x: 330, y: 196, radius: 12 }];
    const first = placeLabels([wish('a')], { hard: [], soft });
    const before = { placed: new Map(first.map((label) => [label.id, label])), following: false };
    const moved = placeLabels(
      [wish('a', { anchor: { x: 301, y: 200 } })],
      { hard: [], soft: [{ x: 331, y: 204, radius: 12 }] },
      before,
    );
    expect(Math.abs(moved[0]!.rect.top - first[0]!.rect.top)).toBeLessThan(9);
  });
});
