import { pointsOf } from '../graphics/shape.ts';
import { boardEnds, boardHalfWidthAt, boardStations } from '../parts/board.ts';
import { type BlockFrame, toFloor } from './block-frame.ts';
import { footPrint } from './foot-print.ts';
import { padCorners } from './pad-block.ts';
import { restBaseCorners } from './rest-block.ts';
import type { SeatSetOut } from './set-out.ts';
import { millimetres } from './sheet-length.ts';
import {
  circle,
  cross,
  line,
  type MillimetrePoint,
  ring,
  type TemplateDrawing,
  type TemplateShape,
  words,
} from './template-drawing.ts';

/** Board shown beyond the outermost hole or fitting, millimetres. */
const BEYOND_MM = 40;
/** The seat's mark runs out past the board's edges by this, millimetres. */
const MARK_OVERRUN_MM = 5;

/**
 * Full-size drilling template of the floorboard: board's edges, centreline, seat's mark, every hole, and where pad, rest
 * and foot stand now. x forward of the seat's mark, y to port, millimetres.
 */
export function floorboardTemplate(out: SeatSetOut): TemplateDrawing {
  const { say } = out.work.words;
  const shapes = [...holeShapes(out), ...standing(out)];
  const half = millimetres(boardHalfWidthAt(out.work.boat.floorboard, out.work.frame.stationX));
  const [aft, fore] = extent(out, shapes);
  return {
    id: 'floorboard',
    title: say('template.floorboard'),
    seen: say('template.floorboard.seen'),
    shapes: [
      ...boardSides(out, { aft, fore }),
      line('centreline', [aft, 0], [fore, 0]),
      line('centreMark', [0, -half - MARK_OVERRUN_MM], [0, half + MARK_OVERRUN_MM]),
      words('M', [2.5, 2.5]),
      words(markName(out), [2.5, half - 8]),
      words(say('template.left'), [aft + 6, half - 8]),
      words(say('template.right'), [aft + 6, -half + 5]),
      words(say('template.bow'), [fore - 4, 3], { anchor: 'end' }),
      ...shapes,
    ],
  };
}

/** Number of seats and this one's number, for messages that name the datum line. */
export function seatOf({ work }: Pick<SeatSetOut, 'work'>): { seats: number; seat: number } {
  return { seats: work.fit.seats.length, seat: work.index + 1 };
}

/** What the datum line is called: the centre mark of a single, or the mark of a numbered seat. */
export function markName({ work }: SeatSetOut): string {
  return work.words.say('work-mark.name', seatOf({ work }));
}

/** Ends of the stretch of board that is drawn: all there is on it with a margin, within the board. */
function extent({ work }: SeatSetOut, shapes: readonly TemplateShape[]): [aft: number, fore: number] {
  const xs = shapes.flatMap((shape) => {
    if (shape.kind === 'line') return shape.lines.flatMap(pointsOf).map(([x]) => x);
    return shape.kind === 'disc' ? [shape.at[0]] : [];
  });
  const { floorboard } = work.boat;
  const end = (xM: number) => millimetres(xM - work.frame.stationX);
  return [
    Math.max(Math.min(0, ...xs) - BEYOND_MM, end(Math.min(floorboard.aftEndXM, floorboard.foreEndXM))),
    Math.min(Math.max(0, ...xs) + BEYOND_MM, end(Math.max(floorboard.aftEndXM, floorboard.foreEndXM))),
  ];
}

/** The two long edges, and an end where the board ends inside the drawing. */
function boardSides({ work }: SeatSetOut, { aft, fore }: { aft: number; fore: number }): TemplateShape[] {
  const { floorboard } = work.boat;
  const { stationX } = work.frame;
  const halfAt = (x: number) => millimetres(boardHalfWidthAt(floorboard, x / 1000 + stationX));
  const within = (x: number) => x >= aft - 1e-6 && x <= fore + 1e-6;
  const bends = boardStations(floorboard)
    .map((x) => millimetres(x - stationX))
    .filter(within);
  const side = [...new Set([aft, ...bends, fore])].map((x): MillimetrePoint => [x, halfAt(x)]);
  const ends = boardEnds(floorboard).map((x) => millimetres(x - stationX));
  return [
    line('outline', ...side),
    line('outline', ...side.map(([x, y]): MillimetrePoint => [x, -y])),
    ...ends.filter(within).map((x) => line('outline', [x, -halfAt(x)], [x, halfAt(x)])),
  ];
}

/** Holes to drill, those in use now on a layer of their own, with their numbers. */
function holeShapes({ holes }: SeatSetOut): TemplateShape[] {
  return holes.flatMap((list) => {
    const radius = list.diameterMm / 2;
    const rows = list.rows.flatMap(({ holes: inRow }) =>
      inRow.flatMap(({ at, number, now }) => [
        circle(now ? 'drillNow' : 'drill', at, radius),
        ...cross(now ? 'drillNow' : 'drill', at, radius + (now ? 3 : 1.5)),
        ...(number === null
          ? []
          : [words(String(number), [at[0] + 1.2, at[1] + radius + 1.6], { height: now ? 2.5 : 1.8 })]),
      ]),
    );
    return rows;
  });
}

/** Outlines of what stands on the board now, with the marks' names. */
function standing({ fittings: { pad, rest, foot }, marks }: SeatSetOut): TemplateShape[] {
  const onFloor = (place: BlockFrame, points: readonly MillimetrePoint[]) =>
    ring(
      'fitting',
      points.map((point) => toFloor(place, point)),
    );
  const shadow = footPrint(foot).map(([x, y]): MillimetrePoint => [(x * foot.run) / foot.length, y]);
  const restEdge = [rest.halfWidth, -rest.halfWidth].map((y) => toFloor(rest.place, [0, y]));
  const toe = [foot.breadth / 2, -foot.breadth / 2].map((y) => toFloor(foot.place, [foot.run, y]));
  const k = pad.place.origin;
  return [
    onFloor(pad.place, padCorners(pad)),
    onFloor(rest.place, restBaseCorners(rest)),
    onFloor(foot.place, shadow),
    line('edge', ...restEdge),
    line('toeLine', ...toe),
    ...cross('centreMark', k, 5),
    ...cross('centreMark', foot.place.origin, 5),
    ...marks
      .filter(({ name }) => name !== 'M')
      .map(({ name, forwardMm, portMm }) => words(name, [forwardMm + 2, portMm + 2], { height: 3 })),
  ];
}
