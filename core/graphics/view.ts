import type { Vec3 } from '../frame/vec3.ts';

/** The three views of a drawing: from above and from starboard with the bow to the right; from behind, port to the left. */
export const VIEWS = ['plan', 'profile', 'section'] as const;
/** A side that boat and paddler are seen from. */
export type ViewName = (typeof VIEWS)[number];

/** An axis of the boat frame. */
type Axis = keyof Vec3;

/** Boat axes shown to the right and upward in each view, with their signs. */
export const VIEW_AXES: Readonly<Record<ViewName, { right: Axis; rightSign: 1 | -1; up: Axis }>> = {
  plan: { right: 'x', rightSign: 1, up: 'y' },
  profile: { right: 'x', rightSign: 1, up: 'z' },
  section: { right: 'y', rightSign: -1, up: 'z' },
};

/** Metres to the right and up in a view. */
export type ViewPoint = readonly [right: number, up: number];

/** A point (or a direction) of the boat as a view shows it, metres. */
export function inView(view: ViewName, point: Vec3): ViewPoint {
  const { right, rightSign, up } = VIEW_AXES[view];
  return [point[right] * rightSign, point[up]];
}

/** How near a point is to the eye in a view, metres; only differences matter. Seen from above, from starboard, from behind. */
export function nearness(view: ViewName, point: Vec3): number {
  if (view === 'plan') return point.z;
  return view === 'profile' ? -point.y : -point.x;
}
