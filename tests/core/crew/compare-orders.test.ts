import { describe, expect, it } from 'vitest';
import { permutations, rankOrders } from '../../../core/crew/compare-orders.ts';

describe('permutations', () => {
  it.each([
    [1, 1],
    [2, 2],
    [3, 6],
    [4, 24],
  ])('%i seats give %i orders, each once', (n, count) => {
    const all = permutations(n);
    expect(all).toHaveLength(count);
    expect(new Set(all.map((o) => o.join())).size).toBe(count);
    for (const order of all) expect(order.toSorted()).toEqual([...Array(n).keys()]);
  });
});

describe('rankOrders', () => {
  it('puts the lower score first, then fewer serious findings', () => {
    const row = (score: number, serious: number) => ({
      order: [],
      trim: 0,
      offCentre: 0,
      sinkage: 0,
      water: null,
      sameSideNeighbours: 0,
      serious,
      score,
    });
    expect(rankOrders([row(2, 0), row(1, 3), row(1, 1)]).map((r) => [r.score, r.serious])).toEqual([
      [1, 1],
      [1, 3],
      [2, 0],
    ]);
  });
});
