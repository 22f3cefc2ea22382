import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { factText, tableLines, timeText } from './print-table.ts';
import { paragraphOf, withParagraph } from './readme-paragraph.ts';
import type { Row } from './row.ts';

const row = (name: string, medianUs: number, ratio: Row['ratio'] = null): Row => ({
  group: 'core',
  name,
  medianUs,
  p95Us: null,
  ownUs: null,
  runs: 5,
  ratio,
});
const file = {
  measuredAt: '2026-05-04T16:20:00.000Z',
  machine: { cpu: 'Made-up 9000', cores: 2, memoryGiB: 8, load: 0.3 },
  versions: { node: '24.0.0' },
  rows: [
    row('drag step, single', 123.44),
    row('drag step, four', 1500),
    row('script of a move, single, 1280 × 800', 3900),
    row('whole evaluation with spreads, single', 16_000),
    row('whole evaluation with spreads, four', 70_000),
    row('proposal, single', 80_000),
    row('proposal, four', 900_000),
    row('program start to a draggable bench, warm', 1_400_000),
  ],
  facts: [{ group: 'renderer', name: 'page script, compressed', value: 312.6, unit: 'KiB' } as const],
};

describe('the README’s table of speed', () => {
  it('tells what was measured and the machine, and leaves out what was not', () => {
    const told = paragraphOf(file);
    expect(told).toContain('everything computed anew, single | 120 µs |');
    expect(told).toContain('all of its drawing, single: script | 3.9 ms |');
    expect(told).toContain('| A proposal for a four | 900 ms |');
    expect(told).toContain('can be dragged | 1.4 s |');
    expect(told).toContain('compressed | 313 KiB |');
    expect(told).toContain('Made-up 9000, 2 cores, Node 24.0.0, 2026-05-04');
    expect(told).not.toContain('printed');
    expect(told).not.toContain('null');
  });

  it('says that the machine was busy where it was', () => {
    const crowded = { ...file, machine: { ...file.machine, load: 7.6 } };
    expect(paragraphOf(file)).not.toContain('busy');
    expect(paragraphOf(crowded)).toContain('2026-05-04, while other programs kept it busy (load 8).');
  });

  it('stands between its marks, and nothing else of the file moves', () => {
    const readme = 'before\n<!-- measured -->\nold $1\n<!-- /measured -->\nafter\n';
    const written = withParagraph(readme, 'new $& one');
    expect(written).toBe('before\n<!-- measured -->\nnew $& one\n<!-- /measured -->\nafter\n');
    expect(withParagraph(written, 'new $& one')).toBe(written);
  });

  it('has its marks in the README, and refuses a file without them', () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    expect(withParagraph(readme, 'told')).toContain('<!-- measured -->\ntold\n<!-- /measured -->');
    expect(() => withParagraph('nothing here', 'told')).toThrow(/left as it was/);
  });
});

describe('the table', () => {
  it('writes times and numbers with the unit that suits them', () => {
    expect([12.5, 3040, 1_200_000].map(timeText)).toEqual(['12.5 µs', '3.04 ms', '1.20 s']);
    expect(factText({ value: 1.0049, unit: '' })).toBe('1');
    expect(factText({ value: 98_765.4, unit: 'bytes' })).toBe('98765 bytes');
  });

  it('has one line for each row and number, with the ratio and whom to', () => {
    const rows = [row('a', 10), row('b', 75, { to: 'a', times: 7.5 })];
    const lines = tableLines({ ...file, rows });
    expect(lines.filter((line) => /^core {6}[ab]/.test(line))).toHaveLength(2);
    expect(lines.find((line) => line.startsWith('core      b'))).toContain('7.5 × a');
    expect(lines.at(-1)).toContain('313 KiB');
  });
});
