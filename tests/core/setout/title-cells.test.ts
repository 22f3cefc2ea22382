import { describe, expect, it } from 'vitest';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import type { SheetStamp } from '../../../core/setout/sheet-stamp.ts';
import { titleCells } from '../../../core/setout/title-cells.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedSetOut } from './invented-set-out.ts';

const stamp: SheetStamp = {
  fitName: 'Spring',
  boatName: 'Grey Heron',
  athleteName: 'Žofie Łuczak',
  revision: 7,
  revisionName: 'pad back',
  keptAt: '2026-05-04T23:59:00Z',
};

describe('the title block', () => {
  it('stands in the title block with scale, units and paper', () => {
    const cells = titleCells(inventedSetOut(), { stamp, paper: 'A4', scale: '1:10', count: '1 of 3' });
    const words = cells.map(({ strong, more }) => `${strong}; ${more}`).join(' | ');
    expect(words).toContain('Žofie Łuczak; kneels on left knee');
    expect(words).toContain('Grey Heron; Spring');
    expect(words).toContain('revision 7, pad back; saved 2026-05-04');
    expect(words).toContain('drawing 1:10 on A4; millimetres; print at 100\u{a0}%');
    expect(words).toContain('1 of 3');
  });

  it('names no scale where there is no drawing, and inches where they are used', () => {
    const inches = inventedSetOut({ options: { units: 'in' } });
    const cells = titleCells(inches, { stamp, paper: 'Letter', scale: null, count: '2 of 3' });
    expect(cells[3]).toMatchObject({ strong: 'tables, Letter', more: 'inches to 1/32; print at 100\u{a0}%' });
  });

  it('says which seat of a crew boat it is', () => {
    const fit = exampleFit([
      exampleSeat(),
      exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) }),
    ]);
    const options = { units: 'mm' } as const;
    const stern = setOutSeat({ fit, report: valuesOf(fit), index: 1, options, words: english })!;
    const [who] = titleCells(stern, { stamp, paper: 'A4', scale: '1:10', count: '1 of 3' });
    expect(who!.more).toBe('kneels on right knee, seat 2 of 2; left is port');
  });

  it('gives every cell a share of the width', () => {
    const cells = titleCells(inventedSetOut(), { stamp, paper: 'A4', scale: null, count: '1 of 1' });
    for (const { share, label } of notEmpty(cells)) {
      expect(share).toBeGreaterThan(10);
      expect(label).toMatch(/^[A-Z]/);
    }
  });
});
