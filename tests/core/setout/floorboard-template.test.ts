import { describe, expect, it } from 'vitest';
import { floorboardTemplate, markName } from '../../../core/setout/floorboard-template.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';
import { areaOf, boxOf, circlesOn, lettersOf, linesOn, textsOf } from './read-shapes.ts';

const out = inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE }, floorWidthM: 0.24 });
const board = floorboardTemplate(out);

describe('the drilling template of the floorboard', () => {
  it('has the board’s two edges at its width, and the centreline between them', () => {
    const [port, starboard] = linesOn(board.shapes, 'outline').map(({ points }) => points);
    expect(port!.every(([, y]) => y === 120)).toBe(true);
    expect(starboard!.every(([, y]) => y === -120)).toBe(true);
    expect(linesOn(board.shapes, 'centreline')[0]!.points.every(([, y]) => y === 0)).toBe(true);
  });

  it('has the seat’s mark square to the centreline at nought', () => {
    const mark = linesOn(board.shapes, 'centreMark').find(({ points }) => points.every(([x]) => x === 0))!;
    expect(boxOf(mark.points)).toEqual({ left: 0, right: 0, low: -125, high: 125 });
    expect(textsOf(board.shapes)).toContain('centre mark');
  });

  it('has every hole of the list at its place and size, those in use apart', () => {
    for (const layer of ['drill', 'drillNow'] as const) {
      const wanted = out.holes.flatMap(({ rows }) =>
        rows.flatMap(({ holes }) => holes.filter(({ now }) => now === (layer === 'drillNow'))),
      );
      const drawn = circlesOn(board.shapes, layer);
      expect(drawn.map(({ centre }) => centre)).toEqual(wanted.map(({ at }) => at));
      for (const { radius } of drawn) expect(radius).toBeCloseTo(3.25, 9);
    }
  });

  it('numbers the holes at their places', () => {
    const letters = lettersOf(board.shapes);
    for (const { at, number } of notEmpty(out.holes[0]!.rows[0]!.holes)) {
      const near = letters.find(
        ({ text, at: place }) =>
          text === String(number) && Math.hypot(place[0] - at[0], place[1] - at[1]) < 8,
      );
      expect(near, `hole ${number}`).toBeDefined();
    }
  });

  it('shows pad, rest and foot where the marks say', () => {
    const outlines = linesOn(board.shapes, 'fitting').map(({ points }) => points);
    expect(outlines).toHaveLength(3);
    expect(Math.abs(areaOf(outlines[0]!))).toBeCloseTo(260 * 160, 6);
    const corner = out.marks.find(({ name }) => name === 'P3')!;
    const [x, y] = outlines[0]![2]!;
    expect([Math.round(x), Math.round(y)]).toEqual([corner.forwardMm, corner.portMm]);
    for (const { name } of out.marks) expect(textsOf(board.shapes)).toContain(name);
  });

  it('says which way round it lies', () => {
    expect(textsOf(board.shapes)).toEqual(
      expect.arrayContaining(['LEFT (PORT)', 'RIGHT (STARBOARD)', 'BOW']),
    );
  });

  it('reaches past its outermost hole, but not past the board’s own end', () => {
    const [edge] = linesOn(board.shapes, 'outline');
    const holes = circlesOn(board.shapes, 'drill').map(({ centre }) => centre[0]);
    expect(boxOf(edge!.points).left).toBeLessThan(Math.min(...holes));
    const { work } = out;
    const short = {
      ...work.boat,
      floorboard: { ...work.boat.floorboard, aftEndXM: -0.7, foreEndXM: 0.71 },
    };
    const fit = { ...work.fit, boat: short };
    const cut = floorboardTemplate(
      setOutSeat({ fit, report: valuesOf(fit), index: 0, options: work.options, words: english })!,
    );
    const edges = linesOn(cut.shapes, 'outline').map(({ points }) => boxOf(points));
    expect(edges[0]).toMatchObject({ left: -700, right: 710 });
    // Both ends of the board are drawn square across.
    expect(edges.filter(({ left, right }) => left === right).map(({ left }) => left)).toEqual([-700, 710]);
  });

  it('of a crew’s seat is named after its seat', () => {
    const fit = exampleFit([
      exampleSeat(),
      exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) }),
    ]);
    const options = { units: 'mm' } as const;
    const stern = setOutSeat({ fit, report: valuesOf(fit), index: 1, options, words: english })!;
    expect(markName(stern)).toBe('mark of seat 2');
    expect(textsOf(floorboardTemplate(stern).shapes)).toContain('mark of seat 2');
  });
});
