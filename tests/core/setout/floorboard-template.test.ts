import { describe, expect, it } from 'vitest';
import { floorboardTemplate, seatMarkName } from '../../../core/setout/floorboard-template.ts';
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

  it('has no toe line: the foot needs no hole and has a print of its own', () => {
    expect(linesOn(board.shapes, 'toeLine')).toEqual([]);
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

  it('shows pad and rest where the marks say; the foot, which needs no hole, has a print of its own', () => {
    const wide = inventedSetOut({ hardware: ROWS_OF_HOLES, floorWidthM: 0.4 });
    const { shapes } = floorboardTemplate(wide);
    const outlines = linesOn(shapes, 'fitting').map(({ points }) => points);
    expect(outlines).toHaveLength(2);
    expect(Math.abs(areaOf(outlines[0]!))).toBeCloseTo(260 * 160, 6);
    const corner = wide.marks.find(({ name }) => name === 'P3')!;
    const [x, y] = outlines[0]![2]!;
    expect([Math.round(x), Math.round(y)]).toEqual([corner.forwardMm, corner.portMm]);
    for (const { name } of wide.marks) expect(textsOf(shapes).includes(name), name).toBe(!/[FT]/.test(name));
  });

  it('shows of a fitting that stands out over the board’s edge no more than is of use to a drill', () => {
    for (const { points } of linesOn(board.shapes, 'fitting')) {
      expect(Math.max(...points.map(([, y]) => Math.abs(y)))).toBeLessThanOrEqual(120 + 5 + 1e-9);
    }
    const { kneePad } = out.work.seat;
    const beside = inventedSetOut({ floorWidthM: 0.24, seat: { kneePad: { ...kneePad, outM: 0.09 } } });
    const [left] = linesOn(floorboardTemplate(beside).shapes, 'fitting');
    expect(boxOf(left!.points).high).toBeCloseTo(125, 6);
  });

  it('leaves out board without a hole on paper, and says by which line each stretch is laid', () => {
    for (const units of ['mm', 'in'] as const) {
      const screwed = floorboardTemplate(
        inventedSetOut({
          hardware: { padHolePitchM: null, restHolePitchM: null },
          seat: { rearRest: { ...out.work.seat.rearRest, aftM: 0.8 } },
          options: { units },
        }),
      );
      const [rest, pad] = screwed.views!;
      expect(screwed.views).toHaveLength(2);
      const ends = (view: typeof rest) => boxOf(linesOn(view!, 'outline')[0]!.points);
      expect(ends(pad).left - ends(rest).right).toBeGreaterThan(100);
      expect(ends(pad)).toMatchObject({ right: 40 });
      // A line square across at a round distance: 800 mm, or 32 in.
      const across = linesOn(rest!, 'centreMark').find(({ points: [a, b] }) => a![0] === b![0])!;
      const at = across.points[0]![0];
      expect(-at).toBeCloseTo(units === 'mm' ? 800 : 32 * 25.4, 6);
      expect(textsOf(rest!)).toContain(units === 'mm' ? '800 mm aft' : '32 in aft');
      expect(textsOf(pad!)).toEqual(expect.arrayContaining(['M', 'K', 'centre mark']));
      // Every hole is on paper.
      const holes = [...circlesOn(rest!, 'drillNow'), ...circlesOn(pad!, 'drillNow')];
      expect(holes).toHaveLength(circlesOn(screwed.shapes, 'drillNow').length);
    }
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
      floorboard: { ...work.boat.floorboard, aftEndXM: -0.7, foreEndXM: 0.02 },
    };
    const fit = { ...work.fit, boat: short };
    const cut = floorboardTemplate(
      setOutSeat({ fit, report: valuesOf(fit), index: 0, options: work.options, words: english })!,
    );
    const edges = linesOn(cut.shapes, 'outline').map(({ points }) => boxOf(points));
    expect(edges[0]).toMatchObject({ left: -700, right: 20 });
    // Both ends of the board are drawn square across.
    expect(edges.filter(({ left, right }) => left === right).map(({ left }) => left)).toEqual([-700, 20]);
  });

  it('of a crew’s seat is named after its seat', () => {
    const fit = exampleFit([
      exampleSeat(),
      exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) }),
    ]);
    const options = { units: 'mm' } as const;
    const stern = setOutSeat({ fit, report: valuesOf(fit), index: 1, options, words: english })!;
    expect(seatMarkName(stern)).toBe('seat 2’s mark');
    expect(textsOf(floorboardTemplate(stern).shapes)).toContain('seat 2’s mark');
  });
});
