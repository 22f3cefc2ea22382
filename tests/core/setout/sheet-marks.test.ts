import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { lettersWidth } from '../../../core/setout/letter-widths.ts';
import { PAPER_NAMES } from '../../../core/setout/paper.ts';
import type { PaperShape } from '../../../core/setout/paper-marks.ts';
import { heightAt, scaleFor, sheetDrawing } from '../../../core/setout/sheet-drawing.ts';
import { firstSheet } from '../../../core/setout/sheet-layout.ts';
import { sheetMarks } from '../../../core/setout/sheet-marks.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { allLines, boxOf, distance, fillsOf, wordsOn } from './read-shapes.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });
const hull = hullOfBoat(out.work.boat);
const drawing = sheetDrawing(out, hull);

describe.each(PAPER_NAMES)('the drawing on %s', (paper) => {
  const { drawing: box } = firstSheet(paper);
  const scale = scaleFor(drawing, box);
  const marks = sheetMarks(drawing, { box, scale });

  /** Points that a mark is drawn at. */
  function pointsOf(shape: PaperShape) {
    if (shape.kind === 'disc' || shape.kind === 'text') return [shape.at];
    return allLines([shape]).flatMap(({ points }) => points);
  }

  it('stays inside its box', () => {
    const { left, right, low, high } = boxOf(marks.flatMap(pointsOf));
    expect(left).toBeGreaterThanOrEqual(box.left);
    expect(right).toBeLessThanOrEqual(box.left + box.width);
    expect(low).toBeGreaterThanOrEqual(box.top);
    expect(high).toBeLessThanOrEqual(box.top + heightAt(drawing, scale));
  });

  it('has the pad at scale: its long side 260 and its diagonal by Pythagoras', () => {
    const [plan] = fillsOf(marks, 'woodFill').filter(({ length }) => length === 4);
    const [a, b, c] = plan!;
    expect(distance(b!, c!)).toBeCloseTo(260 * scale, 6);
    expect(distance(a!, c!)).toBeCloseTo(Math.hypot(260, 160) * scale, 6);
  });

  it('ties plan and profile: K, R, F, T and the mark stand straight under each other', () => {
    const ties = allLines(marks).filter(({ layer }) => layer === 'tie');
    expect(ties).toHaveLength(5);
    for (const tie of ties) {
      const [from, to] = tie.points;
      expect(from![0]).toBeCloseTo(to![0], 9);
    }
  });

  it('writes every dimension that a tape is laid to', () => {
    const words = wordsOn(marks);
    for (const { name, forwardMm } of notEmpty(
      out.marks.filter(({ name }) => ['K', 'F', 'T'].includes(name)),
    )) {
      expect(words, name).toContain(String(Math.abs(forwardMm)));
    }
    for (const text of ['130', '110', '50', '620', '35', '60', 'K 35 left', 'R 100 right', 'bow', 'M']) {
      expect(words).toContain(text);
    }
  });

  it('names its views and the datum of heights', () => {
    expect(wordsOn(marks)).toEqual(
      expect.arrayContaining([
        'Plan, from above',
        'Profile, from starboard',
        'Section at K, from behind',
        'heights from floorboard’s top',
      ]),
    );
  });
});

describe('the drawing of the other side', () => {
  const box = firstSheet('A4').drawing;
  const marksOf = (side: 'left' | 'right') => {
    const seat = inventedSetOut({ side });
    return sheetMarks(sheetDrawing(seat, hull), { box, scale: 0.1 });
  };

  it('has the same words but for left and right', () => {
    const swapped = wordsOn(marksOf('right')).map((text) =>
      text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left')),
    );
    expect(swapped.sort()).toEqual(wordsOn(marksOf('left')).sort());
  });

  it('has wood of the same sizes: a mirror image changes no length', () => {
    const widths = (side: 'left' | 'right') =>
      fillsOf(marksOf(side), 'woodFill')
        .map(boxOf)
        .map(({ left, right }) => right - left)
        .sort((a, b) => a - b);
    const [mine, theirs] = [widths('right'), widths('left')];
    expect(mine.length).toBeGreaterThan(4);
    for (const [k, width] of mine.entries()) expect(width).toBeCloseTo(theirs[k]!, 6);
  });
});

describe('the words over the plan', () => {
  it.each([0, 0.03, 0.1])('stand clear of M and of each other with the knee %f m behind the mark', (aftM) => {
    const { kneePad } = exampleSeat({});
    const seat = inventedSetOut({ seat: { kneePad: { ...kneePad, aftM } } });
    const marks = sheetMarks(sheetDrawing(seat, hull), { box: firstSheet('A4').drawing, scale: 0.1 });
    const labels = marks.flatMap((shape) =>
      shape.kind === 'text' && /^[KRFTM](?: |$)/.test(shape.text) && shape.anchor === 'middle' ? [shape] : [],
    );
    const spans = labels
      .filter(({ at }) => Math.abs(at[1] - labels[0]!.at[1]) < 1)
      .map(({ text, at, height }) => {
        const half = (lettersWidth(text) * height) / 2;
        return { text, from: at[0] - half, to: at[0] + half };
      })
      .toSorted((a, b) => a.from - b.from);
    expect(spans.map(({ text }) => text[0])).toEqual(['R', 'K', 'M', 'F', 'T']);
    for (const [k, span] of spans.slice(1).entries()) expect(span.from).toBeGreaterThan(spans[k]!.to);
  });
});
