import { ovalsOf } from '../../../core/figure/body-part.ts';
import { along, type Vec3 } from '../../../core/frame/vec3.ts';
import { flatOval } from '../../../core/graphics/oval.ts';
import { angleMarks } from '../view/angle-marks.ts';
import { gripMarks } from '../view/grip-marks.ts';
import type { ScreenDisc } from '../view/inside-ring.ts';
import type { Obstacles } from '../view/label-placer.ts';
import { isOverview, projectorOf, type Scene, seatReport } from '../view/scene.ts';
import type { ScreenPoint, ScreenRect } from '../view/screen-point.ts';
import { seatFloor } from '../view/seat-floor.ts';
import { supportRing } from '../view/support-ring.ts';
import { VIEWS } from '../view/view-geometry.ts';
import { captionsOf } from './captions.ts';
import type { MeasureText } from './drawing-labels.ts';
import type { Leader } from './leaders.ts';

/** A line that labels avoid is made of discs this wide, this far apart, pixels. */
const BEAD = { radius: 4, apart: 9 };
/** The paddle's shaft is broader than a line, pixels. */
const SHAFT = { radius: 8, apart: 14 };
/** After a view's name, pixels: a figure right behind it reads as part of it. */
const CAPTION_AIR = 16;
/** Room that the view's buttons take in the longest of the languages, with a gap: a figure beside them reads as one of them. */
const LOOK_ROOM = { width: 190, height: 32 };

/** What labels keep clear of: captions and handles always; the figure, lines and leaders where there is a better place. */
export function labelObstacles(
  scene: Scene,
  { measure, leaders }: { measure: MeasureText; leaders: readonly Leader[] },
): Obstacles {
  const captions = captionsOf(scene, (text) => measure(text, 'caption')).map(({ rect }) => ({
    ...rect,
    width: rect.width + CAPTION_AIR,
  }));
  const handles = gripMarks(scene).map(({ at, radius }) => ({
    left: at.x - radius - 2,
    top: at.y - radius - 2,
    width: 2 * radius + 4,
    height: 2 * radius + 4,
  }));
  const soft = [...figureDiscs(scene), ...leaders.flatMap(({ path }) => beads(path))];
  if (!isOverview(scene)) soft.push(...lineBeads(scene));
  return { hard: [...captions, ...handles, viewButtonRoom(scene)], soft };
}

/** Where the view's buttons stand, with room for their longest words. */
export function viewButtonRoom({ layout: { width, look } }: Scene): ScreenRect {
  return { left: width - look.right - LOOK_ROOM.width, top: look.top, ...LOOK_ROOM };
}

/** A head should be covered last: it counts as this many discs. */
const HEAD_WEIGHT = 3;

function figureDiscs(scene: Scene): ScreenDisc[] {
  const discs: ScreenDisc[] = [];
  const scale = scene.geometry.camera.pixelsPerMetre;
  const figure = scene.picture.figures[scene.seat];
  if (!figure) return [];
  // Neighbouring outlines share ovals; each counts once.
  const ovals = new Set(figure.parts.flatMap(({ flesh }) => flesh.flatMap(ovalsOf)));
  for (const view of VIEWS) {
    const to = projectorOf(scene, view);
    for (const oval of ovals) {
      const { xx, yy } = flatOval(oval, view);
      discs.push({ ...to(oval.at), radius: Math.sqrt((xx + yy) / 2) * scale });
    }
    const head = { ...to(figure.head.at), radius: (figure.head.height / 2) * scale };
    discs.push(...Array.from({ length: HEAD_WEIGHT }, () => head));
  }
  return discs;
}

/** Arcs of the angles, the shaft, the sheer, the plumb line under the centre of mass and the polygon of support. */
function lineBeads(scene: Scene): ScreenDisc[] {
  const report = seatReport(scene);
  if (!report) return [];
  const { ready } = report.stances;
  const { topHand, lowerHand } = ready.points;
  const floor = { ...ready.centreOfMass, z: seatFloor(scene) };
  const ring = supportRing(report.support.polygon, projectorOf(scene, 'plan'));
  const marks = angleMarks(ready, scene.geometry.camera.pixelsPerMetre);
  return [
    ...VIEWS.flatMap((view) => alongShaft(topHand, lowerHand, projectorOf(scene, view))),
    ...beads([ready.centreOfMass, floor].map(projectorOf(scene, 'profile'))),
    ...beads([ready.centreOfMass, floor].map(projectorOf(scene, 'section'))),
    ...beads([...ring, ring[0]!]),
    ...sheerBeads(scene),
    ...marks.flatMap(({ view, arc }) => beads(arc.points.map(projectorOf(scene, view)))),
  ];
}

/** Discs along the sheer, as far as the view from the side shows it. */
function sheerBeads(scene: Scene): ScreenDisc[] {
  const { left, width } = scene.layout.windows.profile;
  return beads(scene.lines.sheer.map(projectorOf(scene, 'profile'))).filter(
    ({ x }) => x >= left && x <= left + width,
  );
}

/** Discs along the shaft and into the water, so near each other that no word fits between two. */
function alongShaft(top: Vec3, lower: Vec3, to: (p: Vec3) => ScreenPoint): ScreenDisc[] {
  return beads([to(top), to(along(top, lower, 2))], SHAFT);
}

/** Small discs along a line. */
function beads(path: readonly ScreenPoint[], { radius, apart } = BEAD): ScreenDisc[] {
  return path.slice(1).flatMap((to, k) => {
    const from = path[k]!;
    const count = Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y) / apart));
    return Array.from({ length: count }, (_, j) => ({
      x: from.x + ((to.x - from.x) * (j + 0.5)) / count,
      y: from.y + ((to.y - from.y) * (j + 0.5)) / count,
      radius,
    }));
  });
}
