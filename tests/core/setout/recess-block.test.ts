import { describe, expect, it } from 'vitest';
import { recessBlock } from '../../../core/setout/recess-block.ts';
import type { SheetBlock } from '../../../core/setout/sheet-block.ts';
import { inventedSetOut } from './invented-set-out.ts';

const out = inventedSetOut();
const cellsOf = (block: SheetBlock) => (block.kind === 'table' ? block.cells : []);

describe('the block of knee and recess', () => {
  it('prints the estimate with how sure it is, and what to do', () => {
    expect(cellsOf(recessBlock(out))[0]).toEqual([
      'Knee breadth, across the bone',
      '107',
      '14',
      'estimate: measure before carving',
    ]);
  });

  it('says measured when somebody has', () => {
    const measured = recessBlock(inventedSetOut({ options: { kneeBreadthM: 0.104 } }));
    expect(cellsOf(measured)[0]).toEqual(['Knee breadth, across the bone', '104', '3', 'measured']);
  });

  it('gives recess and cut at the block’s top, the cut wider by the foam, and no cut without foam', () => {
    const [, recess, cut] = cellsOf(recessBlock(out)).map(([, size]) => Number(size));
    expect(cut! - recess!).toBeGreaterThan(20);
    expect(cellsOf(recessBlock(inventedSetOut({ options: { foamM: 0 } })))).toHaveLength(2);
  });

  it('gives the recess as the chord of the knee with its ease, both worked by hand', () => {
    const { breadthMm } = out.knee;
    const { kneeDepth } = out.fittings.pad.recess;
    // Four millimetres of ease on each side, 20 deep: an ellipse's chord.
    const half = (breadthMm / 2 + 4) * Math.sqrt(1 - ((kneeDepth - 20) / kneeDepth) ** 2);
    expect(cellsOf(recessBlock(out))[1]![1]).toBe(String(Math.round(2 * half)));
  });

  it('writes inches where the sheet does', () => {
    const inches = recessBlock(inventedSetOut({ options: { units: 'in', kneeBreadthM: 0.1016 } }));
    expect(inches.heading).toBe('Knee and recess at K, in');
    expect(cellsOf(inches)[0]![1]).toBe('4');
  });
});
