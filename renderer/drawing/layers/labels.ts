import { angleMarks } from '../view/angle-marks.ts';
import { type PlacedLabel, placeLabels } from '../view/label-placer.ts';
import { DASH, type LETTERING, type Pen } from '../view/pen.ts';
import { isOverview, projectorOf, type Scene, type ScenePart, seatReport } from '../view/scene.ts';
import { drawSeverity, SEVERITY_PX } from '../view/severity-shape.ts';
import { type DrawnLabel, drawingLabels } from './drawing-labels.ts';
import { heldLabels } from './held-labels.ts';
import { labelObstacles } from './label-obstacles.ts';
import type { Leader } from './leaders.ts';

/** Arcs of the angles. */
export const arcs: ScenePart = { layer: 'boat', paint: paintArcs };

/** Every label, placed so that none covers another. */
export function labelsPart(route: (scene: Scene) => readonly Leader[]): ScenePart {
  let placed: ReadonlyMap<string, PlacedLabel> = new Map();
  return {
    layer: 'labels',
    paint(pen, scene) {
      const measure = (text: string, lettering: keyof typeof LETTERING) => pen.widthOf(text, lettering);
      const labels = [...heldLabels(scene, measure), ...drawingLabels(scene, measure)];
      const leaders = scene.held ? [] : route(scene);
      const before = { placed, following: scene.held !== null };
      const places = placeLabels(labels, labelObstacles(scene, { measure, leaders }), before);
      placed = new Map(places.map((label) => [label.id, label]));
      const byId = new Map(labels.map((label) => [label.id, label]));
      for (const place of places) drawLabel(pen, scene, { label: byId.get(place.id)!, place });
    },
  };
}

function paintArcs(pen: Pen, scene: Scene): void {
  const stance = seatReport(scene)?.stances.ready;
  if (!stance || isOverview(scene)) return;
  for (const { view, arc, from, to: axis } of angleMarks(stance, scene.geometry.camera.pixelsPerMetre)) {
    const to = projectorOf(scene, view);
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
