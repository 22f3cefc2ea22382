import { describe, expect, it } from 'vitest';
import { COORDINATES } from '../../core/document/coordinates.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { propose } from '../../core/optimise/propose.ts';
import { cases } from '../cases.ts';
import { evolvedChange } from './proposal-by-evolution.ts';
import { disturbedFits } from './proposal-disturbed.ts';

const SEED = 7;
const COUNT = cases(1, 25);
const EVOLUTION = { members: 40, generations: 60 } as const;

describe(`the least change of ${COUNT} disturbed singles against differential evolution (Storn and Price 1997)`, () => {
  const told = disturbedFits(SEED, COUNT).map((fit, i) => {
    const evaluator = createEvaluator();
    const { moves, uncleared } = propose(evaluator, fit);
    const size = moves.reduce(
      (sum, m) => sum + Math.abs(m.to - m.from) / COORDINATES[m.coordinate].moveUnit,
      0,
    );
    const ours = { serious: uncleared.length, size, moved: moves.length };
    return { ours, evolved: evolvedChange(evaluator, fit, { seed: i + 1, ...EVOLUTION }) };
  });
  const sum = (of: (one: (typeof told)[number]) => number) => told.reduce((all, one) => all + of(one), 0);

  it('leaves no more findings at change or stop', () => {
    expect(sum(({ ours }) => ours.serious)).toBeLessThanOrEqual(sum(({ evolved }) => evolved.serious));
  });

  it('is at most 1.1 times its size and moves at most 1.25 times as many coordinates', () => {
    expect(sum(({ evolved }) => evolved.size)).toBeGreaterThan(0);
    expect(sum(({ ours }) => ours.size)).toBeLessThanOrEqual(1.1 * sum(({ evolved }) => evolved.size));
    expect(sum(({ ours }) => ours.moved)).toBeLessThanOrEqual(1.25 * sum(({ evolved }) => evolved.moved));
  });
});
