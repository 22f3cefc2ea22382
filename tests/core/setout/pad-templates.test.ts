import { describe, expect, it } from 'vitest';
import { padBlockTemplate, padRecessTemplate } from '../../../core/setout/pad-templates.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ROWS_OF_HOLES } from './invented-set-out.ts';
import { areaOf, boxOf, circlesOn, dimensionsOf, distance, linesOn, textsOf } from './read-shapes.ts';

const DEG = Math.PI / 180;
const out = inventedSetOut({ hardware: ROWS_OF_HOLES });
const recess = padRecessTemplate(out);
const block = padBlockTemplate(out);
const figures = (shapes: typeof recess.shapes) => dimensionsOf(shapes).map(({ text }) => text);

describe('the template of the recess', () => {
  it('has the block’s outline at full size: 260 × 160, K at 117 from its fore end', () => {
    const [outline] = linesOn(recess.shapes, 'outline');
    expect(Math.abs(areaOf(outline!.points))).toBeCloseTo(260 * 160, 6);
    const { left, right, low, high } = boxOf(outline!.points);
    expect([left, right, low, high].map((mm) => mm.toFixed(6))).toEqual(
      [-143, 117, -80, 80].map((mm) => mm.toFixed(6)),
    );
  });

  it('has its edge at the block’s top, as wide at K as the knee’s section says', () => {
    const [edge] = linesOn(recess.shapes, 'recess');
    const { kneeDepth, halfBreadth } = out.fittings.pad.recess;
    const half = halfBreadth * Math.sqrt(1 - ((kneeDepth - 20) / kneeDepth) ** 2);
    const { low, high } = boxOf(edge!.points);
    expect(high).toBeCloseTo(half, 6);
    expect(low).toBeCloseTo(-half, 6);
    expect(figures(recess.shapes)).toContain(String(Math.round(2 * half)));
  });

  it('has a depth line every 5 mm between bottom and top, one inside the other', () => {
    const lines = linesOn(recess.shapes, 'depthLine');
    expect(lines).toHaveLength(3);
    const areas = lines.map(({ points }) => Math.abs(areaOf(points)));
    expect(areas).toEqual([...areas].sort((a, b) => b - a));
  });

  it('has the cut for foam around the edge, and none without foam', () => {
    const [cut] = linesOn(recess.shapes, 'foamCut');
    const [edge] = linesOn(recess.shapes, 'recess');
    expect(boxOf(cut!.points).high).toBeGreaterThan(boxOf(edge!.points).high + 8);
    const bare = padRecessTemplate(inventedSetOut({ options: { foamM: 0 } }));
    expect(linesOn(bare.shapes, 'foamCut')).toEqual([]);
    expect(textsOf(bare.shapes).join(' ')).not.toContain('foam');
  });

  it('points to the bow: against the block’s turn of 12°', () => {
    const [from, to] = linesOn(recess.shapes, 'centreline')[0]!.points;
    expect(Math.atan2(to![1] - from![1], to![0] - from![0]) / DEG).toBeCloseTo(-12, 9);
  });

  it('shows where the shank goes, by its own angle off the axis', () => {
    const [from, to] = linesOn(recess.shapes, 'fitting')[0]!.points;
    expect(from).toEqual([0, 0]);
    expect(Math.atan2(-to![1], -to![0])).toBeCloseTo(out.fittings.pad.shankOffAxis, 9);
  });

  it('says for which knee it is drawn, how sure that is, and what to do about it', () => {
    expect(textsOf(recess.shapes)).toContain('Knee 107 mm ± 14 mm, estimated: measure it');
    const measured = padRecessTemplate(inventedSetOut({ options: { kneeBreadthM: 0.104 } }));
    expect(textsOf(measured.shapes)).toContain('Knee 104 mm, measured');
  });

  it('writes inches where the sheet does, and stays full size', () => {
    const inches = padRecessTemplate(inventedSetOut({ options: { units: 'in' } }));
    expect(figures(inches.shapes)).toContain('6 5/16');
    const [outline] = linesOn(inches.shapes, 'outline');
    expect(Math.abs(areaOf(outline!.points))).toBeCloseTo(260 * 160, 6);
  });
});

describe('the template of the block', () => {
  const outlines = linesOn(block.shapes, 'outline').map(({ points }) => points);

  it('has plan, profile and section at full size, the section’s base cut to the hull', () => {
    const { base } = out.bases.kneePad.middle;
    // The base is read at places 5 mm apart: trapezia under it are what it cuts away.
    const cutAway = base
      .slice(1)
      .reduce((sum, [x, z], k) => sum + ((x - base[k]![0]) * (z + base[k]![1])) / 2, 0);
    expect(outlines.map((points) => Math.abs(areaOf(points)).toFixed(3))).toEqual([
      (260 * 160).toFixed(3),
      (260 * 130).toFixed(3),
      (160 * 130 - cutAway).toFixed(3),
    ]);
  });

  it('has its views apart, so that none is cut into another', () => {
    const boxes = outlines.map(boxOf);
    expect(boxes.length).toBeGreaterThan(1);
    boxes.forEach((a, k) => {
      for (const b of boxes.slice(k + 1)) {
        const apart = a.left > b.right || b.left > a.right || a.low > b.high || b.low > a.high;
        expect(apart).toBe(true);
      }
    });
  });

  it('has the recess’s bottom 110 over its base in profile and in section', () => {
    const [, profile, section] = outlines;
    const bottoms = linesOn(block.shapes, 'recess')
      .slice(1)
      .map(({ points }) => points);
    for (const [view, line] of [
      [profile!, bottoms[0]!],
      [section!, bottoms[1]!],
    ] as const) {
      expect(boxOf(line).low - boxOf(view).low).toBeCloseTo(110, 6);
      expect(boxOf(line).high).toBeLessThanOrEqual(boxOf(view).high + 1e-6);
    }
    expect(figures(block.shapes)).toEqual(expect.arrayContaining(['260', '160', '130', '110']));
  });

  it('has a section that is a chord of the knee at every height', () => {
    const base = boxOf(outlines[2]!).low;
    const middle = (boxOf(outlines[2]!).left + boxOf(outlines[2]!).right) / 2;
    const { kneeDepth, halfBreadth } = out.fittings.pad.recess;
    for (const [x, y] of notEmpty(linesOn(block.shapes, 'recess')[2]!.points)) {
      const level = y - base - 110;
      const half = halfBreadth * Math.sqrt(Math.max(0, 1 - ((kneeDepth - level) / kneeDepth) ** 2));
      expect(Math.abs(Math.abs(x - middle) - half)).toBeLessThan(1e-6);
    }
  });

  it('has both bolts where the floorboard has them', () => {
    const bolts = circlesOn(block.shapes, 'drillNow');
    expect(bolts).toHaveLength(2);
    const onFloor = out.holes[0]!.bolts;
    expect(distance(bolts[0]!.centre, bolts[1]!.centre)).toBeCloseTo(distance(onFloor[0]!, onFloor[1]!), 9);
    const [a, b] = bolts.map(({ centre }) => centre) as [MillimetrePoint, MillimetrePoint];
    // Straight across the boat is 12° off straight across the block.
    expect(Math.atan2(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])) / DEG).toBeCloseTo(12, 6);
    for (const { radius } of bolts) expect(radius).toBeCloseTo(3.25, 9);
  });
});
