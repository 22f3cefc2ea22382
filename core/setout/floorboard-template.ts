import { boardEnds, boardHalfWidthAt, boardStations } from '../parts/board.ts';
import { millimetres, type SheetUnits, writtenLength } from '../text/sheet-length.ts';
import { type BlockFrame, toFloor } from './block-frame.ts';
import { alongEdge, besideHole, besidePoint, type NamePlaces, withNames } from './clear-place.ts';
import { boundsOf } from './drawing-bounds.ts';
import { padCorners } from './pad-block.ts';
import { restBaseCorners } from './rest-block.ts';
import { runsInside } from './runs-inside.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  BOARD_ASIDE,
  circle,
  crossLines,
  line,
  type MillimetrePoint,
  ring,
  type TemplateDrawing,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/** Board shown beyond the outermost hole or fitting, millimetres. */
const BEYOND_MM = 40;
/** The seat's mark runs out past the board's edges by this, millimetres. */
const MARK_OVERRUN_MM = 5;

/** Board without anything to drill that is left out between two stretches on paper, millimetres. */
const EMPTY_MM = 180;
/** Stretches without the seat's mark are laid by a line at a whole number of these from it, millimetres. */
const ROUND_MM: Readonly<Record<SheetUnits, number>> = { mm: 50, in: 50.8 };
/** A fitting that stands out over the board's edge is drawn as far past it as this, millimetres: there is nothing to drill there. */
const PAST_EDGE_MM = 5;

/**
 * Full-size drilling template of the floorboard: board's edges, centreline, seat's mark, every hole, and where pad and rest stand
 * now. The front foot needs no hole: it has a print of its own. On paper, stretches with nothing to drill between them lie apart,
 * each with a line to lay it by. x forward of the seat's mark, y to port, millimetres.
 */
export function floorboardTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const drilled = [...holeShapes(out), ...standing(out)];
  const runs = drilledRuns(drilled);
  const within = ([aft, fore]: Run) =>
    drilled.filter((shape) => {
      const { minX, maxX } = boundsOf([shape]);
      return minX >= aft && maxX <= fore;
    });
  const views = runs.map((run) => stretch(out, within(run), withMargin(out, run)));
  return {
    id: 'floorboard',
    title: say('template.floorboard'),
    seen: say('template.floorboard.seen'),
    aside: BOARD_ASIDE,
    shapes: stretch(out, drilled, withMargin(out, [runs[0]![0], runs.at(-1)![1]])),
    ...(views.length > 1 ? { views } : {}),
  };
}

/** A stretch of the board with all that is drilled in it, from one place to another. */
function stretch(out: SeatSetOut, drilled: readonly TemplateShape[], ends: Run): TemplateShape[] {
  const [aft, fore] = ends;
  const { at, name } = datumOf(out, ends);
  const half = halfAt(out, at);
  const lines = [
    ...boardSides(out, { aft, fore }),
    line('centreline', [aft, 0], [fore, 0]),
    line('centreMark', [at, -half - MARK_OVERRUN_MM], [at, half + MARK_OVERRUN_MM]),
    ...drilled,
  ];
  const names = [
    ...numbersOf(out, ends),
    ...(at === 0 ? [besidePoint('M', [0, 0], 3.5)] : []),
    [8, 18, 28, half - 8].map((inMm) => textAt(name, [at + 2.5, half - inMm])),
    ...namesOf(out, ends),
  ];
  return withNames(lines, names);
}

/** The line square across by which a stretch is laid: the seat's mark, or else one at a round distance from it. */
function datumOf({ work, ...out }: SeatSetOut, [aft, fore]: Run): { at: number; name: string } {
  if (aft <= 0 && fore >= 0) return { at: 0, name: seatMarkName({ work, ...out }) };
  const { units } = work.options;
  const round = ROUND_MM[units];
  const at = Math.round((aft + fore) / 2 / round) * round;
  const by = writtenLength(Math.abs(at), units);
  return { at, name: work.words.say('work-along', { direction: at < 0 ? 'aft' : 'forward', by }) };
}

/** Everything else that is lettered on a stretch, each with the places where it may stand. */
function namesOf(out: SeatSetOut, [aft, fore]: Run): NamePlaces[] {
  const { say } = out.work.words;
  return [
    alongEdge(say('template.left'), aft, (x, inMm) => halfAt(out, x) - inMm - 3),
    alongEdge(say('template.right'), aft, (x, inMm) => -halfAt(out, x) + inMm),
    [3, -7].map((y) => textAt(say('template.bow'), [fore - 4, y], { anchor: 'end' })),
    ...out.marks
      .filter(
        ({ name, portMm, forwardMm: x }) =>
          FIXED.test(name) && x > aft && x < fore && Math.abs(portMm) <= halfAt(out, x),
      )
      .map(({ name, forwardMm, portMm }) => besidePoint(name, [forwardMm, portMm], 3)),
  ];
}

/** Marks of what is fixed to the board: knee, pad and rest. */
const FIXED = /^[KPR]/;

/** Half of the board's width at a place forward of the seat's mark, millimetres. */
function halfAt({ work }: Pick<SeatSetOut, 'work'>, x: number): number {
  return millimetres(boardHalfWidthAt(work.boat.floorboard, x / 1000 + work.frame.stationX));
}

/** Number of seats and this one's number, for messages that name the datum line. */
export function seatOf({ work }: Pick<SeatSetOut, 'work'>): { seats: number; seat: number } {
  return { seats: work.fit.seats.length, seat: work.index + 1 };
}

/** What the datum line is called: the centre mark of a single, or the mark of a numbered seat. */
export function seatMarkName({ work }: SeatSetOut): string {
  return work.words.say('work-mark.name', seatOf({ work }));
}

/** Aft and fore end of a stretch, millimetres forward of the seat's mark. */
type Run = readonly [aft: number, fore: number];

/** Runs of the board in which something is drilled or stands, and the seat's mark, aftmost first; near ones are one. */
function drilledRuns(drilled: readonly TemplateShape[]): Run[] {
  const spans = drilled.map((shape): Run => {
    const { minX, maxX } = boundsOf([shape]);
    return [minX, maxX];
  });
  const sorted = [...spans, [0, 0] as const].sort(([a], [b]) => a - b);
  return sorted.reduce<Run[]>((runs, [aft, fore]) => {
    const last = runs.at(-1);
    if (!last || aft - last[1] > EMPTY_MM) runs.push([aft, fore]);
    else runs[runs.length - 1] = [last[0], Math.max(last[1], fore)];
    return runs;
  }, []);
}

/** A run with some board shown beyond it, as far as there is any. */
function withMargin({ work }: SeatSetOut, [aft, fore]: Run): Run {
  const [aftEnd, foreEnd] = boardEnds(work.boat.floorboard).map((xM) =>
    millimetres(xM - work.frame.stationX),
  );
  return [Math.max(aft - BEYOND_MM, aftEnd!), Math.min(fore + BEYOND_MM, foreEnd!)];
}

/** The two long edges, and an end where the board ends inside the drawing. */
function boardSides({ work }: SeatSetOut, { aft, fore }: { aft: number; fore: number }): TemplateShape[] {
  const { floorboard } = work.boat;
  const { stationX } = work.frame;
  const half = (x: number) => halfAt({ work }, x);
  const within = (x: number) => x >= aft - 1e-6 && x <= fore + 1e-6;
  const bends = boardStations(floorboard)
    .map((x) => millimetres(x - stationX))
    .filter(within);
  const side = [...new Set([aft, ...bends, fore])].map((x): MillimetrePoint => [x, half(x)]);
  const ends = boardEnds(floorboard).map((x) => millimetres(x - stationX));
  return [
    line('outline', ...side),
    line('outline', ...side.map(([x, y]): MillimetrePoint => [x, -y])),
    ...ends.filter(within).map((x) => line('outline', [x, -half(x)], [x, half(x)])),
  ];
}

/** Holes to drill, those in use now on a layer of their own; on rails none. */
function holeShapes({ holes }: SeatSetOut): TemplateShape[] {
  return holes.flatMap(({ diameterMm, rows, onRails }) =>
    (onRails ? [] : rows).flatMap(({ holes: inRow }) =>
      inRow.flatMap(({ at, now }) => [
        circle(now ? 'drillNow' : 'drill', at, diameterMm / 2),
        ...crossLines(now ? 'drillNow' : 'drill', at, diameterMm / 2 + (now ? 3 : 1.5)),
      ]),
    ),
  );
}

/** Numbers of the holes between two places. */
function numbersOf({ holes }: SeatSetOut, [aft, fore]: Run): NamePlaces[] {
  return holes.flatMap(({ diameterMm, rows }) =>
    rows.flatMap(({ holes: inRow }) =>
      inRow.flatMap(({ at, number, now }) =>
        number === null || at[0] < aft || at[0] > fore
          ? []
          : [besideHole(String(number), at, { radius: diameterMm / 2, height: now ? 2.5 : 1.8 })],
      ),
    ),
  );
}

/** Outlines of what stands on the board now, as far as they lie on it. */
function standing({ fittings: { pad, rest }, work }: SeatSetOut): TemplateShape[] {
  const room = ([x, y]: MillimetrePoint) => halfAt({ work }, x) + PAST_EDGE_MM - Math.abs(y);
  const outline = (place: BlockFrame, corners: readonly MillimetrePoint[]) => {
    const points = corners.map((point) => toFloor(place, point));
    if (points.every((point) => room(point) >= 0)) return [ring('fitting', points)];
    return runsInside([...points, points[0]!], room).map((run) => line('fitting', ...run));
  };
  const edge = [rest.halfWidth, -rest.halfWidth].map((y) => toFloor(rest.place, [0, y]));
  return [
    ...outline(pad.place, padCorners(pad)),
    ...outline(rest.place, restBaseCorners(rest)),
    ...runsInside(edge, room).map((run) => line('edge', ...run)),
    ...crossLines('centreMark', pad.place.origin, 5),
  ];
}
