import { describe, expect, it } from 'vitest';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { inventedSetOut } from './invented-set-out.ts';

type Ends = { readonly aftEndXM?: number; readonly apartM?: number };

function onRails({ apartM = 0.06, ...ends }: Ends = {}) {
  const rails = [{ fitting: 'kneePad' as const, apartM, heightM: 0.012, holeM: 0.0085, ...ends }];
  return inventedSetOut({ hardware: { rails } });
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

  it('says when the rails end before the bolts, or run beside the block', () => {
    expect(codes(onRails({ aftEndXM: -0.1 }))).toContain('off-rails');
    expect(codes(onRails({ apartM: 0.4 }))).toContain('off-rails');
    // With one rail under it the block would turn.
    expect(codes(onRails({ apartM: 0.12 }))).toContain('one-bolt');
  });
});
