import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import { pictureOf } from '../../../../renderer/drawing/view/picture.ts';
import { crewDrawing } from '../../../../renderer/pages/crew-sheet/crew-scene.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
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
  return { fit, ...crewDrawing(pictureOf(fit, evaluator.evaluate(fit)), format) };
}

const numbersIn = (path: string) => (path.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);

describe('the drawing of a crew’s sheet', () => {
  it.each([1, 2, 4])('of %i seats has nothing on it that is no number, and keeps to the sheet', (count) => {
    const { surface, width, height } = drawn(count);
    expect(surface.marks.length).toBeGreaterThan(100 * count ** 0.5);
    for (const { path, words } of surface.marks) {
      if (path) expect(path).not.toMatch(/NaN|Infinity|undefined/);
      if (words) {
        expect(words.x).toBeGreaterThanOrEqual(0);
        expect(words.x).toBeLessThanOrEqual(width);
        expect(words.y).toBeLessThanOrEqual(height);
      }
    }
    for (const window of surface.windows) {
      for (const n of numbersIn(window)) expect(Math.abs(n)).toBeLessThanOrEqual(Math.max(width, height));
    }
  });

  it('follows the page’s colours: every ink is one of the theme’s, by reference', () => {
    for (const { style } of notEmpty(drawn(2).surface.marks)) {
      for (const ink of [style.fill, style.stroke]) {
        expect(String(ink)).toMatch(/^(none|undefined|var\(--|color-mix\()/);
      }
    }
  });

  it('names everybody at their mark in both views, bow to the right', () => {
    const { surface } = drawn(4);
    const told = surface.marks.flatMap(({ words }) => (words ? [words] : []));
    const of = (text: string) => told.filter((words) => words.text === text);
    const places = names.map((name, k) => of(`${k + 1}: ${name}`));
    for (const place of places) expect(place).toHaveLength(2);
    const xs = places.map(([first]) => first!.x);
    expect(xs).toEqual(xs.toSorted((a, b) => b - a));
    // Seats of the example stand 1.15 m apart.
    const gaps = xs.slice(1).map((x, k) => xs[k]! - x);
    for (const gap of gaps) expect(Math.abs(gap - gaps[0]!)).toBeLessThanOrEqual(1);
    expect(of('BOW')[0]!.x).toBeGreaterThan(of('STERN')[0]!.x);
  });

  it('says nobody of an empty seat, and draws the others', () => {
    const { surface } = drawn(2, [0]);
    const texts = surface.marks.flatMap(({ words }) => words?.text ?? []);
    expect(texts).toContain('1: nobody');
    expect(texts).toContain('2: Berit');
    expect(surface.marks.length).toBeLessThan(drawn(2).surface.marks.length);
  });
});
