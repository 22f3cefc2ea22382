import { describe, expect, it } from 'vitest';
import { rankStock } from '../../../core/paddle/rank-stock.ts';

const stock = [
  { name: 'Rowan', lengthM: 1.68, bladeLengthM: 0.6 },
  { name: 'Alder', lengthM: 1.7, bladeLengthM: 0.56 },
  { name: 'Beech', lengthM: 1.72, bladeLengthM: 0.6 },
  { name: 'Larch', lengthM: 1.7, bladeLengthM: 0.6 },
];

describe('rankStock', () => {
  const ranked = rankStock(stock, { lengthM: 1.7, bladeLengthM: 0.6 });

  it('puts the wanted paddle first, and equally near ones in the order of their names', () => {
    // Alder: 4 cm of blade count half, 2 cm; Beech and Rowan are 2 cm longer and shorter.
    expect(ranked.map((r) => r.paddle.name)).toEqual(['Larch', 'Alder', 'Beech', 'Rowan']);
    expect(ranked[0]!.apart).toBe(0);
  });

  it('says how much longer or shorter each is', () => {
    const rowan = ranked.find((r) => r.paddle.name === 'Rowan')!;
    expect(rowan.longerBy).toBeCloseTo(-0.02, 12);
    expect(rowan.bladeLongerBy).toBe(0);
    expect(ranked.find((r) => r.paddle.name === 'Alder')!.bladeLongerBy).toBeCloseTo(-0.04, 12);
  });

  it('leaves the list it was given alone and ranks an empty one', () => {
    const before = stock.map((p) => p.name);
    rankStock(stock, { lengthM: 1.72, bladeLengthM: 0.6 });
    expect(stock.map((p) => p.name)).toEqual(before);
    expect(rankStock([], { lengthM: 1.7, bladeLengthM: 0.6 })).toEqual([]);
  });

  it('does not depend on the order of the list', () => {
    const names = rankStock([...stock].reverse(), { lengthM: 1.7, bladeLengthM: 0.6 }).map(
      (r) => r.paddle.name,
    );
    expect(names).toEqual(ranked.map((r) => r.paddle.name));
  });
});
