import { describe, expect, it } from 'vitest';
import type { RankedChange } from '../../../core/trial/rank-changes.ts';
import { helpsAll, toldFirst } from '../../../core/trial/told-first.ts';

const change = (to: number, gains: number[]): RankedChange => ({
  coordinate: 'kneePad.aftM',
  from: 0,
  to,
  answers: [],
  gains,
  sideEffects: [],
  worsens: false,
  relevance: 0,
  basis: 'model',
  practiceFor: [],
  score: 10 - to,
});

describe('what is told first', () => {
  const toes = [change(1, [0.9, 0]), change(2, [0.8, 0]), change(3, [0.7, 0])];
  const bow = [change(4, [0, 0.3]), change(5, [0, 0.5])];

  it('leaves no observation without a word that any change helps with', () => {
    expect(toldFirst([...toes, ...bow], 3).map(({ to }) => to)).toEqual([1, 2, 5]);
  });

  it('is the best three where the best helps with everything', () => {
    const both = change(0, [0.5, 0.4]);
    expect(helpsAll(both)).toBe(true);
    expect(toldFirst([both, ...toes, ...bow], 3).map(({ to }) => to)).toEqual([0, 1, 2]);
  });

  it('grows past its length rather than leave an observation out', () => {
    const parted = [change(1, [1, 0, 0]), change(2, [0, 1, 0]), change(3, [0, 0, 1])];
    expect(toldFirst(parted, 2).map(({ to }) => to)).toEqual([1, 2, 3]);
  });

  it('takes the best alone before it looks at what nobody answers', () => {
    const alike = [change(1, [1, 0]), change(2, [1, 0]), change(3, [1, 0]), change(4, [0, 1])];
    expect(toldFirst(alike, 2).map(({ to }) => to)).toEqual([1, 4]);
  });

  it('is nothing of nothing, and skips what nothing helps with', () => {
    expect(toldFirst([], 3)).toEqual([]);
    expect(toldFirst(toes, 2)).toEqual(toes.slice(0, 2));
  });
});
