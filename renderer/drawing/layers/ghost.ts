import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { ringsOf } from '../../../core/graphics/shape.ts';
import { topOf } from '../../../core/parts/part.ts';
import { seatPlace } from '../view/handle-places.ts';
import { DASH, Pen } from '../view/pen.ts';
import { placedIn } from '../view/placed-in.ts';
import { isSeatInSight, type Picture, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import { VIEWS } from '../view/view-geometry.ts';

/** The start of a drag, a previewed change or a compared revision: dashed outlines of fittings and figure. */
export function ghostPart(): ScenePart {
  return outlinePart((scene) => scene.held?.start ?? scene.ghost, { fittings: true });
}

/** Dashed outlines of whatever `pick` says (null: nothing), drawn on a canvas of its own and reused while they do not change. */
export function outlinePart(
  pick: (scene: Scene) => Picture | null,
  options: { fittings: boolean },
): ScenePart {
  let sheet: HTMLCanvasElement | null = null;
  let drawn: { key: string; picture: Picture } | null = null;
  return {
    layer: 'overlay',
    paint(pen, scene) {
      const picture = pick(scene);
      if (!picture) {
        sheet = null;
        drawn = null;
        return;
      }
      const { canvas } = pen.context;
      const seats = outlinedSeats(scene, picture);
      const key = keyOf(scene, canvas, seats);
      if (!sheet || !drawn || drawn.picture !== picture || drawn.key !== key) {
        sheet ??= document.createElement('canvas');
        sheet.width = canvas.width;
        sheet.height = canvas.height;
        const over = sheet.getContext('2d')!;
        over.setTransform(pen.context.getTransform());
        const on = new Pen(over, pen.palette);
        for (const seat of seats) {
          silhouettes(on, scene, { picture, seat });
          if (options.fittings) fittingOutlines(on, scene, { picture, seat });
        }
        drawn = { key, picture };
      }
      pen.context.save();
      pen.context.setTransform(1, 0, 0, 1, 0, 0);
      pen.context.drawImage(sheet, 0, 0);
      pen.context.restore();
    },
  };
}

/** What the ghost's picture on the screen depends on besides the ghost itself. */
function keyOf(
  { geometry: { camera, windows }, seat }: Scene,
  canvas: HTMLCanvasElement,
  seats: readonly number[],
): string {
  return JSON.stringify([camera, windows, seat, seats, canvas.width, canvas.height]);
}

/** The seat worked on, and of the others in sight those that the outline has otherwise than they are drawn. */
function outlinedSeats(scene: Scene, { fit }: Picture): number[] {
  const drawn = scene.picture.fit.seats;
  return fit.seats.flatMap((seat, index) => {
    if (index === scene.seat) return index;
    if (seat === drawn[index] || !isSeatInSight(scene, index)) return [];
    return JSON.stringify(seat) === JSON.stringify(drawn[index]) ? [] : index;
  });
}

interface Outlined {
  readonly picture: Picture;
  readonly seat: number;
}

/** Outlines of the figure's union: every outline is dashed first, then the insides are erased. */
function silhouettes(pen: Pen, scene: Scene, { picture, seat }: Outlined): void {
  const figure = picture.figures[seat];
  if (!figure) return;
  for (const view of VIEWS) {
    if (view === 'section' && seat !== scene.seat) continue;
    const placed = placedIn(scene, view);
    pen.within(scene.layout.windows[view], () => {
      const rings = ringsOf(figureShapes(figure, view));
      for (const ring of rings)
        pen.placedRing(ring, placed, { stroke: 'ink', width: 2.2, dash: DASH.hidden });
      pen.context.globalCompositeOperation = 'destination-out';
      for (const ring of rings) pen.placedRing(ring, placed, { fill: 'ink' });
      pen.context.globalCompositeOperation = 'source-over';
    });
  }
}

function fittingOutlines(pen: Pen, scene: Scene, { picture, seat: index }: Outlined): void {
  const to = projectorOf(scene, 'plan');
  if (!picture.fit.seats[index]) return;
  const { kneePad, rearRest } = seatPlace(picture.fit, picture.report, index).parts;
  pen.within(scene.layout.windows.plan, () => {
    for (const part of [kneePad, rearRest]) {
      pen.ring(topOf(part).map(to), { stroke: 'ink', width: 1.1, dash: DASH.hidden });
    }
  });
}
