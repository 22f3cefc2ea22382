import { describe, expect, it } from 'vitest';
import { solidPart } from '../../../core/parts/part.ts';
import { sectionOfPart } from '../../../core/parts/part-section.ts';
import { padShape } from '../../../core/parts/part-shapes.ts';

const board = { heightM: 0.03, widthM: 0.24, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.008 };
const frame = { stationX: 0, floorZ: 0.03, side: 'left' as const };
const pad = (recessTurnDeg: number) =>
  solidPart(
    { seat: 0, part: 'kneePad' },
    padShape(
      {
        aftM: 0.19,
        outM: 0.03,
        heightM: 0.12,
        recessTurnDeg,
        recessDepthM: 0.02,
        lengthM: 0.26,
        widthM: 0.16,
      },
      frame,
    ),
    { board, floorZ: 0.03 },
  );

const width = (ys: readonly number[]) => Math.max(...ys) - Math.min(...ys);

describe('sectionOfPart', () => {
  it('is the true section of the turned block at K: 164 mm, not its silhouette of 211 mm', () => {
    const block = pad(12);
    const section = sectionOfPart(block, -0.19);
    expect(width(section.map(({ y }) => y))).toBeCloseTo(0.16 / Math.cos((12 * Math.PI) / 180), 9);
    expect(width(block.vertices.map(({ y }) => y))).toBeCloseTo(0.2106, 4);
    expect(width(section.map(({ z }) => z))).toBeCloseTo(0.14, 9);
    expect(section).toHaveLength(4);
  });

  it('is the whole width of a block that is not turned', () => {
    expect(width(sectionOfPart(pad(0), -0.19).map(({ y }) => y))).toBeCloseTo(0.16, 9);
  });

  it('is nothing where the part does not reach', () => {
    expect(sectionOfPart(pad(12), 0.4)).toEqual([]);
  });
});
