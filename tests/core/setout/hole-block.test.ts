import { describe, expect, it } from 'vitest';
import { fixingBlock } from '../../../core/setout/fixing-block.ts';
import { holeBlock } from '../../../core/setout/hole-block.ts';
import { plainSpaces } from '../../english.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';

const out = inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } });

describe('the block of holes', () => {
  it('lists every hole of a row by its number, the one in use marked', () => {
    const holes = holeBlock(out.holes[0]!, out);
    if (holes.kind !== 'grid') throw new Error('it is no grid');
    expect(plainSpaces(holes.heading)).toBe('Holes: knee pad, 6.5 mm, every 25 mm');
    expect(holes.entries.filter(({ now }) => now)).toEqual([{ label: '7', value: '175 aft', now: true }]);
    expect(holes.sentence).toContain('Two rows, 80 left and 10 right of the centreline.');
    expect(plainSpaces(holes.sentence!)).toContain('Hole n sets the knee n × 25 mm aft. Used: hole 7.');
  });

  it('says that a setting stands between two holes', () => {
    const { seat } = out.work;
    const between = inventedSetOut({
      hardware: ROWS_OF_HOLES,
      seat: { kneePad: { ...seat.kneePad, aftM: 0.185 } },
    });
    expect(holeBlock(between.holes[0]!, between)).toMatchObject({
      sentence: expect.stringContaining('Between two holes'),
    });
  });

  it('lists screws by their places where there is no pitch', () => {
    const screwed = inventedSetOut({ hardware: { padHolePitchM: null } });
    const holes = holeBlock(screwed.holes[0]!, screwed);
    if (holes.kind !== 'grid') throw new Error('it is no grid');
    expect(holes.entries).toHaveLength(4);
    for (const { label, value } of holes.entries) {
      expect(label).toBe('screw');
      expect(value).toMatch(/^\d+ aft, \d+ (left|right)$/);
    }
  });

  it('keeps the hardware’s own pitch in millimetres where inches are asked for', () => {
    const inches = inventedSetOut({ hardware: ROWS_OF_HOLES, options: { units: 'in' } });
    expect(plainSpaces(holeBlock(inches.holes[0]!, inches).heading)).toContain('every 25 mm');
  });

  it('gives a bolt the place that the table of fixings gives it, in inches too', () => {
    const { seat } = out.work;
    for (const mm of [500, 505, 511]) {
      const inches = inventedSetOut({
        hardware: { padHolePitchM: null, restHolePitchM: null },
        seat: { rearRest: { ...seat.rearRest, aftM: (mm + 0.4) / 1000 } },
        options: { units: 'in' },
      });
      const holes = inches.holes.flatMap((list) => {
        const block = holeBlock(list, inches);
        return block.kind === 'grid' ? block.entries.map(({ value }) => value) : [];
      });
      const fixings = fixingBlock(inches);
      if (fixings.kind !== 'table') throw new Error('it is no table');
      expect(holes).toEqual(fixings.cells.map(([, place]) => place));
    }
  });
});
