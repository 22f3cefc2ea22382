import { toBoatFrame } from '../../../core/frame/mirror.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { type Part as SolidPart, topOf } from '../../../core/parts/part.ts';
import { sectionOfPart } from '../../../core/parts/part-section.ts';
import { convexRing } from '../../../core/setout/convex-ring.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { fairRing } from '../view/fair-ring.ts';
import { type SeatPlace, seatPlace } from '../view/handle-places.ts';
import { mirrored } from '../view/hull-lines.ts';
import { DASH, type Ink, type Pen } from '../view/pen.ts';
import { roundHull } from '../view/round-hull.ts';
import { isSeatInSight, onto, type Part, type Scene } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';

const NEIGHBOUR = 0.5;

/** Knee pad with its recess, rear rest with its strap, and the front foot's print, in the three views. */
export const fittings: Part = {
  layer: 'boat',
  paint(pen, scene) {
    const { windows } = scene.layout;
    scene.picture.fit.seats.forEach((_, index) => {
      const mine = index === scene.seat;
      if (!mine && !isSeatInSight(scene, index)) return;
      const stand = seatPlace(scene.picture.fit, scene.picture.report, index);
      const draw = () => {
        pen.within(windows.plan, () => fromAbove(pen, scene, { stand, mine }));
        pen.within(windows.profile, () => fromSide(pen, scene, { stand, mine }));
        if (mine) pen.within(windows.section, () => fromBehind(pen, scene, stand));
      };
      if (mine || scene.alike) draw();
      else pen.faint(NEIGHBOUR, draw);
    });
  },
};

/** Everybody's fittings and the hull's edge as seen from above, to be laid over the figures once more. */
export function fittingsFromAbove(pen: Pen, scene: Scene): void {
  scene.picture.fit.seats.forEach((_, index) => {
    if (!isSeatInSight(scene, index)) return;
    const stand = seatPlace(scene.picture.fit, scene.picture.report, index);
    fromAbove(pen, scene, { stand, mine: index === scene.seat });
  });
  const to = onto(scene, 'plan');
  const { sheer } = scene.lines;
  for (const edge of [sheer, mirrored(sheer)]) pen.line(edge.map(to), { stroke: 'hull-line', width: 1.6 });
}

type Project = (p: Vec3) => ScreenPoint;

/** Wood with its line; in the accent while a finding about this fitting is pointed at. */
function woodInk(scene: Scene, part: string, mine = true): Ink {
  const lit = mine && scene.lit === part;
  return { fill: 'wood', stroke: lit ? 'accent' : 'wood-line', width: lit ? 2.4 : 1.2 };
}

/** Half-length and half-breadth of the recess as a share of the pad's. */
const RECESS = 0.34;

/** A point given along and across a fitting's own axis, through its bearing point. */
function onFitting(
  { frame }: SeatPlace,
  at: { x: number; y: number; z: number; turn: number },
): (along: number, across: number) => Vec3 {
  const cos = Math.cos(at.turn);
  const sin = Math.sin(at.turn);
  return (along, across) =>
    toBoatFrame(
      { x: at.x + along * cos - across * sin, y: at.y + along * sin + across * cos, z: at.z },
      frame,
    );
}

/** The recess's rim or one of its depth lines: an oval around the bearing point, `share` of the full size. */
function recessOval(stand: SeatPlace, share: number): Vec3[] {
  const { aftM, outM, heightM, recessTurnDeg, lengthM, widthM } = stand.seat.kneePad;
  const place = onFitting(stand, { x: -aftM, y: outM, z: heightM, turn: toRadians(recessTurnDeg) });
  return Array.from({ length: 40 }, (_, k) => {
    const t = (k * Math.PI) / 20;
    return place(lengthM * RECESS * share * Math.cos(t), widthM * RECESS * share * Math.sin(t));
  });
}

function fromAbove(pen: Pen, scene: Scene, { stand, mine }: { stand: SeatPlace; mine: boolean }): void {
  const to = onto(scene, 'plan');
  const scale = scene.geometry.camera.pixelsPerMetre;
  const { kneePad, rearRest } = stand.parts;
  pen.ring(rounded(topOf(kneePad).map(to), 0.012 * scale), woodInk(scene, 'kneePad', mine));
  pen.ring(recessOval(stand, 1).map(to), { fill: 'wood-deep', alpha: 0.35 });
  for (const share of [1, 0.66, 0.33]) {
    pen.ring(recessOval(stand, share).map(to), {
      stroke: 'wood-line',
      width: 0.9,
      alpha: share === 1 ? 0.9 : 0.55,
    });
  }
  footprint(pen, scene, { stand, mine });
  const rest = topOf(rearRest).map(to);
  pen.ring(rounded(rest, 0.006 * scale), woodInk(scene, 'rearRest', mine));
  pen.line([rest[0]!, rest[1]!], { stroke: 'wood-line', width: 2.4 });
  if (stand.seat.rearRest.strap !== 'none')
    pen.line(strap(stand).map(to), { stroke: 'wood-line', width: 2, alpha: 0.8 });
}

/** The strap over the rear foot: a shallow bow ahead of the rest's bearing edge. */
function strap(stand: SeatPlace): Vec3[] {
  const { aftM, outM, heightM, turnDeg, widthM } = stand.seat.rearRest;
  const place = onFitting(stand, { x: -aftM, y: outM, z: heightM, turn: toRadians(turnDeg) });
  return Array.from({ length: 13 }, (_, k) => {
    const share = k / 6 - 1;
    return place(0.05 * Math.sqrt(1 - share ** 2), share * widthM * 0.42);
  });
}

/** Round a sole from heel to toe: share of the foot's length, and half-breadth as a share of it. */
const SOLE: readonly (readonly [number, number])[] = [
  [0, 0.02],
  [0.02, 0.08],
  [0.1, 0.12],
  [0.3, 0.11],
  [0.5, 0.125],
  [0.7, 0.17],
  [0.82, 0.165],
  [0.93, 0.12],
  [1, 0.03],
];

function footprint(pen: Pen, scene: Scene, { stand, mine }: { stand: SeatPlace; mine: boolean }): void {
  const { forwardM, outM, heightM, toeOutDeg } = stand.seat.frontFoot;
  const place = onFitting(stand, { x: forwardM, y: outM, z: heightM, turn: -toRadians(toeOutDeg) });
  const to = onto(scene, 'plan');
  const edge = (side: number) =>
    SOLE.map(([along, across]) => to(place(along * stand.footLength, side * across * stand.footLength)));
  const outline = fairRing([...edge(1), ...edge(-1).reverse()]);
  pen.ring(outline, { fill: 'wood-deep', alpha: 0.22 });
  pen.ring(outline, { ...woodInk(scene, 'frontFoot', mine), fill: undefined });
}

/** A block's outline with its corners rounded. */
function rounded(corners: readonly ScreenPoint[], radius: number): ScreenPoint[] {
  const x0 = corners.reduce((sum, p) => sum + p.x, 0) / corners.length;
  const y0 = corners.reduce((sum, p) => sum + p.y, 0) / corners.length;
  return roundHull(
    corners.map(({ x, y }) => {
      const inset = Math.min(1, (radius * Math.SQRT2) / (Math.hypot(x - x0, y - y0) || 1));
      return { x: x + (x0 - x) * inset, y: y + (y0 - y) * inset, radius };
    }),
  );
}

/** From the side the pad is shown cut along its recess, so that the knee is seen in it; rest and wedge as they are seen. */
function fromSide(pen: Pen, scene: Scene, { stand, mine }: { stand: SeatPlace; mine: boolean }): void {
  const { kneePad } = stand.seat;
  const { stationX, floorZ } = stand.frame;
  const { kneePad: pad, rearRest, frontFoot } = stand.parts;
  const to = onto(scene, 'profile');
  const xs = pad.vertices.map(({ x }) => x);
  const outline = blockOutline({
    ends: [Math.min(...xs), Math.max(...xs)],
    dip: { at: stationX - kneePad.aftM, half: kneePad.lengthM * RECESS, depth: kneePad.recessDepthM },
    floor: Math.min(...pad.vertices.map(({ z }) => z)),
    low: floorZ + kneePad.heightM,
  });
  pen.ring(
    outline.map(([x, z]) => to({ x, y: 0, z })),
    woodInk(scene, 'kneePad', mine),
  );
  pen.ring(silhouette(rearRest, to), woodInk(scene, 'rearRest', mine));
  const { wedgeDeg, heightM } = stand.seat.frontFoot;
  if (wedgeDeg === 0 && heightM === 0) return;
  pen.ring(silhouette(frontFoot, to), { fill: 'wood', stroke: 'wood-line', width: 1 });
}

/** A part's outline as it is seen. */
function silhouette({ vertices }: SolidPart, to: Project): ScreenPoint[] {
  const corners = vertices.map((corner): [number, number] => {
    const { x, y } = to(corner);
    return [x, y];
  });
  return convexRing(corners).map(([x, y]) => ({ x, y }));
}

/** A pad's outline seen square on, with the dip of its recess: [along, height], metres. */
function blockOutline(given: {
  ends: readonly [number, number];
  dip: { at: number; half: number; depth: number };
  floor: number;
  low: number;
}): [number, number][] {
  const { ends, dip, floor, low } = given;
  const top = low + dip.depth;
  const curve = Array.from({ length: 25 }, (_, k): [number, number] => {
    const share = k / 12 - 1;
    return [dip.at + share * dip.half, low + (dip.depth * (1 - Math.cos(Math.PI * share))) / 2];
  });
  return [[ends[0], floor], [ends[0], top], ...curve, [ends[1], top], [ends[1], floor]];
}

/** From behind the pad is cut at the knee's bearing point: its true section there, with the dip of its recess. */
function fromBehind(pen: Pen, scene: Scene, stand: SeatPlace): void {
  const to = onto(scene, 'section');
  const { kneePad } = stand.seat;
  const { floorZ } = stand.frame;
  const { kneePad: pad, rearRest } = stand.parts;
  const ys = sectionOfPart(pad, pad.place.x).map(({ y }) => y);
  const outline = blockOutline({
    ends: [Math.min(...ys), Math.max(...ys)],
    dip: { at: pad.place.y, half: kneePad.widthM * RECESS, depth: kneePad.recessDepthM },
    floor: Math.min(...pad.vertices.map(({ z }) => z)),
    low: floorZ + kneePad.heightM,
  });
  pen.ring(
    outline.map(([y, z]) => to({ x: 0, y, z })),
    woodInk(scene, 'kneePad'),
  );
  pen.ring(silhouette(rearRest, to), { stroke: 'wood-line', width: 1, dash: DASH.hidden });
}
