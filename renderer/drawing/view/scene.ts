import type { Format } from '../../../app/language/format.ts';
import type { FittingCoordinate } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report, SeatReport } from '../../../core/evaluation/report.ts';
import type { Figure } from '../../../core/figure/figure.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import type { Afloat } from '../../../core/hydrostatics/afloat.ts';
import type { NotePlace, StrokeView } from '../../document/bench-view.ts';
import type { Grip } from './handle.ts';
import type { HullDrawing } from './hull-drawing.ts';
import type { DragLimits } from './limits.ts';
import type { Pen } from './pen.ts';
import type { ScreenPoint } from './screen-point.ts';
import type { SheetLayout } from './sheet-layout.ts';
import { project, type ViewGeometry, type ViewName } from './view-geometry.ts';

/** One state of a fit, ready to be drawn. */
export interface Picture {
  readonly fit: Fit;
  readonly report: Report;
  /** The figure of each seat in the ready stance; null where the seat is empty. */
  readonly figures: readonly (Figure | null)[];
}

/** What is being dragged, if anything. */
export interface Dragged {
  readonly grip: Grip;
  /** As it was at the start of the drag: drawn as a ghost. */
  readonly start: Picture;
  readonly limits: ReadonlyMap<FittingCoordinate, DragLimits>;
}

/** Everything a part needs to draw itself. Made again whenever anything of it changes; parts keep nothing of it. */
export interface Scene {
  readonly picture: Picture;
  /** A previewed change or a compared revision. */
  readonly ghost: Picture | null;
  /** Index of the seat worked on. */
  readonly seat: number;
  /** Findings in sight of the margin. */
  readonly notes: readonly NotePlace[];
  /** Where the stroke's slider stands. */
  readonly stroke: StrokeView;
  readonly layout: SheetLayout;
  readonly geometry: ViewGeometry;
  readonly lines: HullDrawing;
  readonly format: Format;
  /** Part of the drawing lit because it, or a finding that speaks of it, is pointed at. */
  readonly lit: string | null;
  readonly held: Dragged | null;
  /** Handle under the pointer or with the keyboard's focus. */
  readonly pointed: Grip | null;
  /** True when the pointed handle has the keyboard's focus. */
  readonly focused: boolean;
  /** True after a touch: handles are drawn and felt larger. */
  readonly touch: boolean;
}

/** The canvas layers, lowest first. */
export const LAYERS = ['ground', 'boat', 'labels', 'overlay'] as const;
export type LayerName = (typeof LAYERS)[number];

/** One part of the drawing: where it lies and how it is drawn. */
export interface ScenePart {
  readonly layer: LayerName;
  paint(pen: Pen, scene: Scene): void;
}

/** The report of the seat worked on; null when nobody kneels there. */
export function seatReport({ picture, seat }: Scene): SeatReport | null {
  return picture.report.seats[seat] ?? null;
}

/** The boat at rest with the crew ready; null when it does not float. */
export function afloatReady({ report }: Picture): Afloat | null {
  return report.afloat.ready.kind === 'afloat' ? report.afloat.ready : null;
}

/** x of the datum that the seat worked on is measured from. */
export function datumX({ picture: { fit }, seat }: Scene): number {
  return fit.boat.seats[seat]?.stationM ?? 0;
}

/** Pixels per metre below which a figure is an overview: no joints, arcs or dimensions, the others drawn nearly as dark. */
const OVERVIEW = 130;

/** Whether the views show so much of the boat that a figure is only a figure. */
export function isOverview({ geometry }: Pick<Scene, 'geometry'>): boolean {
  return geometry.camera.pixelsPerMetre < OVERVIEW;
}

/** How far a paddler with fittings and paddle reaches ahead and aft of the seat's mark at most, metres. */
const REACH = 1.6;

/** Whether anything of a seat can be seen in plan and profile; what cannot is not drawn. */
export function isSeatInSight(
  { picture, geometry }: Pick<Scene, 'picture' | 'geometry'>,
  index: number,
): boolean {
  const { camera, windows } = geometry;
  const half = windows.plan.width / 2 / camera.pixelsPerMetre;
  const station = picture.fit.boat.seats[index]?.stationM ?? 0;
  return Math.abs(station - camera.at.x) < half + REACH;
}

/** A projector into one view of a scene. */
export function projectorOf(scene: Pick<Scene, 'geometry'>, view: ViewName): (point: Vec3) => ScreenPoint {
  return (point) => project(scene.geometry, view, point);
}
