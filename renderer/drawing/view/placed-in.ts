import { isOverview, projectorOf, type Scene } from './scene.ts';
import type { Placed } from './traced.ts';
import type { ViewName } from './view-geometry.ts';

/** Widths of lines, pixels: the same at every scale, finer where the whole boat is shown. */
const WIDTHS = { close: { contour: 1.1, detail: 0.9 }, overview: { contour: 0.8, detail: 0.5 } };

/** Where a view's shapes come to lie on the paper. */
export function placedIn(scene: Scene, view: ViewName): Placed {
  const origin = projectorOf(scene, view)({ x: 0, y: 0, z: 0 });
  const widths = isOverview(scene) ? WIDTHS.overview : WIDTHS.close;
  return { ...origin, scale: scene.geometry.camera.pixelsPerMetre, widths };
}
