import type { BoatPoint, Vec3 } from '../../../core/frame/vec3.ts';
import { VIEW_AXES, VIEWS, type ViewName } from '../../../core/graphics/view.ts';
import { middleOf, type ScreenPoint, type ScreenRect } from './screen-point.ts';

export { nearness, VIEWS, type ViewName } from '../../../core/graphics/view.ts';

/** Where the views lie. Plan and profile share left and width; profile and section share top and height. */
export type Windows = Readonly<Record<ViewName, ScreenRect>>;

/**
 * The camera of all three views: one scale and one point of the boat, shown in the middle of every window. Since plan
 * and profile show the same x and profile and section the same z, the views cannot come out of line.
 */
export interface ViewCamera {
  readonly pixelsPerMetre: number;
  readonly at: BoatPoint;
}

/** Windows and camera together: everything needed to go between the boat and the screen. */
export interface ViewGeometry {
  readonly windows: Windows;
  readonly camera: ViewCamera;
}

/** Between a whole four on a small screen and a single drill hole filling a view. */
export const LEAST_SCALE = 15;
export const GREATEST_SCALE = 6000;

/** Where a point of the boat is drawn in a view. */
export function project(geometry: ViewGeometry, view: ViewName, point: Vec3): ScreenPoint {
  const { right, rightSign, up } = VIEW_AXES[view];
  const { pixelsPerMetre, at } = geometry.camera;
  const middle = middleOf(geometry.windows[view]);
  return {
    x: middle.x + (point[right] - at[right]) * rightSign * pixelsPerMetre,
    y: middle.y - (point[up] - at[up]) * pixelsPerMetre,
  };
}

/** The boat point under a screen point of a view; the axis the view looks along keeps the value in `through`. */
export function unproject(
  geometry: ViewGeometry,
  view: ViewName,
  { screen, through }: { screen: ScreenPoint; through: Vec3 },
): BoatPoint {
  const { right, rightSign, up } = VIEW_AXES[view];
  const { pixelsPerMetre, at } = geometry.camera;
  const middle = middleOf(geometry.windows[view]);
  return {
    ...through,
    [right]: at[right] + ((screen.x - middle.x) * rightSign) / pixelsPerMetre,
    [up]: at[up] + (middle.y - screen.y) / pixelsPerMetre,
  } as BoatPoint;
}

/** The camera after zooming by `factor` about a screen point of a view, which stays where it is. */
export function zoomAbout(
  geometry: ViewGeometry,
  view: ViewName,
  { screen, factor }: { screen: ScreenPoint; factor: number },
): ViewCamera {
  const { camera } = geometry;
  const wanted = camera.pixelsPerMetre * factor;
  const pixelsPerMetre = Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, wanted));
  const fixed = unproject(geometry, view, { screen, through: camera.at });
  const shrink = camera.pixelsPerMetre / pixelsPerMetre;
  const at = { ...camera.at };
  for (const axis of ['x', 'y', 'z'] as const) at[axis] = fixed[axis] + (at[axis] - fixed[axis]) * shrink;
  return { pixelsPerMetre, at };
}

/** The camera after a view is panned by so many pixels. */
export function panBy(camera: ViewCamera, view: ViewName, push: ScreenPoint): ViewCamera {
  const { right, rightSign, up } = VIEW_AXES[view];
  const at = { ...camera.at };
  at[right] -= (push.x * rightSign) / camera.pixelsPerMetre;
  at[up] += push.y / camera.pixelsPerMetre;
  return { ...camera, at };
}

/** A box of the boat, metres. */
export interface BoatBox {
  readonly least: Vec3;
  readonly most: Vec3;
}

/** Size of a box along each axis, metres. */
export function boxSize({ least, most }: BoatBox): Vec3 {
  return { x: most.x - least.x, y: most.y - least.y, z: most.z - least.z };
}

/** The camera that shows a whole box in every window that has a width, as large as it goes. */
export function fitCamera(windows: Windows, box: BoatBox): ViewCamera {
  const size = boxSize(box);
  const scales = VIEWS.filter((view) => windows[view].width > 0).flatMap((view) => {
    const { right, up } = VIEW_AXES[view];
    return [windows[view].width / size[right], windows[view].height / size[up]];
  });
  const { least, most } = box;
  return {
    pixelsPerMetre: Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, Math.min(...scales))),
    at: { x: (least.x + most.x) / 2, y: (least.y + most.y) / 2, z: (least.z + most.z) / 2 },
  };
}

/** A cockpit is drawn at least this large where that costs little: a pixel is 3 mm. Pixels per metre. */
export const COCKPIT_SCALE = 1000 / 3;
/** For that, so much of the paper around the box may go: along the boat, across it, and up and down. Metres. */
const PAPER_TO_SPARE = { x: 0.06, y: 0.03, z: 0.039 } as const;

/** The scale to divide a height by for plan over profile: the whole box, or up to 3 mm a pixel where only paper is lost. */
export function cockpitScale(height: number, { y: broad, z: tall }: Vec3): number {
  const whole = height / (broad + tall);
  const tight = height / (broad - PAPER_TO_SPARE.y + tall - PAPER_TO_SPARE.z);
  return Math.max(whole, Math.min(COCKPIT_SCALE, tight));
}

/** How much of the height that two views lack at a scale the plan goes without; the profile goes without the rest. */
export const PLAN_SHARE_OF_SPARED = PAPER_TO_SPARE.y / (PAPER_TO_SPARE.y + PAPER_TO_SPARE.z);

/** The camera for a cockpit: the whole box, or up to 3 mm a pixel where only paper around it is lost. */
export function cockpitCamera(windows: Windows, box: BoatBox): ViewCamera {
  const whole = fitCamera(windows, box);
  const { plan, profile } = windows;
  const { x: long, y: broad, z: tall } = boxSize(box);
  const tight = Math.min(
    profile.width / (long - PAPER_TO_SPARE.x),
    plan.height / (broad - PAPER_TO_SPARE.y),
    profile.height / (tall - PAPER_TO_SPARE.z),
  );
  return { ...whole, pixelsPerMetre: Math.max(whole.pixelsPerMetre, Math.min(COCKPIT_SCALE, tight)) };
}

/** The view whose window holds a screen point; null between them. */
export function viewAt(windows: Windows, { x, y }: ScreenPoint): ViewName | null {
  return (
    VIEWS.find((view) => {
      const { left, top, width, height } = windows[view];
      return x >= left && x <= left + width && y >= top && y <= top + height;
    }) ?? null
  );
}
