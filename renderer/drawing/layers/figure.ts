import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { nearness } from '../../../core/graphics/view.ts';
import type { FigurePoint } from '../../../core/posture/stance.ts';
import type { Pen } from '../view/pen.ts';
import { placedIn } from '../view/placed-in.ts';
import { isOverview, isSeatInSight, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import { isShown } from '../view/sheet-layout.ts';
import type { ViewName } from '../view/view-geometry.ts';
import { fittingsFromAbove, fittingsOver } from './fittings.ts';

/** Seen from above the figure is thinner than from the sides, and the fittings are laid over it once more, faintly. */
const FROM_ABOVE = 0.72;
const FITTINGS_OVER = 0.42;
/** The others in the boat: beside the seat worked on, and where the whole boat is shown. */
const NEIGHBOUR = { close: 0.4, overview: 0.75 };
/** The kneeling paddler from all three sides, with the paddle in the hands; from above, the fittings show through. */
export const figures: ScenePart = {
  layer: 'boat',
  paint(pen, scene) {
    const { windows } = scene.layout;
    const whole = isOverview(scene) || !isShown(scene.layout, 'section');
    const neighbour = whole ? NEIGHBOUR.overview : NEIGHBOUR.close;
    scene.picture.figures.forEach((figure, index) => {
      const mine = index === scene.seat;
      if (!figure || (!mine && !isSeatInSight(scene, index))) return;
      const draw = (on: Pen, view: ViewName) =>
        on.within(windows[view], () => {
          on.shapes(figureShapes(figure, view), placedIn(scene, view));
          if (view !== 'plan') fittingsOver(on, scene, { index, view });
          if (mine && !isOverview(scene)) joints(on, scene, view);
        });
      const share = mine ? 1 : neighbour;
      draw(pen.washed(FROM_ABOVE * share, 'hull'), 'plan');
      draw(share === 1 ? pen : pen.washed(share, 'paper'), 'profile');
      if (mine && isShown(scene.layout, 'section')) draw(pen, 'section');
    });
    pen.within(windows.plan, () => pen.faint(FITTINGS_OVER, () => fittingsFromAbove(pen, scene)));
  },
};

/** Joints that get a mark, each with the joint of the other side it may lie behind, and the part a finding speaks of. */
const JOINTS: readonly (readonly [joint: FigurePoint, other: FigurePoint, part: string])[] = [
  ['kneelingHip', 'frontHip', 'hip'],
  ['frontHip', 'kneelingHip', 'hip'],
  ['kneelingKnee', 'frontKnee', 'kneelingKnee'],
  ['frontKnee', 'kneelingKnee', 'frontKnee'],
  ['kneelingAnkle', 'frontAnkle', ''],
  ['frontAnkle', 'kneelingAnkle', ''],
];

/** Small marks where the legs' angles are read. */
function joints(pen: Pen, scene: Scene, view: ViewName): void {
  const points = scene.picture.report.seats[scene.seat]?.stances.ready.points;
  if (!points) return;
  const to = projectorOf(scene, view);
  for (const [name, other, part] of JOINTS) {
    const close = nearness(view, points[name]) >= nearness(view, points[other]);
    const lit = scene.lit !== null && part === scene.lit;
    pen.disc(to(points[name]), lit ? 5 : close ? 2.8 : 2.2, {
      fill: 'paper',
      stroke: lit ? 'accent' : 'figure-line',
      width: lit ? 2.4 : 1,
    });
  }
}
