import type { Vec3 } from '../../../core/frame/vec3.ts';
import { sectionAt } from '../../../core/hull/section-at.ts';
import { boardHalfWidthAt, boardStations, boardTopAt } from '../../../core/parts/board.ts';
import { mirrored, waterHeight, waterline } from '../view/hull-lines.ts';
import { DASH, type Pen } from '../view/pen.ts';
import { afloatReady, onto, type Part, type Scene } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { isShown } from '../view/sheet-layout.ts';

/** Kept in sight even when the whole boat is. */
const LEAST_BOARD_PX = 2;
/** Holes closer together than this on the screen are not drawn, pixels. */
const LEAST_HOLE_GAP = 3;

/** The hull in its three views, true to its sections, and the water it lies in. */
export const boat: Part = {
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
  const to = onto(scene, 'plan');
  const { sheer } = scene.lines;
  const outline = [...sheer, ...mirrored(sheer).reverse()].map(to);
  pen.ring(outline, { fill: 'hull' });
  const { floorboard } = scene.picture.fit.boat;
  const side = (way: 1 | -1) =>
    boardStations(floorboard).map((x) =>
      to({ x, y: way * boardHalfWidthAt(floorboard, x), z: boardTopAt(floorboard, x) }),
    );
  const board = [...side(1), ...side(-1).reverse()];
  pen.ring(board, { fill: 'wood', alpha: 0.22 });
  pen.ring(board, { stroke: 'wood-deep', width: 1 });
  const afloat = afloatReady(scene.picture);
  if (afloat) {
    const line = waterline(scene.lines, afloat);
    const ink = { stroke: 'water-line', width: 1, dash: DASH.hidden } as const;
    pen.line(line.map(to), ink);
    pen.line(mirrored(line).map(to), ink);
  }
  pen.ring(outline, hullInk(scene, 1.6));
}

/** The hull's line; in the accent while a finding about the hull is pointed at. */
function hullInk({ lit }: Scene, width: number) {
  return lit === 'hull'
    ? ({ stroke: 'accent', width: width + 0.6 } as const)
    : ({ stroke: 'hull-line', width } as const);
}

/** Holes of the hardware along the floorboard's centreline, where a fitting snaps to them. */
function holes(pen: Pen, scene: Scene): void {
  const { hardware, floorboard } = scene.picture.fit.boat;
  const to = onto(scene, 'plan');
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
  const to = onto(scene, 'plan');
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
  const to = onto(scene, 'profile');
  const { sheer, keel } = scene.lines;
  const centre = (point: Vec3) => to({ ...point, y: 0 });
  const outline = [...sheer.map(centre), ...[...keel].reverse().map(centre)];
  pen.ring(outline, { fill: 'hull' });
  water(pen, scene, 'profile');
  pen.ring(outline, hullInk(scene, 1.6));
  boardFromSide(pen, scene);
}

/** The floorboard from the side, along its profile. */
function boardFromSide(pen: Pen, scene: Scene): void {
  const to = onto(scene, 'profile');
  const { floorboard } = scene.picture.fit.boat;
  const top = boardStations(floorboard).map((x) => to({ x, y: 0, z: boardTopAt(floorboard, x) }));
  const height = boardHeight(scene);
  const under = top.map(({ x, y }) => ({ x, y: y + height })).reverse();
  pen.ring([...top, ...under], { fill: 'wood', stroke: 'wood-line', width: 0.8 });
}

/** Thickness of the floorboard as it is drawn, pixels. */
function boardHeight(scene: Scene): number {
  const { thicknessM } = scene.picture.fit.boat.floorboard;
  return Math.max(LEAST_BOARD_PX, thicknessM * scene.geometry.camera.pixelsPerMetre);
}

/** The floorboard seen from behind between the two edges of its top. */
function board(pen: Pen, scene: Scene, [a, b]: readonly [ScreenPoint, ScreenPoint]): void {
  pen.rect(
    { left: a.x, top: a.y, width: b.x - a.x, height: boardHeight(scene) },
    { fill: 'wood', stroke: 'wood-line', width: 0.8 },
  );
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
  const to = onto(scene, view);
  const { at, pixelsPerMetre } = scene.geometry.camera;
  const half = scene.layout.windows[view].width / 2 / pixelsPerMetre + 0.05;
  const end = (way: 1 | -1) => {
    const x = view === 'profile' ? at.x + way * half : sectionX(scene);
    const y = view === 'profile' ? 0 : at.y - way * half;
    return to({ x, y, z: waterHeight(afloat, x, y) });
  };
  return [end(-1), end(1)];
}

/** The station that the section from behind is cut at: the knee pad's. */
export function sectionX({ picture: { fit }, seat }: Scene): number {
  return (fit.boat.seats[seat]?.stationM ?? 0) - fit.seats[seat]!.kneePad.aftM;
}

function hullFromBehind(pen: Pen, scene: Scene): void {
  const to = onto(scene, 'section');
  water(pen, scene, 'section');
  const half = sectionAt(scene.lines.hull, sectionX(scene));
  const outline = wholeSection(half).map(to);
  pen.ring(outline, { fill: 'hull' });
  for (const line of scene.lines.aftSections) {
    pen.line(wholeSection(line).map(to), { stroke: 'hull-line', width: 0.7, alpha: 0.26 });
  }
  pen.line(outline, hullInk(scene, 2));
  const { floorboard } = scene.picture.fit.boat;
  const width = boardHalfWidthAt(floorboard, sectionX(scene));
  const z = boardTopAt(floorboard, sectionX(scene));
  board(pen, scene, [to({ x: 0, y: width, z }), to({ x: 0, y: -width, z })]);
}

/** From the port sheer down to the keel and up to the starboard sheer. */
function wholeSection(half: readonly Vec3[]): Vec3[] {
  return [...[...half].reverse(), ...mirrored(half)];
}
