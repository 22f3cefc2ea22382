import { COORDINATES, type FittingCoordinate } from '../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import type { DrilledPlace } from '../../../core/drilling/drilled-places.ts';
import { sideSign } from '../../../core/frame/mirror.ts';
import { type Grip, HANDLES } from '../view/handle.ts';
import type { SeatPlace } from '../view/handle-places.ts';
import type { DragLimits } from '../view/limits.ts';
import type { ViewName } from '../view/view-geometry.ts';
import { HOLE_PLAY_M, rounded } from './snap.ts';

/** A press of an arrow key. */
export interface ArrowPress {
  readonly key: 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';
  readonly shift: boolean;
  readonly ctrl: boolean;
  readonly alt: boolean;
}

/** A coordinate and the direction an arrow sends it: +1 greater, −1 less. */
export interface Nudge {
  readonly coordinate: FittingCoordinate;
  readonly direction: 1 | -1;
}

/** The key of an event when it is an arrow; null otherwise. */
export function arrowKey(key: string): ArrowPress['key'] | null {
  return key === 'ArrowLeft' || key === 'ArrowRight' || key === 'ArrowUp' || key === 'ArrowDown' ? key : null;
}

/**
 * Which coordinate an arrow moves. Fittings go the way the arrow points on the drawing; a turn or a hand's place grows
 * to the right and (seen as sliding down the shaft) downward. Null where the view does not move that way.
 */
export function nudgeOf(grip: Grip, key: ArrowPress['key'], place: SeatPlace): Nudge | null {
  const { motion, views } = HANDLES[grip.handle];
  const coordinates = views[grip.view] ?? [];
  const across = key === 'ArrowLeft' || key === 'ArrowRight';
  if (motion === 'turn') {
    return { coordinate: coordinates[0]!, direction: key === 'ArrowRight' || key === 'ArrowUp' ? 1 : -1 };
  }
  if (motion === 'shaft') {
    return { coordinate: coordinates[0]!, direction: key === 'ArrowRight' || key === 'ArrowDown' ? 1 : -1 };
  }
  const coordinate = coordinates.find((c) => movesAcross(c, grip.view) === across);
  if (!coordinate) return null;
  const toward = key === 'ArrowRight' || key === 'ArrowUp' ? 1 : -1;
  return { coordinate, direction: (toward * screenSign(coordinate, grip.view, place)) as 1 | -1 };
}

/** Whether a coordinate runs left and right on the screen in a view. */
function movesAcross(coordinate: FittingCoordinate, view: ViewName): boolean {
  return COORDINATES[coordinate].axis === (view === 'section' ? 'across' : 'forward');
}

/** +1 when the coordinate grows to the right or upward on the screen. */
function screenSign(coordinate: FittingCoordinate, view: ViewName, { frame }: SeatPlace): 1 | -1 {
  const { axis, sign } = COORDINATES[coordinate];
  if (axis === 'across') return (sideSign(frame.side) * (view === 'section' ? -1 : 1)) as 1 | -1;
  return sign;
}

/** One step of the arrows: 1 mm or 1°; with Shift ten times as much, with Ctrl a tenth. */
export function arrowStepOf(
  coordinate: FittingCoordinate,
  { shift, ctrl }: Pick<ArrowPress, 'shift' | 'ctrl'>,
): number {
  const one = COORDINATES[coordinate].arrowStep;
  return shift ? one * 10 : ctrl ? one / 10 : one;
}

/** A fitting this near to a drilled hole is in it, and an arrow leaves it, metres. */
const ON_HOLE_M = 1e-5;

/** Values of a pushed coordinate at which the fitting's bolts stand in drilled holes, without moving in any other direction. */
export function drilledAlong(
  { seat }: SeatPlace,
  { coordinate }: Nudge,
  places: readonly DrilledPlace[],
): number[] {
  const [fitting, axis] = coordinate.split('.') as [string, string];
  if ((fitting !== 'kneePad' && fitting !== 'rearRest') || (axis !== 'aftM' && axis !== 'outM')) return [];
  const other = axis === 'aftM' ? 'outM' : 'aftM';
  return places
    .filter((place) => Math.abs(place[other] - seat[fitting][other]) <= HOLE_PLAY_M)
    .map((place) => place[axis]);
}

/**
 * The value a nudge leads to. Where the hardware has holes it is the next hole in that direction (with Shift, the first one at
 * least a Shift step away), unless Alt is held. A step that passes a hole of the board that is drilled ends in it, unless Alt or
 * Ctrl is held. It stays inside the hardware's travel, or with Alt inside what can be.
 */
export function nudged(
  place: SeatPlace,
  push: Nudge,
  {
    limits,
    press,
    drilled = [],
  }: { limits: DragLimits; press: Omit<ArrowPress, 'key'>; drilled?: readonly number[] },
): number {
  const now = coordinateOf(place.seat, push.coordinate);
  const step = arrowStepOf(push.coordinate, press);
  const finest = COORDINATES[push.coordinate].arrowStep / 10;
  const wanted =
    limits.pitch && !press.alt
      ? nextHole(now, push.direction, { pitch: limits.pitch, step })
      : now + push.direction * step;
  const [low, high] = press.alt ? limits.utmost : [limits.least, limits.most];
  const stop = press.alt || press.ctrl ? undefined : firstPassed(drilled, { now, wanted, push });
  if (stop !== undefined && stop >= low && stop <= high) return stop;
  return rounded(Math.min(Math.max(high, now), Math.max(Math.min(low, now), wanted)), finest);
}

/** The first drilled place between the fitting's place and where it is sent. */
function firstPassed(
  drilled: readonly number[],
  { now, wanted, push: { direction } }: { now: number; wanted: number; push: Nudge },
): number | undefined {
  const ahead = (value: number) => direction * (value - now);
  return drilled
    .filter((value) => ahead(value) > ON_HOLE_M && ahead(value) <= ahead(wanted) + ON_HOLE_M)
    .sort((a, b) => ahead(a) - ahead(b))[0];
}

function nextHole(now: number, direction: 1 | -1, { pitch, step }: { pitch: number; step: number }): number {
  const holes = Math.max(1, Math.ceil(step / pitch - 1e-9));
  const at = now / pitch;
  const on = Math.abs(at - Math.round(at)) < 1e-6;
  const from = on ? Math.round(at) : direction > 0 ? Math.floor(at) : Math.ceil(at);
  return (from + direction * holes) * pitch;
}
