import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { type FittingShapes, fittingShapes } from '../../../core/drawing/fitting-shapes.ts';
import { ringsOf } from '../../../core/graphics/shape.ts';
import { type SeatPlace, seatPlace } from '../view/handle-places.ts';
import { DASH, type Pen } from '../view/pen.ts';
import { placedIn } from '../view/placed-in.ts';
import { isSeatInSight, type Picture, type Scene, type ScenePart } from '../view/scene.ts';
import { isShown } from '../view/sheet-layout.ts';
import type { ViewName } from '../view/view-geometry.ts';

const NEIGHBOUR = 0.5;

/** Knee pad with its recess, rear rest and the front foot's print, in the three views. */
export const fittings: ScenePart = {
  layer: 'boat',
  paint(pen, scene) {
    const { windows } = scene.layout;
    scene.picture.fit.seats.forEach((_, index) => {
      const mine = index === scene.seat;
      if (!mine && !isSeatInSight(scene, index)) return;
      const draw = (view: ViewName) =>
        pen.within(windows[view], () => drawShapes(pen, scene, { index, view, of: 'under' }));
      const all = () => {
        draw('plan');
        draw('profile');
        if (mine && isShown(scene.layout, 'section')) draw('section');
      };
      if (mine) all();
      else pen.faint(NEIGHBOUR, all);
    });
  },
};

/** What lies over the paddler: the strap over the foot; from behind the rest as an outline, so that the foot is seen. */
export function fittingsOver(pen: Pen, scene: Scene, seen: { index: number; view: ViewName }): void {
  drawShapes(pen, scene, { ...seen, of: 'over' });
}

/** Everybody's fittings and the hull's edge as seen from above, to be laid over the figures once more. */
export function fittingsFromAbove(pen: Pen, scene: Scene): void {
  scene.picture.fit.seats.forEach((_, index) => {
    if (!isSeatInSight(scene, index)) return;
    drawShapes(pen, scene, { index, view: 'plan', of: 'under' });
    drawShapes(pen, scene, { index, view: 'plan', of: 'over' });
  });
  pen.shapes(scene.lines.drawn.plan.edge, placedIn(scene, 'plan'));
}

function drawShapes(
  pen: Pen,
  scene: Scene,
  { index, view, of }: { index: number; view: ViewName; of: keyof FittingShapes },
): void {
  const placed = placedIn(scene, view);
  const shapes = shapesOf(scene.picture, index, view)[of];
  if (view === 'section' && of === 'over') {
    pen.shapes(
      shapes.filter((shape) => shape.of !== 'rearRest'),
      placed,
    );
    for (const ring of ringsOf(shapes.filter((shape) => shape.of === 'rearRest'))) {
      pen.placedRing(ring, placed, { stroke: 'wood-line', width: 1, dash: DASH.hidden });
    }
    return;
  }
  pen.shapes(shapes, placed);
  if (index !== scene.seat || of === 'over') return;
  for (const ring of ringsOf(shapes.filter((shape) => shape.of === scene.lit))) {
    pen.placedRing(ring, placed, { stroke: 'accent', width: 2.4 });
  }
}

interface Made {
  readonly boat: Fit['boat'];
  readonly index: number;
  readonly place: SeatPlace;
  readonly views: Map<ViewName, FittingShapes>;
}

/** Shapes already made of a seat: they are asked for several times a frame, and those of a seat that nobody moves stay. */
const made = new WeakMap<Seat, Made>();

function shapesOf({ fit, report }: Picture, index: number, view: ViewName): FittingShapes {
  const place = seatPlace(fit, report, index);
  const { seat, footLength } = place;
  let known = made.get(seat);
  if (known?.boat !== fit.boat || known.index !== index || known.place.footLength !== footLength) {
    known = { boat: fit.boat, index, place, views: new Map() };
    made.set(seat, known);
  }
  const shapes = known.views.get(view) ?? fittingShapes(known.place, view);
  known.views.set(view, shapes);
  return shapes;
}
