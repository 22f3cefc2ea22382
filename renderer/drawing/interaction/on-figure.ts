import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { isInRing, ringsOf } from '../../../core/graphics/shape.ts';
import { projectorOf, type Scene } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import type { ViewName } from '../view/view-geometry.ts';

/** Whether a screen point lies on the figure of a seat in a view, or on one part of it (`of`). */
export function isOnFigure(
  scene: Scene,
  { index, view, of }: { index: number; view: ViewName; of?: string },
  screen: ScreenPoint,
): boolean {
  const figure = scene.picture.figures[index];
  if (!figure) return false;
  const origin = projectorOf(scene, view)({ x: 0, y: 0, z: 0 });
  const { pixelsPerMetre } = scene.geometry.camera;
  const at = [(screen.x - origin.x) / pixelsPerMetre, (origin.y - screen.y) / pixelsPerMetre] as const;
  const shapes = figureShapes(figure, view).filter((shape) => !of || shape.of === of);
  return ringsOf(shapes).some((ring) => isInRing(ring, at));
}
