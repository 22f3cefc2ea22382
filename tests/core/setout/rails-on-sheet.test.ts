import { describe, expect, it } from 'vitest';
import { fixingBlock, forceNote } from '../../../core/setout/fixing-block.ts';
import { fixingsOf } from '../../../core/setout/fixing-schedule.ts';
import { floorboardTemplate } from '../../../core/setout/floorboard-template.ts';
import { orderOfWork } from '../../../core/setout/order-of-work.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut } from './invented-set-out.ts';
import { circlesOn } from './read-shapes.ts';

type Ends = { readonly aftEndXM?: number; readonly apartM?: number; readonly floorWidthM?: number };

function onRails({ apartM = 0.06, floorWidthM, ...ends }: Ends = {}) {
  const rails = [{ fitting: 'kneePad' as const, apartM, heightM: 0.012, holeM: 0.0085, ...ends }];
  return inventedSetOut({ hardware: { rails }, ...(floorWidthM && { floorWidthM }) });
}

const codes = (out: ReturnType<typeof onRails>) => out.cautions.map(({ code }) => code);

describe('the sheet of a pad on rails', () => {
  it('lists its bolts in the rails, at the rails’ own diameter', () => {
    const out = onRails();
    const pad = out.holes.find(({ fitting }) => fitting === 'kneePad')!;
    expect(pad.bolts.map(([, y]) => y)).toEqual([30, -30]);
    expect(pad.diameterMm).toBe(8.5);
    const holes = sheetBlocks(out).find(({ heading }) => heading.startsWith('Holes: knee pad'))!;
    const words = JSON.stringify(holes);
    expect(words).toContain('30 left');
    expect(words).toContain('30 right');
    expect(words).toContain('"bolt"');
    expect(codes(out)).toContain('on-rails');
    expect(codes(out)).not.toContain('off-rails');
  });

  it('drills nothing in the board for it, however near the board’s edge its bolts stand', () => {
    const out = onRails({ floorWidthM: 0.066 });
    expect(out.holes.find(({ fitting }) => fitting === 'kneePad')!.bolts).toHaveLength(2);
    const off = out.cautions.flatMap((caution) =>
      caution.code === 'hole-off-board' ? [caution.fitting] : [],
    );
    expect(off).toEqual(['rearRest']);
    const { quantities, findings } = out.work.report;
    expect(quantities.filter(({ id }) => id.endsWith('HolesOnBoard')).map(({ id }) => id)).toEqual([
      'restHolesOnBoard',
    ]);
    expect(findings.filter(({ id }) => id === 'padHolesOnBoard')).toEqual([]);
    const steps = orderOfWork(out).join(' ');
    expect(steps).toContain('for the rest');
    expect(steps).not.toContain('for the pad');
    const drills = (of: typeof out) => circlesOn(floorboardTemplate(of).shapes, 'drillNow').length;
    expect([drills(inventedSetOut()), drills(out)]).toEqual([6, 2]);
    for (const { block, kind, edgeMm, lengthMm } of notEmpty(fixingsOf(out.work))) {
      expect(kind).toBe(block === 'kneePad' ? 'rails' : 'screw');
      if (block === 'kneePad') expect([edgeMm, lengthMm]).toEqual([null, null]);
    }
    const text = JSON.stringify(fixingBlock(out));
    expect(text).toContain('Pad: bolt for rails');
    expect(forceNote(out)).toEqual([]);
  });

  it('says when the rails end before the bolts, or run beside the block', () => {
    expect(codes(onRails({ aftEndXM: -0.1 }))).toContain('off-rails');
    expect(codes(onRails({ apartM: 0.4 }))).toContain('off-rails');
    // With one rail under it the block would turn.
    expect(codes(onRails({ apartM: 0.12 }))).toContain('one-bolt');
  });
});
