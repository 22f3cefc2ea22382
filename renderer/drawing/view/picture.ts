import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import type { Report, SeatReport } from '../../../core/evaluation/report.ts';
import type { FigureBody } from '../../../core/figure/body-part.ts';
import { type Figure, figureBox, figureOf } from '../../../core/figure/figure.ts';
import { toBoatFrame } from '../../../core/frame/mirror.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import { seatPlace } from './handle-places.ts';
import type { HullDrawing } from './hull-drawing.ts';
import type { Picture } from './scene.ts';
import type { BoatBox } from './view-geometry.ts';

/** A state of a fit made ready to be drawn. */
export function pictureOf(fit: Fit, report: Report): Picture {
  return {
    fit,
    report,
    figures: report.seats.map((solved, index) => {
      const seat = fit.seats[index];
      return solved && seat ? figureIn(seat, solved) : null;
    }),
  };
}

/** Figures already made: a stance that has not changed keeps its figure, and with it the shapes made of it. */
const made = new WeakMap<Stance, { seat: Seat; figure: Figure }>();

function figureIn(seat: Seat, { stances: { ready }, body }: SeatReport): Figure {
  const known = made.get(ready);
  if (known?.seat === seat) return known.figure;
  const { stature, lengths } = body;
  const drawn: FigureBody = { stature, lengths, sex: seat.athlete?.sex ?? 'unspecified' };
  const figure = figureOf(ready.points, drawn, { paddle: seat.paddle, fineness: 'screen' });
  made.set(ready, { seat, figure });
  return figure;
}

/** Margin around what is shown, metres. */
const PAPER = { x: 0.06, y: 0.02, z: 0.02 };
/** Boxes are rounded outward to this, so that small edits do not change the sheet's division. Metres. */
const GRAIN = 0.02;
/** What the cockpit reaches to along the boat, and the flesh beyond it, metres. */
const COCKPIT = ['rearHeel', 'rearBall', 'rearToe', 'kneelingKnee', 'frontHeel', 'frontToe'] as const;
const FLESH = 0.015;
/** What an empty seat shows around its mark: ahead and aft, and above the floorboard, metres. */
const EMPTY = { ahead: 0.8, aft: 0.9, above: 1.0 };

/** Half of what is worked on across a broad hull: the floorboard and a little beside it, metres. */
const WORKED_HALF = 0.22;

/** How broad a seat is shown: across the whole beam, or across what is worked on. */
export type Breadth = 'beam' | 'worked';

/**
 * The box of the boat that the views show for one seat: the cockpit, from the rest to the toes, as broad as is asked, from the
 * keel to the crown. Hands and blade may stand out of it.
 */
export function seatBox(
  { picture, lines, seat }: { picture: Picture; lines: HullDrawing; seat: number },
  breadth: Breadth,
): BoatBox {
  const { frame } = seatPlace(picture.fit, picture.report, seat);
  const points = picture.report.seats[seat]?.stances.ready.points;
  const along = points ? COCKPIT.flatMap((name) => beside(points[name])) : [];
  const crown = points ? [{ x: frame.stationX, y: 0, z: points.headTop.z + FLESH }] : [];
  const half = breadth === 'beam' ? Number.POSITIVE_INFINITY : WORKED_HALF;
  const stands = standing(picture, lines, seat).map(({ x, y, z }) => ({
    x,
    y: Math.max(-half, Math.min(half, y)),
    z,
  }));
  return grown(boxAround([...along, ...crown, ...stands]));
}

/** Flesh ahead of and behind a point, on the centreline. */
const beside = ({ x, z }: Vec3): Vec3[] => [
  { x: x - FLESH, y: 0, z },
  { x: x + FLESH, y: 0, z },
];

/** The box that shows the whole boat with everyone in it. */
export function boatBox(picture: Picture, lines: HullDrawing): BoatBox {
  const corners = picture.fit.seats.flatMap((_, index) => [
    ...figureCorners(picture, index),
    ...standing(picture, lines, index),
  ]);
  return grown(boxAround([...corners, lines.keel[0]!, lines.keel.at(-1)!]));
}

function figureCorners({ figures }: Picture, index: number): Vec3[] {
  const figure = figures[index];
  if (!figure) return [];
  const { least, most } = figureBox(figure);
  return [least, most];
}

/** Corners of what stands in a seat whoever kneels there: its fittings' reach, its hull's breadth and keel. */
function standing(picture: Picture, lines: HullDrawing, index: number): Vec3[] {
  const { frame, seat } = seatPlace(picture.fit, picture.report, index);
  const beam = Math.max(...lines.sheer.map(({ y }) => y));
  const sheer = Math.max(
    ...lines.sheer.filter(({ x }) => Math.abs(x - frame.stationX) < 1.2).map(({ z }) => z),
    0.2,
  );
  const occupied = seat.athlete !== null;
  const corner = (x: number, z: number): Vec3 => toBoatFrame({ x, y: 0, z }, frame);
  const place = (x: number, y: number, z: number) => ({ x: frame.stationX + x, y, z });
  return [
    place(0, beam, 0),
    place(0, -beam, 0),
    place(0, 0, sheer),
    corner(-seat.rearRest.aftM - 0.1, 0),
    ...(occupied ? [] : [corner(EMPTY.ahead, EMPTY.above), corner(-EMPTY.aft, 0)]),
  ];
}

function boxAround(corners: readonly Vec3[]): BoatBox {
  const least = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY, z: Number.POSITIVE_INFINITY };
  const most = { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY, z: Number.NEGATIVE_INFINITY };
  for (const at of corners) {
    for (const axis of ['x', 'y', 'z'] as const) {
      least[axis] = Math.min(least[axis], at[axis]);
      most[axis] = Math.max(most[axis], at[axis]);
    }
  }
  return { least, most };
}

function grown({ least, most }: BoatBox): BoatBox {
  const down = (value: number, by: number) => Math.floor((value - by) / GRAIN) * GRAIN;
  const up = (value: number, by: number) => Math.ceil((value + by) / GRAIN) * GRAIN;
  return {
    least: { x: down(least.x, PAPER.x), y: down(least.y, PAPER.y), z: down(least.z, PAPER.z) },
    most: { x: up(most.x, PAPER.x), y: up(most.y, PAPER.y), z: up(most.z, PAPER.z) },
  };
}
