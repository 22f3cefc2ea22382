import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import { ringsOf, type Shape } from '../../../../core/graphics/shape.ts';
import { pictureOf } from '../../../../renderer/drawing/view/picture.ts';
import { type CrewDrawing, crewDrawing } from '../../../../renderer/pages/crew-sheet/crew-scene.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';

const evaluator = createEvaluator();
const sides = ['left', 'right', 'left', 'right'] as const;
const names = ['Ada', 'Berit', 'Chidi', 'Dunja'];

function drawn(count: number, empty: readonly number[] = []) {
  const fit = exampleFit(
    Array.from({ length: count }, (_, k) =>
      exampleSeat({
        side: sides[k]!,
        athlete: empty.includes(k) ? null : exampleAthlete({ name: `${names[k]} Nobody` }),
      }),
    ),
  );
  return crewDrawing(pictureOf(fit, evaluator.evaluate(fit)));
}

const shapesOf = ({ views }: CrewDrawing) =>
  views.flatMap(({ layers }) => layers.flatMap(({ shapes }) => shapes));
const numbersIn = (shape: Shape) =>
  shape.kind === 'area' ? ringsOf([shape]).flat() : shape.kind === 'line' ? shape.lines.flat() : [];

describe('the drawing of a crew’s sheet', () => {
  it.each([1, 2, 4])('of %i seats has nothing on it that is no number, and keeps to the sheet', (count) => {
    const drawing = drawn(count);
    const shapes = shapesOf(drawing);
    expect(shapes.length).toBeGreaterThan(40 * count);
    for (const n of notEmpty(shapes).flatMap(numbersIn)) expect(Number.isFinite(n)).toBe(true);
    for (const { x } of notEmpty(drawing.marks)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(drawing.width);
    }
    const [plan, profile] = drawing.views;
    expect(profile!.top).toBeGreaterThan(plan!.top + plan!.height);
    expect(drawing.height).toBe(profile!.top + profile!.height);
  });

  it('shows the very shapes of the bench: hull, board, fittings and figure of everybody', () => {
    const { views } = drawn(2);
    for (const { layers } of notEmpty(views)) {
      const of = layers.flatMap(({ shapes }) => shapes.map((shape) => shape.of));
      for (const thing of ['hull', 'board', 'kneePad', 'rearRest', 'paddle', 'head']) {
        expect(of.filter((one) => one === thing).length, thing).toBeGreaterThan(0);
      }
    }
  });

  it('names everybody at their mark, bow to the right', () => {
    const { marks, ends } = drawn(4);
    const seats = marks.filter(({ seat }) => seat);
    expect(seats.map(({ name }) => name)).toEqual(names.map((name, k) => `${k + 1}: ${name}`));
    const xs = seats.map(({ x }) => x);
    expect(xs).toEqual(xs.toSorted((a, b) => b - a));
    // Seats of the example stand 1.15 m apart.
    const gaps = xs.slice(1).map((x, k) => xs[k]! - x);
    for (const gap of gaps) expect(Math.abs(gap - gaps[0]!)).toBeLessThanOrEqual(1);
    expect(ends.bow).toBeGreaterThan(ends.stern);
  });

  it('says nobody of an empty seat, and draws the others', () => {
    const halfEmpty = drawn(2, [0]);
    expect(halfEmpty.marks.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['1: nobody', '2: Berit']),
    );
    expect(shapesOf(halfEmpty).length).toBeLessThan(shapesOf(drawn(2)).length);
  });
});
