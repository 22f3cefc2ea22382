import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../../app/language/format.ts';
import { evaluateFit } from '../../../../../core/evaluation/evaluator.ts';
import { strokeCycle } from '../../../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../../../core/stroke/stroke-of-fit.ts';
import { spreadLabels, strokePlots } from '../../../../../renderer/bench/tabs/stroke/stroke-plots.ts';
import { readingText } from '../../../../../renderer/bench/tabs/stroke/stroke-slider.tsx';
import { strokeTableRows } from '../../../../../renderer/bench/tabs/stroke/stroke-table-rows.ts';
import { instantName } from '../../../../../renderer/language/instant-name.ts';
import { exampleFit, exampleSeat } from '../../../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const inches = formatFor({ length: 'in', mass: 'kg', decimal: 'comma' });
const fit = exampleFit();
const rows = strokeCycle(strokeOfFit(fit, evaluateFit(fit)), 8);
const plots = strokePlots(rows, { seat: 0, side: 'left', format })!;
const plain = (text: string) => text.replaceAll('\u{2212}', '-').replace(',', '.');

describe('strokePlots', () => {
  it('plots the core’s own numbers, one for each row, in the shown unit', () => {
    const row = rows[8]!;
    if (row.afloat.kind !== 'afloat') throw new Error('not afloat');
    const at = (plot: string, line: string) =>
      plots.find((p) => p.id === plot)!.lines.find((l) => l.id === line)!.values;
    for (const { lines } of plots) for (const { values } of lines) expect(values).toHaveLength(rows.length);
    expect(at('trim', 'trim')[8]).toBeCloseTo(row.afloat.bowOverStern * 1000, 9);
    expect(at('freeboard', 'stern')[8]).toBeCloseTo(row.afloat.freeboardStern * 100, 9);
    expect(at('travel', 'ahead')[8]).toBeCloseTo(row.seats[0]!.travel.x * 1000, 9);
    expect(at('loads', 'knee')[8]).toBeCloseTo(row.seats[0]!.loadsN!.knee, 9);
    expect(at('loads', 'blade')[12]).toBeCloseTo(rows[12]!.seats[0]!.bladeForceN, 9);
  });

  it('a right-hander’s travel out is mirrored, everything else the same', () => {
    const right = exampleFit([exampleSeat({ side: 'right' })]);
    const mirrored = strokePlots(strokeCycle(strokeOfFit(right, evaluateFit(right)), 8), {
      seat: 0,
      side: 'right',
      format,
    })!;
    mirrored.forEach(({ lines }, p) => {
      lines.forEach(({ values }, l) => {
        values.forEach((value, i) => {
          expect(value).toBeCloseTo(plots[p]!.lines[l]!.values[i]!, 4);
        });
      });
    });
  });

  it('is null for an empty seat', () => {
    expect(strokePlots(rows, { seat: 3, side: 'left', format })).toBeNull();
  });

  it('reads in inches where those are read', () => {
    const [travel] = strokePlots(rows, { seat: 0, side: 'left', format: inches })!;
    expect(travel!.unit).toBe('in');
    expect(travel!.lines[0]!.values[8]! * 25.4).toBeCloseTo(plots[0]!.lines[0]!.values[8]!, 6);
  });
});

describe('spreadLabels', () => {
  it('keeps labels apart, in their order and in the field, and leaves alone what has room', () => {
    expect(spreadLabels([10, 50], { apart: 14, most: 84 })).toEqual([10, 50]);
    expect(spreadLabels([80, 82, 84], { apart: 14, most: 84 })).toEqual([56, 70, 84]);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 84, noNaN: true }), { minLength: 1, maxLength: 4 }),
        (wished) => {
          const placed = spreadLabels(wished, { apart: 14, most: 84 });
          const sorted = [...placed].sort((a, b) => a - b);
          sorted.forEach((y, i) => {
            if (i > 0) expect(y - sorted[i - 1]!).toBeGreaterThanOrEqual(14 - 1e-9);
          });
          expect(Math.max(...placed)).toBeLessThanOrEqual(84);
          expect(Math.min(...placed)).toBeGreaterThanOrEqual(0);
        },
      ),
      { seed: 8, numRuns: 300 },
    );
  });
});

describe('words of the stroke', () => {
  it('names the instants and what lies between them', () => {
    expect([0, 0.5, 1, 1.5, 2, 2.5, 3].map(instantName)).toEqual([
      'ready',
      'reaching for the catch',
      'catch',
      'in the drive',
      'exit',
      'on the way back',
      'ready',
    ]);
  });

  it('reads trim and least freeboard of a row, or that it does not float', () => {
    const row = rows[8]!;
    if (row.afloat.kind !== 'afloat') throw new Error('not afloat');
    expect(readingText(row, format)).toMatch(
      /^catch: bow (\d+.mm (up|down)|level), lowest freeboard \d+\.\d.cm$/,
    );
    const sunk = { ...row, afloat: { kind: 'overloaded', massKg: 300, mostKg: 200 } } as const;
    expect(readingText(sunk, format)).toBe('catch: the boat does not float');
  });

  it('the table has every line at ready, catch, mid-drive and exit, and its swing', () => {
    const table = strokeTableRows(plots, { perLeg: 8, format });
    expect(table.map(({ id }) => id)).toEqual([
      'travel.ahead',
      'travel.up',
      'travel.out',
      'trim.trim',
      'freeboard.bow',
      'freeboard.stern',
      'loads.knee',
      'loads.frontFoot',
      'loads.rearFoot',
      'loads.blade',
    ]);
    const blade = table.at(-1)!;
    expect(blade.at[0]).toBe('0');
    expect(Number(plain(blade.at[2]!))).toBe(Math.round(16.3 * 80 ** (2 / 3)));
    const trim = table[3]!;
    const values = rows.map((r) => (r.afloat.kind === 'afloat' ? r.afloat.bowOverStern * 1000 : Number.NaN));
    expect(Number(plain(trim.at[1]!))).toBe(Math.round(values[8]!));
    expect(Number(plain(trim.swing))).toBe(Math.round(Math.max(...values) - Math.min(...values)));
  });
});
