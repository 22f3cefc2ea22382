import { COORDINATES, type FittingCoordinate } from '../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { coordinateWords, dimensionWords } from '../view/coordinate-words.ts';
import { HANDLES } from '../view/handle.ts';
import { bearingPoint, handlePlace, seatPlace } from '../view/handle-places.ts';
import { LETTERING } from '../view/pen.ts';
import { datumX, projectorOf, type Scene } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { seatFloor } from '../view/seat-floor.ts';
import type { ViewName } from '../view/view-geometry.ts';
import type { DrawnLabel, MeasureText } from './drawing-labels.ts';

/** A dimension of what is being dragged: from a datum to the handle, with its value. */
export interface HeldDimension {
  readonly coordinate: FittingCoordinate;
  /** From the datum to the handle, screen. */
  readonly line: readonly [ScreenPoint, ScreenPoint];
  readonly text: string;
}

/** How far beside the handle a dimension line runs, pixels. */
const BESIDE = 26;

/** The dimensions of the held handle in the view it is held in; none for what turns or slides. */
export function heldDimensions(scene: Scene): HeldDimension[] {
  const grip = scene.held?.grip;
  if (!grip || HANDLES[grip.handle].motion !== 'place') return [];
  const { fit, report } = scene.picture;
  const place = seatPlace(fit, report, scene.seat);
  const at = bearingPoint(place, grip.handle);
  const coordinates = HANDLES[grip.handle].views[grip.view] ?? [];
  return coordinates.map((coordinate) => ({
    coordinate,
    line: lineOf(scene, coordinate, { at, view: grip.view }),
    text: dimensionWords(coordinate, coordinateOf(place.seat, coordinate), scene.format),
  }));
}

function lineOf(
  scene: Scene,
  coordinate: FittingCoordinate,
  { at, view }: { at: Vec3; view: ViewName },
): readonly [ScreenPoint, ScreenPoint] {
  const to = projectorOf(scene, view);
  const end = to(at);
  const floor = seatFloor(scene);
  const { axis } = COORDINATES[coordinate];
  const datum =
    axis === 'forward'
      ? { ...at, x: datumX(scene) }
      : axis === 'across'
        ? { ...at, y: 0 }
        : { ...at, z: floor };
  const start = to(datum);
  const level =
    Math.abs(start.y - end.y) < 1e-6 && axis !== 'height' && !(view === 'plan' && axis === 'across');
  const shift = level ? { x: 0, y: BESIDE } : { x: -BESIDE, y: 0 };
  return [
    { x: start.x + shift.x, y: start.y + shift.y },
    { x: end.x + shift.x, y: end.y + shift.y },
  ];
}

/** Live coordinates beside what is being dragged, and the name of what is pointed at. */
export function heldLabels(scene: Scene, measure: MeasureText): DrawnLabel[] {
  const grip = scene.held?.grip;
  if (!grip) return [];
  const { fit, report } = scene.picture;
  const place = seatPlace(fit, report, scene.seat);
  const at = handlePlace(place, grip.handle);
  if (!at) return [];
  const bounds = scene.layout.windows[grip.view];
  const { motion, views } = HANDLES[grip.handle];
  const label = (
    id: string,
    text: string,
    place: Pick<DrawnLabel, 'anchor' | 'toward' | 'gap'>,
  ): DrawnLabel => ({
    ...place,
    id,
    text,
    lettering: 'label',
    colour: 'accent',
    bounds,
    width: measure(text, 'label'),
    height: LETTERING.label.height,
    severity: 'good',
    part: null,
  });
  if (motion === 'place') {
    return heldDimensions(scene).map(({ coordinate, line: [a, b], text }) => {
      const upright = Math.abs(a.x - b.x) < 1e-6;
      const anchor = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      return label(`held-${coordinate}`, text, { anchor, toward: upright ? Math.PI : Math.PI / 2, gap: 5 });
    });
  }
  const coordinate = views[grip.view]![0]!;
  const text = coordinateWords(coordinate, coordinateOf(place.seat, coordinate), scene.format);
  return [
    label(`held-${coordinate}`, text, { anchor: projectorOf(scene, grip.view)(at), toward: -0.6, gap: 16 }),
  ];
}
