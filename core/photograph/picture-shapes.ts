import type { Figure } from '../figure/figure.ts';
import { figureShapes } from '../figure/figure-shapes.ts';
import { mappedFigure } from '../figure/mapped-figure.ts';
import type { Vec3 } from '../frame/vec3.ts';
import type { Shape } from '../graphics/shape.ts';
import type { ViewName } from '../graphics/view.ts';
import type { Hull } from '../hull/hull.ts';
import { sheerHalfBreadth, sheerHeight } from '../hull/section-at.ts';
import { type Camera, depthOf, type Pixel, projectPoint } from './camera.ts';

/**
 * A figure in a camera's picture. `shapes` lie in metres to the right and up of `origin`, which `pxPerMetre` turns into pixels: metres
 * as long as they are seen at the head's distance.
 */
export interface PictureShapes {
  /** The figure, the farthest shape first. */
  readonly shapes: readonly Shape[];
  /** Where the shapes' zero lies in the picture. */
  readonly origin: Pixel;
  /** At the head's distance; nearer things are drawn as if they were there. */
  readonly pxPerMetre: number;
}

/** A figure nearer to the camera than this is not drawn, metres. */
const NEAREST_M = 0.5;

/**
 * A figure (boat frame, metres) as a camera sees it, from the far to the near. The head has the outlines of the side or, where the
 * camera looks more along the boat than across it, of the back. Null where the figure is not before the camera.
 */
export function pictureShapes(camera: Camera, figure: Figure): PictureShapes | null {
  const depth = depthOf(camera, figure.head.at);
  if (depth < NEAREST_M) return null;
  const pxPerMetre = camera.focalPx / depth;
  const view: ViewName = Math.abs(camera.forward.x) > Math.abs(camera.forward.y) ? 'section' : 'profile';
  const seen = (point: Vec3): Vec3 => {
    const { u, v } = projectPoint(camera, point);
    const right = (u - camera.centre.u) / pxPerMetre;
    const up = (camera.centre.v - v) / pxPerMetre;
    const far = depthOf(camera, point);
    // As the views read them: to the right x or −y, nearer −y or −x.
    return view === 'profile' ? { x: right, y: far, z: up } : { x: far, y: -right, z: up };
  };
  return { shapes: figureShapes(mappedFigure(figure, seen), view), origin: camera.centre, pxPerMetre };
}

/** Points along each gunwale. */
const STEPS = 48;

/** Both gunwales of a hull as a camera sees them, port first, pixels: they show whether the camera is found. */
export function gunwalesIn(camera: Camera, hull: Hull): Pixel[][] {
  return ([1, -1] as const).map((side) =>
    Array.from({ length: STEPS + 1 }, (_, i) => {
      const x = hull.aftX + ((hull.foreX - hull.aftX) * i) / STEPS;
      return { x, y: side * sheerHalfBreadth(hull, x), z: sheerHeight(hull, x) };
    })
      .filter((point) => depthOf(camera, point) > NEAREST_M)
      .map((point) => projectPoint(camera, point)),
  );
}
