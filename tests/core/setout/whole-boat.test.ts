import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { sheetDrawing } from '../../../core/setout/sheet-drawing.ts';
import { wholeBoatMarks } from '../../../core/setout/whole-boat.ts';
import { exampleBoat } from '../example/example-fit.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { allLines, boxOf, fillsOf, wordsOn } from './read-shapes.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const hull = hullOfBoat(out.work.boat);
const drawing = sheetDrawing(out, hull);

describe('the small plan of the whole boat', () => {
  const at = { right: 200, top: 10, width: 60 };

  it('stands at its place, at a scale that it names, its length the hull’s', () => {
    const marks = wholeBoatMarks(drawing, at);
    const { left, right } = boxOf(fillsOf(marks, 'hullFill')[0]!);
    expect(right).toBeCloseTo(200, 6);
    const [, over] = /^Whole boat, 1:(\d+)$/.exec(wordsOn(marks)[0]!)!;
    expect((right - left) * Number(over)).toBeCloseTo(hull.length * 1000, 3);
    expect(right - left).toBeLessThanOrEqual(at.width);
  });

  it('says how far the mark lies from the bow’s end', () => {
    expect(wordsOn(wholeBoatMarks(drawing, at))).toContain('M 2600 mm aft of bow’s end');
  });

  it('marks every seat of a crew boat, this one’s apart', () => {
    const boat = exampleBoat(4);
    const crew = { out: { ...out, work: { ...out.work, boat } }, hull: hullOfBoat(boat) };
    const lines = allLines(wholeBoatMarks(crew, at)).filter(({ closed }) => !closed);
    expect(lines.map(({ layer }) => layer)).toEqual(['seatHere', ...Array(3).fill('seatElsewhere')]);
  });
});
