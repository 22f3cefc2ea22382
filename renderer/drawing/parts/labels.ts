import { along, type Vec3 } from '../../../core/frame/vec3.ts';
import { angleMarks } from '../angle-marks.ts';
import { type DrawnLabel, drawingLabels } from '../drawing-labels.ts';
import { gripMarks } from '../grip-marks.ts';
import { heldLabels } from '../held-labels.ts';
import { type Obstacles, type PlacedLabel, placeLabels } from '../label-placer.ts';
import { DASH, type LETTERING, type Pen } from '../pen.ts';
import type { Disc } from '../round-hull.ts';
import { isOverview, onto, type Part, type Scene, seatReport } from '../scene.ts';
import type { ScreenPoint } from '../screen-point.ts';
import { drawSeverity, SEVERITY_PX } from '../severity-shape.ts';
import { VIEWS } from '../view-geometry.ts';
import { captionsOf } from './captions.ts';

/** Arcs of the angles and every label, placed so that none covers another. */
export function labelsPart(): Part {
  let before: ReadonlyMap<string, PlacedLabel> = new Map();
  return {
    layer: 'labels',
    paint(pen, scene) {
      arcs(pen, scene);
      const measure = (text: string, lettering: keyof typeof LETTERING) => pen.widthOf(text, lettering);
      const labels = [...heldLabels(scene, measure), ...drawingLabels(scene, measure)];
      const placed = placeLabels(labels, obstaclesOf(pen, scene), before);
      before = new Map(placed.map((label) => [label.id, label]));
      const byId = new Map(labels.map((label) => [label.id, label]));
      for (const place of placed) drawLabel(pen, scene, { label: byId.get(place.id)!, place });
    },
  };
}

function arcs(pen: Pen, scene: Scene): void {
  const stance = seatReport(scene)?.stances.ready;
  if (!stance || isOverview(scene)) return;
  for (const { view, arc, from, to: axis } of angleMarks(stance, scene.geometry.camera.pixelsPerMetre)) {
    const to = onto(scene, view);
    pen.within(scene.layout.windows[view], () => {
      if (from) pen.line(from.map(to), { stroke: 'measure', width: 1, dash: DASH.hidden });
      if (axis) pen.line(axis.map(to), { stroke: 'measure', width: 1 });
      pen.line(arc.points.map(to), { stroke: 'measure', width: 1.6 });
    });
  }
}

function drawLabel(
  pen: Pen,
  scene: Scene,
  { label, place: { rect, leader } }: { label: DrawnLabel; place: PlacedLabel },
): void {
  if (leader) {
    pen.line(leader, { stroke: label.colour, width: 0.8, alpha: 0.7 });
    pen.disc(leader[0], 1.6, { fill: label.colour });
  }
  const lit = label.part !== null && label.part === scene.lit;
  const y = rect.top + rect.height / 2;
  let x = rect.left;
  if (label.severity !== 'good') {
    drawSeverity(pen, label.severity, { x: x + SEVERITY_PX / 2, y });
    x += SEVERITY_PX + 5;
  }
  pen.text(
    label.text,
    { x, y: y + 0.5 },
    {
      lettering: label.lettering,
      colour: lit ? 'accent' : label.colour,
      baseline: 'middle',
      rim: 'paper',
    },
  );
}

/** Handles are never covered; the figure only where there is no better place. */
function obstaclesOf(pen: Pen, scene: Scene): Obstacles {
  const captioned = captionsOf(pen, scene).map(({ rect }) => rect);
  const handles = gripMarks(scene).map(({ at, radius }) => ({
    left: at.x - radius - 2,
    top: at.y - radius - 2,
    width: 2 * radius + 4,
    height: 2 * radius + 4,
  }));
  const soft: Disc[] = [];
  const scale = scene.geometry.camera.pixelsPerMetre;
  for (const solid of scene.picture.figures[scene.seat] ?? []) {
    for (const view of VIEWS) {
      const to = onto(scene, view);
      for (const balls of solid.hulls) {
        for (const { at, radius } of balls) soft.push({ ...to(at), radius: radius * scale });
      }
    }
  }
  const points = seatReport(scene)?.stances.ready.points;
  if (points)
    for (const view of VIEWS) soft.push(...alongShaft(points.topHand, points.lowerHand, onto(scene, view)));
  return { hard: [...captioned, ...handles], soft };
}

/** Discs along the shaft and on into the water. */
function alongShaft(top: Vec3, lower: Vec3, to: (p: Vec3) => ScreenPoint): Disc[] {
  return Array.from({ length: 14 }, (_, k) => ({ ...to(along(top, lower, k / 7)), radius: 6 }));
}
