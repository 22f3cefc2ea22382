import { describe, expect, it } from 'vitest';
import { TEMPLATE_IDS } from '../../../core/setout/template-ids.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';
import { allLines } from './read-shapes.ts';

/** A pad far enough out that its ends are cut to the hull. */
const kneePad = { ...exampleSeat().kneePad, outM: 0.075 };
const flat = inventedSetOut({ seat: { kneePad } });
const wedged = inventedSetOut({ seat: { kneePad, frontFoot: ON_A_WEDGE } });

describe('the templates of a seat', () => {
  it('are all of them in the order of the work, the wedge only where there is one', () => {
    expect(templatesOf(wedged).map(({ id }) => id)).toEqual([...TEMPLATE_IDS]);
    expect(templatesOf(flat).map(({ id }) => id)).toEqual(TEMPLATE_IDS.filter((id) => id !== 'front-wedge'));
  });

  it('are those asked for, in the same order however they are asked for', () => {
    expect(templatesOf(flat, ['floorboard', 'pad-recess']).map(({ id }) => id)).toEqual([
      'pad-recess',
      'floorboard',
    ]);
    expect(templatesOf(flat, ['front-wedge'])).toEqual([]);
    expect(templatesOf(flat, [])).toEqual([]);
  });

  it('each say from where they are seen, and hold only finite points', () => {
    for (const { title, seen, shapes } of notEmpty(templatesOf(wedged))) {
      expect(title).toMatch(/^[A-Z].*: /);
      expect(seen).toMatch(/from|plan/);
      for (const shape of notEmpty(shapes)) {
        const points =
          shape.kind === 'dimension'
            ? [shape.from, shape.to]
            : shape.kind === 'disc' || shape.kind === 'text'
              ? [shape.at]
              : allLines([shape]).flatMap((line) => line.points);
        for (const [x, y] of points) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
      }
    }
  });

  it('are the same for equal input', () => {
    const again = inventedSetOut({ seat: { kneePad, frontFoot: ON_A_WEDGE } });
    expect(templatesOf(again)).toEqual(templatesOf(wedged));
  });
});
