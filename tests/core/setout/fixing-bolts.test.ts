import { describe, expect, it } from 'vitest';
import { toBlock } from '../../../core/setout/block-frame.ts';
import { padBolts, padScrews, pairAcross, restBolts, restScrews } from '../../../core/setout/fixing-bolts.ts';
import { inventedSetOut } from './invented-set-out.ts';

/** Wood that common practice leaves between a bolt and an edge, millimetres. */
const EDGE_MM = 20;
const base = { x: 0, halfLength: 100, halfWidth: 70 };

describe('a pair of bolts', () => {
  it('lies straight across the boat, whatever way the block is turned', () => {
    for (const turn of [-0.6, 0, 0.21, 1.1]) {
      const [a, b] = pairAcross({ origin: [-175, 35], turn }, base);
      expect(a![0]).toBeCloseTo(b![0], 9);
      expect((a![1] + b![1]) / 2).toBeCloseTo(35, 9);
    }
  });

  it('keeps its distance from every edge of a turned block', () => {
    for (const turn of [-1.2, -0.5, 0, 0.3, 0.9, 1.5]) {
      const place = { origin: [0, 0], turn } as const;
      for (const bolt of pairAcross(place, base)) {
        const [x, y] = toBlock(place, bolt);
        expect(base.halfLength - Math.abs(x)).toBeGreaterThanOrEqual(EDGE_MM - 1e-9);
        expect(base.halfWidth - Math.abs(y)).toBeGreaterThanOrEqual(EDGE_MM - 1e-9);
      }
    }
  });

  it('is never wider than helps', () => {
    const [a, b] = pairAcross({ origin: [0, 0], turn: 0 }, { ...base, halfWidth: 300 });
    expect(a![1] - b![1]).toBeCloseTo(90, 9);
  });

  it('becomes one bolt in the middle of a block too narrow for two', () => {
    expect(pairAcross({ origin: [10, 20], turn: 0 }, { ...base, halfWidth: 30 })).toEqual([[10, 20]]);
  });
});

describe('bolts and screws of the made-up seat', () => {
  const { pad, rest } = inventedSetOut().fittings;

  it('go through the pad under the knee, and through the rest under its middle', () => {
    const under = padBolts(pad).reduce((sum, [x]) => sum + x / 2, 0);
    expect(under).toBeCloseTo(pad.place.origin[0], 9);
    for (const bolt of restBolts(rest)) {
      const [x] = toBlock(rest.place, bolt);
      expect(x).toBeLessThan(rest.footAhead);
      expect(x).toBeGreaterThan(-rest.depthBehind);
    }
  });

  it('are four screws near the pad’s corners, inside them', () => {
    const screws = padScrews(pad).map((screw) => toBlock(pad.place, screw));
    expect(screws).toHaveLength(4);
    for (const [x, y] of screws) {
      expect(pad.halfWidth - Math.abs(y)).toBeCloseTo(EDGE_MM, 6);
      expect(Math.min(pad.foreEnd - x, x - pad.aftEnd)).toBeCloseTo(EDGE_MM, 6);
    }
    const quadrants = new Set(screws.map(([x, y]) => `${Math.sign(x)} ${Math.sign(y)}`));
    expect(quadrants.size).toBe(4);
  });

  it('are two screws along the rest, inside it', () => {
    const screws = restScrews(rest).map((screw) => toBlock(rest.place, screw));
    expect(screws).toHaveLength(2);
    expect(screws[0]![1]).toBeCloseTo(-screws[1]![1], 9);
    expect(rest.halfWidth - Math.abs(screws[0]![1])).toBeGreaterThanOrEqual(EDGE_MM - 1e-9);
  });
});
