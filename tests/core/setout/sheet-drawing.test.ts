import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import type { PaperMark } from '../../../core/setout/paper-marks.ts';
import { heightAt, scaleFor, scaleText, sheetDrawing } from '../../../core/setout/sheet-drawing.ts';
import { firstSheet } from '../../../core/setout/sheet-layout.ts';
import { sheetMarks } from '../../../core/setout/sheet-marks.ts';
import { wholeBoatMarks } from '../../../core/setout/whole-boat.ts';
import { exampleBoat } from '../example/example-fit.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { boxOf, distance, wordsOn } from './read-shapes.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const hull = hullOfBoat(out.work.boat);
const drawing = sheetDrawing(out, hull);

describe('the scale of a sheet', () => {
  it('is the largest of the standard ones that has room', () => {
    expect(scaleFor(drawing, { width: 5000, height: 5000 })).toBe(1 / 2);
    expect(scaleText(scaleFor(drawing, firstSheet('A4').drawing))).toBe('1:10');
    expect(scaleFor(drawing, { width: 10, height: 10 })).toBe(1 / 50);
  });

  it('never lets the drawing out of its box', () => {
    for (const paper of PAPER_NAMES) {
      const { drawing: box } = firstSheet(paper);
      expect(heightAt(drawing, scaleFor(drawing, box))).toBeLessThanOrEqual(box.height);
    }
  });

  it('is written as drawings write it', () => {
    expect([1 / 2, 0.1, 1 / 20].map(scaleText)).toEqual(['1:2', '1:10', '1:20']);
  });
});

describe.each(PAPER_NAMES)('the drawing on %s', (paper) => {
  const { drawing: box } = firstSheet(paper);
  const scale = scaleFor(drawing, box);
  const marks = sheetMarks(drawing, { box, scale });

  /** Points that a mark is drawn at. */
  function pointsOf(mark: PaperMark) {
    return mark.kind === 'path' ? mark.points : [mark.kind === 'circle' ? mark.centre : mark.at];
  }

  it('stays inside its box', () => {
    const { left, right, low, high } = boxOf(marks.flatMap(pointsOf));
    expect(left).toBeGreaterThanOrEqual(box.left);
    expect(right).toBeLessThanOrEqual(box.left + box.width);
    expect(low).toBeGreaterThanOrEqual(box.top);
    expect(high).toBeLessThanOrEqual(box.top + heightAt(drawing, scale));
  });

  it('has the pad at scale: its long side 260 and its diagonal by Pythagoras', () => {
    const pads = marks.filter(
      (mark) => mark.kind === 'path' && mark.fill === 'wood' && mark.points.length === 4,
    ) as Extract<PaperMark, { kind: 'path' }>[];
    const [plan] = pads;
    const [a, b, c] = plan!.points;
    expect(distance(b!, c!)).toBeCloseTo(260 * scale, 6);
    expect(distance(a!, c!)).toBeCloseTo(Math.hypot(260, 160) * scale, 6);
  });

  it('ties plan and profile: K, R, F, T and the mark stand straight under each other', () => {
    const ties = marks.filter((mark) => mark.kind === 'path' && mark.line?.ink === 'rule');
    expect(ties).toHaveLength(5);
    for (const tie of ties) {
      const [from, to] = pointsOf(tie);
      expect(from![0]).toBeCloseTo(to![0], 9);
    }
  });

  it('writes every dimension that a tape is laid to', () => {
    const words = wordsOn(marks);
    for (const { name, forwardMm } of out.marks.filter(({ name }) => ['K', 'F', 'T'].includes(name))) {
      expect(words, name).toContain(String(Math.abs(forwardMm)));
    }
    for (const text of ['130', '110', '50', '620', '35', '30', 'K  35 left', 'R  100 right', 'bow', 'M']) {
      expect(words).toContain(text);
    }
  });

  it('names its views and the datum of heights', () => {
    expect(wordsOn(marks)).toEqual(
      expect.arrayContaining([
        'Plan, from above',
        'Profile, from starboard',
        'Section at K, from behind',
        'datum for heights: top of the floorboard',
      ]),
    );
  });
});

describe('the small plan of the whole boat', () => {
  const at = { right: 200, top: 10, width: 60 };

  it('stands at its place, at a scale that it names, its length the hull’s', () => {
    const marks = wholeBoatMarks(drawing, at);
    const [boat] = marks.filter((mark) => mark.kind === 'path');
    const { left, right } = boxOf(boat!.points);
    expect(right).toBeCloseTo(200, 6);
    const [, over] = /^Whole boat, 1:(\d+)$/.exec(wordsOn(marks)[0]!)!;
    expect((right - left) * Number(over)).toBeCloseTo(hull.length * 1000, 3);
    expect(right - left).toBeLessThanOrEqual(at.width);
  });

  it('says how far the mark lies from the bow’s end', () => {
    expect(wordsOn(wholeBoatMarks(drawing, at))).toContain('M lies 2600 mm aft of the bow’s end');
  });

  it('marks every seat of a crew boat, this one’s apart', () => {
    const boat = exampleBoat(4);
    const crew = { out: { ...out, work: { ...out.work, boat } }, hull: hullOfBoat(boat) };
    const lines = wholeBoatMarks(crew, at).filter((mark) => mark.kind === 'path' && !mark.closed);
    expect(lines).toHaveLength(4);
    expect(lines.map((mark) => mark.kind === 'path' && mark.line?.ink)).toEqual([
      'mark',
      'soft',
      'soft',
      'soft',
    ]);
  });
});
