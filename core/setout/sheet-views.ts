import type { BoatPoint } from '../frame/vec3.ts';
import { convexRing } from '../graphics/convex-ring.ts';
import type { Hull } from '../hull/hull.ts';
import { halfBreadth, keelHeight, sectionAt, sheerHeight } from '../hull/section-at.ts';
import { boardHalfWidthAt, boardStations, boardTopAt } from '../parts/board.ts';
import type { Part } from '../parts/part.ts';
import type { FigurePoint } from '../posture/stance.ts';
import { millimetres } from '../text/sheet-length.ts';
import { toFloor } from './block-frame.ts';
import { footPrint } from './foot-print.ts';
import { frontWedge } from './front-foot.ts';
import { recessOutline } from './knee-recess.ts';
import { padCorners } from './pad-block.ts';
import { restBaseCorners } from './rest-block.ts';
import { floorPoint } from './seat-work.ts';
import { sectionAtKnee } from './section-at-knee.ts';
import type { SeatSetOut } from './set-out.ts';
import { circle, line, type MillimetrePoint, ring, type TemplateShape } from './template-drawing.ts';
import { workParts } from './work-parts.ts';

/** The stretch of boat that the views show, millimetres forward of the seat's mark. */
export interface ViewStretch {
  /** Negative where it begins behind the mark. */
  readonly aft: number;
  /** Positive where it ends ahead of the mark. */
  readonly fore: number;
}

/** Boat shown beyond rest and toes, millimetres. */
const BEYOND_MM = 110;
/** Places along the stretch where the hull's lines are read. */
const READINGS = 49;
/** What the three views show together: from aft of the rest to ahead of the toes, within the hull. */
export function viewStretch(out: SeatSetOut, hull: Hull): ViewStretch {
  const { rest, foot, pad } = out.fittings;
  const station = millimetres(out.work.frame.stationX);
  const xs = [
    ...restBaseCorners(rest).map((corner) => toFloor(rest.place, corner)[0]),
    ...padCorners(pad).map((corner) => toFloor(pad.place, corner)[0]),
    ...footPrint(foot).map((point) => toFloor(foot.place, point)[0]),
    0,
  ];
  return {
    aft: Math.max(Math.min(...xs) - BEYOND_MM, millimetres(hull.aftX) - station),
    fore: Math.min(Math.max(...xs) + BEYOND_MM, millimetres(hull.foreX) - station),
  };
}

/** Places at which the hull is read. */
function readings({ aft, fore }: ViewStretch): number[] {
  return Array.from({ length: READINGS }, (_, k) => aft + ((fore - aft) * k) / (READINGS - 1));
}

/** Plan: x forward of the seat's mark, y to port. Hull's sheer, floorboard, pad with recess, rest, foot, leg. */
export function planView(out: SeatSetOut, hull: Hull, stretch: ViewStretch): TemplateShape[] {
  const { work, fittings } = out;
  const { pad, rest, foot } = fittings;
  const sheer = readings(stretch).map((x): MillimetrePoint => {
    const at = x / 1000 + work.frame.stationX;
    return [x, millimetres(halfBreadth(hull, at, sheerHeight(hull, at)) ?? 0)];
  });
  const recess = recessOutline(pad.recess, { level: pad.recess.depth, foam: 0 });
  const shadow = footPrint(foot).map(([x, y]): MillimetrePoint => [(x * foot.run) / foot.length, y]);
  const restEdge = [1, -1].map((side) => toFloor(rest.place, [0, side * rest.halfWidth]));
  return [
    line('hull', ...sheer),
    line('hull', ...sheer.map(([x, y]): MillimetrePoint => [x, -y])),
    ring('edge', boardFromAbove(out, stretch)),
    ring(
      'fitting',
      padCorners(pad).map((corner) => toFloor(pad.place, corner)),
    ),
    ...(recess ? [line('recess', ...recess.points.map((point) => toFloor(pad.place, point)))] : []),
    ring(
      'fitting',
      restBaseCorners(rest).map((corner) => toFloor(rest.place, corner)),
    ),
    line('recess', ...restEdge),
    ring(
      'fitting',
      shadow.map((point) => toFloor(foot.place, point)),
    ),
    ...out.holes.flatMap(({ bolts, diameterMm }) =>
      bolts.map((at) => circle('drillNow', at, diameterMm / 2)),
    ),
    ...legLines(out, (point) => floorPoint(point, work.frame)),
  ];
}

/** Profile from starboard, bow to the right: x forward of the seat's mark, y up from the hull's lowest point. */
export function profileView(out: SeatSetOut, hull: Hull, stretch: ViewStretch): TemplateShape[] {
  const { work, fittings } = out;
  const { foot } = fittings;
  const floor = millimetres(work.frame.floorZ);
  const xs = readings(stretch);
  const along = (height: (hull: Hull, x: number) => number) =>
    xs.map((x): MillimetrePoint => [x, millimetres(height(hull, x / 1000 + work.frame.stationX))]);
  const silhouette = ({ vertices }: Part) =>
    ring('fitting', convexRing(vertices.map(({ x, z }) => seeSide(out, { x, z }))));
  const { kneePad, rearRest } = workParts(work);
  return [
    line('hull', ...along(sheerHeight)),
    line('hull', ...along(keelHeight)),
    ring('edge', boardFromSide(out, stretch)),
    silhouette(kneePad),
    line('recess', ...recessLevel(out, floor)),
    silhouette(rearRest),
    ...wedgeSide(foot, floor),
    ...legLines(out, (point) => seeSide(out, point)),
  ];
}

/** A place as the view from the side has it: forward of the seat's mark, and up. */
function seeSide({ work }: SeatSetOut, { x, z }: { x: number; z: number }): MillimetrePoint {
  return [millimetres(x - work.frame.stationX), millimetres(z)];
}

/** The bottom of the recess as a short level line at K. */
function recessLevel({ fittings: { pad } }: SeatSetOut, floor: number): MillimetrePoint[] {
  const [x] = pad.place.origin;
  return [
    [x - 30, floor + pad.bearingHeight],
    [x + 30, floor + pad.bearingHeight],
  ];
}

/** The front foot's wedge from the side, where there is one. */
function wedgeSide(foot: SeatSetOut['fittings']['foot'], floor: number): TemplateShape[] {
  const wedge = frontWedge(foot);
  if (wedge.kind !== 'wedge') return [];
  return [
    ring(
      'fitting',
      wedge.profile.map(([x, y]): MillimetrePoint => [toFloor(foot.place, [x, 0])[0], floor + y]),
    ),
  ];
}

/**
 * Section at K seen from behind: x to starboard (port on the left), y up from the hull's lowest point. Hull, board and pad are
 * all cut there: a block 16 cm wide, turned by 12°, is drawn 164 mm wide.
 */
export function sectionView(out: SeatSetOut, hull: Hull): TemplateShape[] {
  const { work } = out;
  const { kneePad } = workParts(work);
  const { x } = kneePad.place;
  const behind = ({ y, z }: { y: number; z: number }): MillimetrePoint => [-millimetres(y), millimetres(z)];
  const mirrored = ([y, z]: MillimetrePoint): MillimetrePoint => [-y, z];
  const { block, finished, wood } = sectionAtKnee(out, hull);
  const port = sectionAt(hull, x).map(behind);
  const { floorboard } = work.boat;
  const half = millimetres(boardHalfWidthAt(floorboard, x));
  const top = millimetres(boardTopAt(floorboard, x));
  const under = top - millimetres(floorboard.thicknessM);
  return [
    line(
      'hull',
      ...[...port].reverse(),
      ...port.slice(1).map(([right, up]): MillimetrePoint => [-right, up]),
    ),
    ring('edge', [
      [-half, top],
      [half, top],
      [half, under],
      [-half, under],
    ]),
    ring('fitting', block.map(mirrored)),
    line('recess', ...finished.map(mirrored)),
    ...(work.options.foamM > 0 ? [line('foamCut', ...wood.map(mirrored))] : []),
    ...legLines(out, behind).slice(0, 1),
  ];
}

/** Stations of the floorboard inside the stretch, metres, boat frame: its ends (or the stretch's) and where it bends. */
function boardPlaces({ work }: SeatSetOut, { aft, fore }: ViewStretch): number[] {
  const within = (x: number) =>
    Math.min(work.frame.stationX + fore / 1000, Math.max(work.frame.stationX + aft / 1000, x));
  return boardStations(work.boat.floorboard).map(within);
}

/** The board's outline in plan. */
function boardFromAbove(out: SeatSetOut, stretch: ViewStretch): MillimetrePoint[] {
  const { boat, frame } = out.work;
  const port = boardPlaces(out, stretch).map(
    (x): MillimetrePoint => [
      millimetres(x - frame.stationX),
      millimetres(boardHalfWidthAt(boat.floorboard, x)),
    ],
  );
  return [...port, ...port.map(([x, y]): MillimetrePoint => [x, -y]).reverse()];
}

/** The board's edge from the side, as thick as it is. */
function boardFromSide(out: SeatSetOut, stretch: ViewStretch): MillimetrePoint[] {
  const { floorboard } = out.work.boat;
  const thick = millimetres(floorboard.thicknessM);
  const top = boardPlaces(out, stretch).map((x) => seeSide(out, { x, z: boardTopAt(floorboard, x) }));
  return [...top, ...top.map(([x, z]): MillimetrePoint => [x, z - thick]).reverse()];
}

const REAR_LEG: readonly FigurePoint[] = ['kneelingKnee', 'kneelingAnkle', 'rearBall'];
const FRONT_LEG: readonly FigurePoint[] = ['frontHeel', 'frontAnkle', 'frontBall', 'frontToe'];

/** Knee, shank and feet as thin lines: the knee's round first. */
function legLines({ work }: SeatSetOut, see: (point: BoatPoint) => MillimetrePoint): TemplateShape[] {
  const { points } = work.solved.stances.ready;
  return [
    circle('person', see(points.kneelingKnee), millimetres(work.body.lengths.kneeRadius.value)),
    line('person', ...REAR_LEG.map((name) => see(points[name]))),
    line('person', ...FRONT_LEG.map((name) => see(points[name]))),
  ];
}
