import { GRIPS, type Grip, HANDLES, sameGrip } from './handle.ts';
import { bearingPoint, handlePlace, type SeatPlace, seatPlace } from './handle-places.ts';
import { projectorOf, type Scene } from './scene.ts';
import { isWithin, type ScreenPoint } from './screen-point.ts';

/** A handle as it stands on the screen. */
export interface GripMark {
  readonly grip: Grip;
  readonly at: ScreenPoint;
  /** The fitting's bearing point, where a turning handle's stalk starts; null for others. */
  readonly stalk: ScreenPoint | null;
  readonly radius: number;
  readonly locked: boolean;
}

/** Drawn radii, pixels; the felt radius is larger, see `interaction/pointer.ts`. */
const RADIUS = { mouse: 6, touch: 10 } as const;

/** The handles of the seat worked on that lie inside their windows. */
export function gripMarks(scene: Scene): GripMark[] {
  const { fit, report } = scene.picture;
  const place = seatPlace(fit, report, scene.seat);
  return GRIPS.flatMap((grip) => markOf(scene, place, grip) ?? []);
}

function markOf(scene: Scene, place: SeatPlace, grip: Grip): GripMark | null {
  const at = handlePlace(place, grip.handle);
  if (!at) return null;
  const to = projectorOf(scene, grip.view);
  const screen = to(at);
  const held = sameGrip(scene.held?.grip ?? null, grip);
  if (!held && !isWithin(screen, scene.layout.windows[grip.view])) return null;
  const { fitting, motion } = HANDLES[grip.handle];
  return {
    grip,
    at: screen,
    stalk: motion === 'turn' ? to(bearingPoint(place, grip.handle)) : null,
    radius: RADIUS[scene.touch ? 'touch' : 'mouse'] * (motion === 'turn' ? 0.8 : 1),
    locked: place.seat.locks.includes(fitting),
  };
}
