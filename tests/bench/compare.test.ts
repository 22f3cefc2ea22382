import { describe, expect, it } from 'vitest';
import { type BenchFile, joined } from './bench-file.ts';
import { changes, onlyInOne } from './compare.ts';
import type { Fact, Row } from './row.ts';

const row = (name: string, medianUs: number): Row => ({
  group: 'core',
  name,
  medianUs,
  p95Us: medianUs,
  ownUs: null,
  runs: 1,
  ratio: null,
});
const fact = (name: string, value: number): Fact => ({ group: 'core', name, value, unit: 'bytes' });

function file(rows: Row[], facts: Fact[] = []): BenchFile {
  const machine = { cpu: 'made up', cores: 1, memoryGiB: 1, load: 0 };
  return { measuredAt: '2026-05-04T16:20:00.000Z', machine, versions: {}, rows, facts };
}

const shares = (list: readonly { name: string; share: number }[]) =>
  list.map(({ name, share }) => [name, Math.round(100 * share)]);

describe('two runs compared', () => {
  it('flags what changed by more than 15 %, the slower first, and nothing else', () => {
    const before = file([row('a', 100), row('b', 100), row('c', 100), row('d', 100)]);
    const after = file([row('a', 80), row('b', 114), row('c', 130), row('d', 86), row('new', 5)]);
    expect(shares(changes(before, after).times)).toEqual([
      ['core c', 30],
      ['core a', -20],
    ]);
  });

  it('compares the thread’s own time where there is one: a busy machine slows nothing then', () => {
    const before = file([{ ...row('a', 100), ownUs: 90 }]);
    const after = file([{ ...row('a', 400), ownUs: 95 }]);
    expect(changes(before, after).times).toEqual([]);
  });

  it('holds apart rows of one name in two parts of the program', () => {
    const before = file([row('a', 100)]);
    const after = file([{ ...row('a', 200), group: 'store' }]);
    expect(changes(before, after).times).toEqual([]);
    expect(onlyInOne(before, after)).toEqual(['core a', 'store a']);
  });

  it('looks at the numbers that are not times by themselves, and at one that was nothing', () => {
    const before = file([], [fact('a', 1000), fact('b', 0), fact('c', 0)]);
    const after = file([], [fact('a', 2000), fact('b', 8), fact('c', 0)]);
    const { times, facts } = changes(before, after);
    expect(times).toEqual([]);
    expect(facts.map(({ name, share }) => [name, share])).toEqual([
      ['core b', Number.POSITIVE_INFINITY],
      ['core a', 1],
    ]);
  });
});

describe('runs of different parts', () => {
  it('stand in one table with the last one’s time', () => {
    const later = { ...file([row('b', 2)], [fact('c', 3)]), measuredAt: '2026-05-05T09:00:00.000Z' };
    const all = joined([file([row('a', 1)]), later]);
    expect(all.rows.map(({ name }) => name)).toEqual(['a', 'b']);
    expect(all.facts.map(({ name }) => name)).toEqual(['c']);
    expect(all.measuredAt).toBe(later.measuredAt);
  });

  it('of different machines do not', () => {
    const other = { ...file([]), machine: { cpu: 'another', cores: 1, memoryGiB: 1, load: 0 } };
    expect(() => joined([file([]), other])).toThrow('different machines');
    expect(() => joined([])).toThrow('nothing was read');
  });
});
