import { describe, expect, it } from 'vitest';
import { cutListBlock } from '../../../core/setout/fixing-block.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const cells = (of = out) => {
  const block = cutListBlock(of);
  return block.kind === 'table' ? block.cells : [];
};
const sizesOf = (name: RegExp, of = out) =>
  cells(of)
    .find(([what]) => name.test(what!))![1]!
    .split(' × ')
    .map(Number);

describe('the list of what is cut and bought', () => {
  it('has the pad as long, broad and high as it is made', () => {
    const { pad } = out.fittings;
    const sizes = [
      pad.foreEnd - pad.aftEnd,
      2 * pad.halfWidth,
      pad.topHeight - Math.min(pad.bedFore, pad.bedAft),
    ];
    expect(sizesOf(/pad/i)).toEqual(sizes.map(Math.round));
  });

  it('has the wedge as high as its toe end: heel height + length · sin 5°', () => {
    const { foot } = out.fittings;
    const [length, breadth, height] = sizesOf(/wedge/i);
    expect(Math.abs(height! - (10 + foot.length * Math.sin((5 * Math.PI) / 180)))).toBeLessThanOrEqual(1);
    expect(Math.abs(length! - foot.run)).toBeLessThanOrEqual(1);
    expect(breadth!).toBeGreaterThanOrEqual(Math.round(foot.breadth));
  });

  it('has no wedge for a foot on the bare board, and every row with name, size, kind and count', () => {
    expect(cells(inventedSetOut()).some(([what]) => /wedge/i.test(what!))).toBe(false);
    for (const row of cells()) {
      expect(row).toHaveLength(4);
      expect(Number(row[3])).toBeGreaterThan(0);
    }
  });
});
