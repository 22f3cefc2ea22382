import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { type Ball, figureSolids } from '../../../core/figure/figure-solids.ts';
import { paddleShape } from '../../../core/figure/paddle-shape.ts';
import { toBoatFrame } from '../../../core/frame/mirror.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { seatPlace } from './handle-places.ts';
import type { HullLines } from './hull-lines.ts';
import type { Picture } from './scene.ts';
import type { BoatBox } from './view-geometry.ts';

/** A state of a fit made ready to be drawn. */
export function pictureOf(fit: Fit, report: Report): Picture {
  return {
    fit,
    report,
    figures: report.seats.map((seat) => seat && figureSolids(seat.stances.ready, seat.body)),
  };
}

/** Paper left around what is shown, metres. */
const PAPER = { x: 0.06, y: 0.02, z: 0.02 };
/** Boxes are rounded outward to this, so that small edits do not change the sheet's division. Metres. */
const GRAIN = 0.02;
/** What reaches lower than this over the floorboard belongs to the cockpit: shanks, feet, the pad. Metres. */
const COCKPIT_HEIGHT = 0.4;
/** What an empty seat shows around its mark: ahead and aft, and above the floorboard, metres. */
const EMPTY = { ahead: 0.8, aft: 0.9, above: 1.0 };

/**
 * The box of the boat that the views show for one seat: the cockpit, from the rest to the toes, as broad as the hull, from
 * the keel to the crown. Hands and blade may stand out of it.
 */
export function seatBox(picture: Picture, lines: HullLines, index: number): BoatBox {
  const { frame } = seatPlace(picture.fit, picture.report, index);
  const balls = (picture.figures[index] ?? []).flatMap(({ hulls }) => hulls.flat());
  const low = balls.filter(({ at, radius }) => at.z - radius < frame.floorZ + COCKPIT_HEIGHT);
  const head = balls.reduce<Ball | null>(
    (top, ball) => (!top || ball.at.z + ball.radius > top.at.z + top.radius ? ball : top),
    null,
  );
  const along = low.map(({ at, radius }) => ({ at: { ...at, y: 0 }, radius: Math.min(radius, 0.02) }));
  const crown = head ? [{ at: { x: frame.stationX, y: 0, z: head.at.z + head.radius }, radius: 0 }] : [];
  return grown(boxAround([...along, ...crown, ...standing(picture, lines, index)]));
}

/** The box that shows the whole boat with everyone in it. */
export function boatBox(picture: Picture, lines: HullLines): BoatBox {
  const balls = picture.fit.seats.flatMap((_, index) => [
    ...figureBalls(picture, index),
    ...standing(picture, lines, index),
  ]);
  const ends = [lines.keel[0]!, lines.keel.at(-1)!].map((at) => ({ at, radius: 0 }));
  return grown(boxAround([...balls, ...ends]));
}

function figureBalls(picture: Picture, index: number): Ball[] {
  const { fit, report, figures } = picture;
  const balls = (figures[index] ?? []).flatMap(({ hulls }) => hulls.flat());
  const points = report.seats[index]?.stances.ready.points;
  const shape =
    points && paddleShape(fit.seats[index]!.paddle, { top: points.topHand, lower: points.lowerHand });
  return [...balls, ...(shape?.blade ?? []).map((at) => ({ at, radius: 0 }))];
}

/** Corners of what stands in a seat whoever kneels there: its fittings' reach, its hull's breadth and keel. */
function standing(picture: Picture, lines: HullLines, index: number): Ball[] {
  const { frame, seat } = seatPlace(picture.fit, picture.report, index);
  const beam = Math.max(...lines.sheer.map(({ y }) => y));
  const sheer = Math.max(
    ...lines.sheer.filter(({ x }) => Math.abs(x - frame.stationX) < 1.2).map(({ z }) => z),
    0.2,
  );
  const occupied = seat.athlete !== null;
  const corner = (x: number, z: number): Vec3 => toBoatFrame({ x, y: 0, z }, frame);
  const place = (x: number, y: number, z: number) => ({ at: { x: frame.stationX + x, y, z }, radius: 0 });
  return [
    place(0, beam, 0),
    place(0, -beam, 0),
    place(0, 0, sheer),
    { at: corner(-seat.rearRest.aftM - 0.1, 0), radius: 0 },
    ...(occupied
      ? []
      : [
          { at: corner(EMPTY.ahead, EMPTY.above), radius: 0 },
          { at: corner(-EMPTY.aft, 0), radius: 0 },
        ]),
  ];
}

function boxAround(balls: readonly Ball[]): BoatBox {
  const least = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY, z: Number.POSITIVE_INFINITY };
  const most = { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY, z: Number.NEGATIVE_INFINITY };
  for (const { at, radius } of balls) {
    for (const axis of ['x', 'y', 'z'] as const) {
      least[axis] = Math.min(least[axis], at[axis] - radius);
      most[axis] = Math.max(most[axis], at[axis] + radius);
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
