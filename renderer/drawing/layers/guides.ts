import { COORDINATES, type FittingCoordinate } from '../../../core/document/coordinates.ts';
import { withSeatCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { sideSign } from '../../../core/frame/mirror.ts';
import { HANDLES } from '../view/handle.ts';
import { bearingPoint, handlePlace, seatPlace } from '../view/handle-places.ts';
import type { DragLimits } from '../view/limits.ts';
import { DASH, onPixelGrid, type Pen } from '../view/pen.ts';
import { datumX, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { heldDimensions } from './held-labels.ts';

/** What is shown during a drag: soft limits, dimensions from the datums, projection lines to the other views. */
export const guides: ScenePart = {
  layer: 'overlay',
  paint(pen, scene) {
    if (!scene.held) return;
    const window = scene.layout.windows[scene.held.grip.view];
    projectionLines(pen, scene);
    pen.within(window, () => {
      if (HANDLES[scene.held!.grip.handle].motion === 'place') placeRails(pen, scene);
      if (HANDLES[scene.held!.grip.handle].motion === 'turn') turnRail(pen, scene);
      for (const { line } of heldDimensions(scene)) dimensionLine(pen, line);
    });
  },
};

/** Straight up or down into the view on the same x, straight across into the view on the same z. */
function projectionLines(pen: Pen, scene: Scene): void {
  const { grip } = scene.held!;
  const { fit, report } = scene.picture;
  const at = handlePlace(seatPlace(fit, report, scene.seat), grip.handle);
  if (!at) return;
  const { plan, profile, section } = scene.layout.windows;
  const ink = { stroke: 'accent', width: 0.9, dash: DASH.fine, alpha: 0.85 } as const;
  const x = onPixelGrid(projectorOf(scene, 'profile')(at).x);
  if (x > plan.left && x < plan.left + plan.width) {
    pen.line(
      [
        { x, y: plan.top },
        { x, y: profile.top + profile.height },
      ],
      ink,
    );
  }
  const z = projectorOf(scene, 'profile')(at).y;
  if (grip.view === 'plan' || z < profile.top || z > profile.top + profile.height) return;
  pen.line(
    [
      { x: profile.left, y: onPixelGrid(z) },
      { x: section.left + section.width, y: onPixelGrid(z) },
    ],
    ink,
  );
}

/** Room a soft strip takes across its own direction, pixels. */
const STRIP = 46;

interface Stretch {
  readonly across: boolean;
  readonly between: DragLimits;
  /** Screen place of a value of the coordinate. */
  at(value: number): number;
}

function stretches(scene: Scene): Stretch[] {
  const { grip, limits } = scene.held!;
  const to = projectorOf(scene, grip.view);
  const { fit } = scene.picture;
  const frame = seatFrame(fit.boat, fit.seats[scene.seat]!, scene.seat);
  const origin = { x: datumX(scene), y: 0, z: frame.floorZ };
  return (HANDLES[grip.handle].views[grip.view] ?? []).flatMap((coordinate) => {
    const between = limits.get(coordinate);
    if (!between) return [];
    const { axis } = COORDINATES[coordinate];
    const across = axis === 'forward' || (grip.view === 'section' && axis === 'across');
    const point = (value: number) => to(pointOn(coordinate, value, { origin, sign: sideSign(frame.side) }));
    return [{ across, between, at: (value: number) => (across ? point(value).x : point(value).y) }];
  });
}

function pointOn(
  coordinate: FittingCoordinate,
  value: number,
  { origin, sign }: { origin: { x: number; y: number; z: number }; sign: number },
) {
  const row = COORDINATES[coordinate];
  if (row.axis === 'forward') return { ...origin, x: origin.x + row.sign * value };
  if (row.axis === 'across') return { ...origin, y: value * sign };
  return { ...origin, z: origin.z + value };
}

function placeRails(pen: Pen, scene: Scene): void {
  const { grip } = scene.held!;
  const { fit, report } = scene.picture;
  const place = handlePlace(seatPlace(fit, report, scene.seat), grip.handle);
  if (!place) return;
  const at = projectorOf(scene, grip.view)(place);
  const all = stretches(scene);
  for (const stretch of all) {
    const other = all.find((s) => s !== stretch);
    band(pen, stretch, { at, other });
    stops(pen, stretch, at);
  }
}

/** The band between its soft edges, tinted; across it, as far as the other band or a strip's width. */
function band(
  pen: Pen,
  { across, between, at: placeOf }: Stretch,
  { at, other }: { at: ScreenPoint; other?: Stretch },
): void {
  const { bandLeast, bandMost } = between;
  if (bandLeast === null && bandMost === null) return;
  const sides = [bandLeast, bandMost].map((v) => (v === null ? null : placeOf(v)));
  const middle = across ? at.y : at.x;
  const [low, high] = spanOf(other, middle);
  for (const side of sides) {
    if (side === null) continue;
    const ends = across
      ? [
          { x: side, y: low },
          { x: side, y: high },
        ]
      : [
          { x: low, y: side },
          { x: high, y: side },
        ];
    pen.line(ends, { stroke: 'accent', width: 1.4, alpha: 0.75 });
  }
  const [a, b] = sides;
  if (a === null || b === null || a === undefined || b === undefined) return;
  const rect = across
    ? { left: Math.min(a, b), top: low, width: Math.abs(a - b), height: high - low }
    : { left: low, top: Math.min(a, b), width: high - low, height: Math.abs(a - b) };
  pen.rect(rect, { fill: 'accent', alpha: 0.09 });
}

function spanOf(other: Stretch | undefined, middle: number): [number, number] {
  const { bandLeast = null, bandMost = null } = other?.between ?? {};
  if (!other || bandLeast === null || bandMost === null) return [middle - STRIP, middle + STRIP];
  const ends = [other.at(bandLeast), other.at(bandMost)];
  return [Math.min(...ends, middle) - 10, Math.max(...ends, middle) + 10];
}

/** Ends of the hardware's travel as hard stops, its holes as ticks. */
function stops(pen: Pen, { across, between, at: placeOf }: Stretch, at: ScreenPoint): void {
  const line = (value: number, half: number, width: number) => {
    const place = placeOf(value);
    const ends = across
      ? [
          { x: place, y: at.y - half },
          { x: place, y: at.y + half },
        ]
      : [
          { x: at.x - half, y: place },
          { x: at.x + half, y: place },
        ];
    pen.line(ends, { stroke: 'ink-soft', width });
  };
  if (between.least > between.utmost[0]) line(between.least, 9, 2.4);
  if (between.most < between.utmost[1]) line(between.most, 9, 2.4);
  if (!between.pitch || Math.abs(placeOf(between.pitch) - placeOf(0)) < 3) return;
  for (let k = Math.ceil(between.least / between.pitch); k * between.pitch <= between.most; k++)
    line(k * between.pitch, 4, 1);
}

/** The turn's band as a sector around the bearing point, and the value's own ray. */
function turnRail(pen: Pen, scene: Scene): void {
  const { grip, limits } = scene.held!;
  const coordinate = HANDLES[grip.handle].views[grip.view]![0]!;
  const between = limits.get(coordinate);
  const { fit, report } = scene.picture;
  const to = projectorOf(scene, grip.view);
  const rayAt = (turnDeg: number) => {
    const seat = fit.seats[scene.seat]!;
    const turned = withSeatCoordinate(seat, coordinate, turnDeg);
    const seats = fit.seats.map((s, k) => (k === scene.seat ? turned : s));
    return to(handlePlace(seatPlace({ ...fit, seats }, report, scene.seat), grip.handle)!);
  };
  const pivot = to(bearingPoint(seatPlace(fit, report, scene.seat), grip.handle));
  if (!between || between.bandLeast === null || between.bandMost === null) return;
  const steps = 16;
  const { bandLeast, bandMost } = between;
  const rim = Array.from({ length: steps + 1 }, (_, k) =>
    rayAt(bandLeast + ((bandMost - bandLeast) * k) / steps),
  );
  pen.ring([pivot, ...rim], { fill: 'accent', alpha: 0.1 });
  for (const end of [rim[0]!, rim.at(-1)!])
    pen.line([pivot, end], { stroke: 'accent', width: 1.2, alpha: 0.75 });
}

/** A dimension as on a drawing: line with slim arrow heads at both ends. */
function dimensionLine(pen: Pen, [a, b]: readonly [ScreenPoint, ScreenPoint]): void {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < 1) return;
  pen.line([a, b], { stroke: 'accent', width: 1 });
  const ux = (b.x - a.x) / length;
  const uy = (b.y - a.y) / length;
  const inside = length > 18;
  for (const [tip, sign] of [
    [a, inside ? 1 : -1],
    [b, inside ? -1 : 1],
  ] as const) {
    pen.ring(
      [
        tip,
        { x: tip.x + sign * (ux * 8 - uy * 2.4), y: tip.y + sign * (uy * 8 + ux * 2.4) },
        { x: tip.x + sign * (ux * 8 + uy * 2.4), y: tip.y + sign * (uy * 8 - ux * 2.4) },
      ],
      { fill: 'accent' },
    );
  }
}
