import { boatParts } from '../../../core/drawing/boat-shapes.ts';
import type { Shape } from '../../../core/graphics/shape.ts';
import { boardTopAt } from '../../../core/parts/board.ts';
import { waterHeight, waterlines } from '../view/hull-drawing.ts';
import { DASH, type Pen } from '../view/pen.ts';
import { placedIn } from '../view/placed-in.ts';
import { afloatReady, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { isShown } from '../view/sheet-layout.ts';
import type { ViewName } from '../view/view-geometry.ts';

/** Width of the hull's line, and while a finding about the hull is pointed at, pixels; how faint the body plan lies. */
const EDGE = 1.6;
const LIT = 2.2;
const BODY_PLAN = 0.26;
const EDGE_INK = { stroke: 'hull-line', width: EDGE } as const;
const LIT_INK = { stroke: 'accent', width: LIT } as const;
/** Holes closer together than this on the screen are not drawn, pixels. */
const LEAST_HOLE_GAP = 3;

/** The hull in its three views, true to its sections, and the water it lies in. */
export const boat: ScenePart = {
  layer: 'boat',
  paint(pen, scene) {
    const { plan, profile, section } = scene.layout.windows;
    pen.within(plan, () => {
      hullFromAbove(pen, scene);
      holes(pen, scene);
      boardHoles(pen, scene);
    });
    pen.within(profile, () => hullFromSide(pen, scene));
    if (isShown(scene.layout, 'section')) pen.within(section, () => hullFromBehind(pen, scene));
  },
};

function hullFromAbove(pen: Pen, scene: Scene): void {
  const placed = placedIn(scene, 'plan');
  const { hull, edge, board } = scene.lines.drawn.plan;
  pen.shapes(hull, placed);
  pen.shapes(board, placed);
  const afloat = afloatReady(scene.picture);
  if (afloat) {
    const ink = { stroke: 'water-line', width: 1, dash: DASH.hidden } as const;
    for (const line of waterlines(scene.lines, afloat))
      if (line.length > 0) pen.placedLine(line, placed, ink);
  }
  hullEdge(pen, scene, { edge, view: 'plan' });
}

/** The hull's line; in the accent while a finding about the hull is pointed at. */
function hullEdge(pen: Pen, scene: Scene, { edge, view }: { edge: readonly Shape[]; view: ViewName }): void {
  pen.shapes(edge, placedIn(scene, view), scene.lit === 'hull' ? LIT_INK : EDGE_INK);
}

/** Holes of the hardware along the floorboard's centreline, where a fitting snaps to them. */
function holes(pen: Pen, scene: Scene): void {
  const { hardware, floorboard } = scene.picture.fit.boat;
  const to = projectorOf(scene, 'plan');
  const datum = scene.picture.fit.boat.seats[scene.seat]?.stationM ?? 0;
  for (const [pitch, travel] of [
    [hardware.padHolePitchM, hardware.padTravelM],
    [hardware.restHolePitchM, hardware.restTravelM],
  ] as const) {
    if (!pitch || pitch * scene.geometry.camera.pixelsPerMetre < LEAST_HOLE_GAP) continue;
    for (let k = Math.ceil(Math.min(...travel) / pitch); k * pitch <= Math.max(...travel) + 1e-9; k++) {
      pen.disc(to({ x: datum - k * pitch, y: 0, z: floorboard.heightM }), 1.3, {
        stroke: 'wood-line',
        width: 0.7,
      });
    }
  }
}

/** Holes of the floorboard that are known: drilled as they are, planned dashed, plugged filled. */
function boardHoles(pen: Pen, scene: Scene): void {
  const { holes: known = [], floorboard } = scene.picture.fit.boat;
  const to = projectorOf(scene, 'plan');
  const { pixelsPerMetre } = scene.geometry.camera;
  for (const { xM, yM, diameterM, state } of known) {
    const at = to({ x: xM, y: yM, z: boardTopAt(floorboard, xM) });
    const radius = Math.max(1.3, (diameterM / 2) * pixelsPerMetre);
    const line = { stroke: 'wood-line', width: 0.9 } as const;
    if (state === 'plugged') pen.disc(at, radius, { ...line, fill: 'wood' });
    else pen.disc(at, radius, state === 'planned' ? { ...line, dash: DASH.hidden } : line);
  }
}

function hullFromSide(pen: Pen, scene: Scene): void {
  const { hull, edge, board } = scene.lines.drawn.profile;
  const placed = placedIn(scene, 'profile');
  pen.shapes(hull, placed);
  water(pen, scene, 'profile');
  hullEdge(pen, scene, { edge, view: 'profile' });
  pen.shapes(board, placed);
}

/** The water as it lies against the boat's own frame: its surface slopes by the trim, or from behind by the heel. */
function water(pen: Pen, scene: Scene, view: 'profile' | 'section'): void {
  const surface = waterSurface(scene, view);
  if (!surface) return;
  const { top, height } = scene.layout.windows[view];
  const low = top + height + 2;
  pen.ring([...surface, { x: surface[1].x, y: low }, { x: surface[0].x, y: low }], { fill: 'water' });
  pen.line(surface, { stroke: 'water-line', width: 1.2 });
}

function waterSurface(scene: Scene, view: 'profile' | 'section'): readonly [ScreenPoint, ScreenPoint] | null {
  const afloat = afloatReady(scene.picture);
  if (!afloat) return null;
  const to = projectorOf(scene, view);
  const { at, pixelsPerMetre } = scene.geometry.camera;
  const half = scene.layout.windows[view].width / 2 / pixelsPerMetre + 0.05;
  const end = (side: 1 | -1) => {
    const x = view === 'profile' ? at.x + side * half : sectionX(scene);
    const y = view === 'profile' ? 0 : at.y - side * half;
    return to({ x, y, z: waterHeight(afloat, x, y) });
  };
  return [end(-1), end(1)];
}

/** The station that the section from behind is cut at: the knee pad's. */
export function sectionX({ picture: { fit }, seat }: Scene): number {
  return (fit.boat.seats[seat]?.stationM ?? 0) - fit.seats[seat]!.kneePad.aftM;
}

function hullFromBehind(pen: Pen, scene: Scene): void {
  const { lines, picture } = scene;
  const cut = {
    hull: lines.hull,
    board: picture.fit.boat.floorboard,
    span: [0, 0],
    cutX: sectionX(scene),
  } as const;
  const { hull, edge, board } = boatParts(cut, 'section');
  const placed = placedIn(scene, 'section');
  water(pen, scene, 'section');
  pen.shapes([hull], placed);
  pen.faint(BODY_PLAN, () => pen.shapes(lines.bodyPlan, placed));
  hullEdge(pen, scene, { edge: [edge], view: 'section' });
  pen.shapes([board], placed);
}
