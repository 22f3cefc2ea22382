import { describe, expect, it } from 'vitest';
import { toBlock } from '../../../core/setout/block-frame.ts';
import { cutListBlock, fixingBlock, forceNote } from '../../../core/setout/fixing-block.ts';
import { fixingsOf, lengthFor, padForce } from '../../../core/setout/fixing-schedule.ts';
import { hollowLevel } from '../../../core/setout/recess-floor.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ROWS_OF_HOLES } from './invented-set-out.ts';

const out = inventedSetOut();

describe('fixings', () => {
  it('are never longer than what they go into, nor does a hole come into the recess', () => {
    for (let k = 0; k < cases(4, 60); k++) {
      const kneePad = {
        ...out.work.seat.kneePad,
        heightM: 0.02 + 0.007 * (k % 15),
        recessDepthM: 0.01 + 0.004 * (k % 6),
        foamM: 0.002 * (k % 8),
      };
      const made = inventedSetOut({ seat: { kneePad }, hardware: k % 2 === 0 ? {} : ROWS_OF_HOLES });
      const { pad } = made.fittings;
      const board = 1000 * made.work.boat.floorboard.thicknessM;
      for (const { block, kind, at, depthMm, lengthMm } of notEmpty(fixingsOf(made.work))) {
        const washer = kind === 'bolt' ? 1.6 : 0;
        if (lengthMm !== null) expect(lengthMm - board - washer).toBeLessThanOrEqual(depthMm + 1e-6);
        if (block !== 'kneePad') continue;
        const foam = 1000 * made.work.options.foamM;
        const wood = pad.bearingHeight + hollowLevel(pad.recess, toBlock(pad.place, at), foam);
        expect(depthMm).toBeLessThan(wood);
      }
    }
  });

  it('have the longest length sold that fits: 35 through 8 mm of board and 30 into wood', () => {
    expect(lengthFor({ kind: 'screw', throughMm: 8, depthMm: 30 })).toBe(35);
    expect(lengthFor({ kind: 'bolt', throughMm: 8, depthMm: 30.4 })).toBe(40);
    expect(lengthFor({ kind: 'screw', throughMm: 8, depthMm: 1 })).toBeNull();
  });

  it('have room told to the skin and to the board’s edge', () => {
    const block = fixingBlock(out);
    const rows = block.kind === 'table' ? block.cells : [];
    expect(rows).toHaveLength(fixingsOf(out.work).length);
    expect(rows[0]![0]).toBe('Pad: wood screw 4\u{a0}×\u{a0}35\u{202f}mm from below');
  });
});

describe('what a fixing bears', () => {
  it('holds 1300 N in 8 mm of plywood with a bolt of 6 (EN 1995-1-1, 8.36, worked by hand)', () => {
    const bolted = inventedSetOut({ hardware: ROWS_OF_HOLES });
    // 0.11 × 0.94 × 450 = 46.53 N/mm²; × 6 × 8 = 2233 N; × 0.7 / 1.2 = 1303 N.
    expect(padForce(bolted.work, 2).holdsN).toBeCloseTo(1303, 0);
  });

  it('holds 890 N with a screw of 4, worked likewise', () => {
    // 0.11 × 0.96 × 450 = 47.52 N/mm²; × 4 × 8 = 1521 N; × 0.7 / 1.2 = 887 N.
    expect(padForce(out.work, 4).holdsN).toBeCloseTo(887, 0);
  });

  it('is shared among the fixings, and its margin is said', () => {
    const [two, four] = [2, 4].map((count) => padForce(out.work, count));
    expect(two!.eachN).toBeCloseTo(2 * four!.eachN, 9);
    expect(two!.margin! * 2).toBeCloseTo(four!.margin!, 9);
    expect(forceNote(out).join(' ')).toContain('times that');
  });
});

describe('the cut list', () => {
  it('has every part with size, material and count', () => {
    const block = cutListBlock(out);
    const rows = block.kind === 'table' ? block.cells : [];
    expect(rows.map(([part]) => part)).toEqual([
      'Pad block',
      'Foam of the recess',
      'Rear rest',
      'Non-slip face',
      'Wood screws',
    ]);
    expect(rows[0]![1]).toBe('260 × 160 × 130');
    expect(rows.at(-1)!.at(-1)).toBe(String(fixingsOf(out.work).length));
  });
});
