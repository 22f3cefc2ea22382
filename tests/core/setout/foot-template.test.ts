import { describe, expect, it } from 'vitest';
import { frontFootTemplate } from '../../../core/setout/foot-template.ts';
import { tilingOf } from '../../../core/setout/tiling.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { boxOf, dimensionsOf, linesOn, textsOf } from './read-shapes.ts';

const DEG = Math.PI / 180;
const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const print = frontFootTemplate(out);
const { foot } = out.fittings;

describe('the template of the front foot', () => {
  it('says which foot it is', () => {
    expect(print.title).toBe('Front foot: print of the right foot');
    expect(frontFootTemplate(inventedSetOut({ side: 'right' })).title).toContain('left');
  });

  it('has the print at full length between heel line and toe line', () => {
    const { left, right } = boxOf(linesOn(print.shapes, 'outline')[0]!.points);
    expect(right - left).toBeCloseTo(foot.length, 9);
    const at = (layer: 'toeLine' | 'edge' | 'depthLine') => linesOn(print.shapes, layer)[0]!.points[0]![0];
    expect(at('edge')).toBeCloseTo(left, 9);
    expect(at('toeLine')).toBeCloseTo(right, 9);
    expect(at('depthLine')).toBeCloseTo(foot.heelToBall, 9);
    expect(dimensionsOf(print.shapes).map(({ text }) => text)).toEqual([String(Math.round(foot.length))]);
  });

  it('finds room on one page of A4 for a foot of 255', () => {
    const small = inventedSetOut();
    const { foot: own } = small.fittings;
    const scaled = { ...small, fittings: { ...small.fittings, foot: { ...own, length: 255, run: 255 } } };
    expect(tilingOf(frontFootTemplate(scaled), 'A4').tiles).toHaveLength(1);
  });

  it('shows the way to the bow against the toes’ turn, and leaves it out for toes straight ahead', () => {
    const [from, to] = linesOn(print.shapes, 'centreline')[0]!.points;
    expect(Math.atan2(to![1] - from![1], to![0] - from![0]) / DEG).toBeCloseTo(6, 9);
    expect(textsOf(print.shapes)).toContain('to the bow');
    const straight = frontFootTemplate(inventedSetOut());
    expect(linesOn(straight.shapes, 'centreline')).toEqual([]);
    expect(textsOf(straight.shapes)).not.toContain('to the bow');
  });
});
