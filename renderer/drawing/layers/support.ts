import type { Vec3 } from '../../../core/frame/vec3.ts';
import { CONTACTS } from '../../../core/support/support.ts';
import { DASH, type Pen } from '../view/pen.ts';
import { projectorOf, type Scene, type ScenePart, seatReport } from '../view/scene.ts';
import type { ScreenPoint } from '../view/screen-point.ts';
import { seatFloor } from '../view/seat-floor.ts';
import { supportRing } from '../view/support-ring.ts';
import { VIEWS } from '../view/view-geometry.ts';

/** Radius of the centre of mass's mark, pixels. */
export const CENTRE_MARK_PX = 6.5;
/** Length of an arrow that carries the whole weight, metres of the drawing. */
const ARROW_OF_ALL = 0.34;

/** The patches of support and their polygon laid over the figure, the centre of mass in every view, and the three loads. */
export const support: ScenePart = {
  layer: 'boat',
  paint(pen, scene) {
    const report = seatReport(scene);
    if (!report) return;
    const { windows } = scene.layout;
    pen.within(windows.plan, () => polygon(pen, scene));
    const centre = report.stances.ready.centreOfMass;
    const floor = seatFloor(scene);
    for (const view of ['profile', 'section'] as const) {
      pen.within(windows[view], () => {
        const to = projectorOf(scene, view);
        loads(pen, scene, to);
        pen.line([to(centre), to({ ...centre, z: floor })], {
          stroke: 'measure',
          width: 1.2,
          dash: DASH.centre,
        });
      });
    }
    for (const view of VIEWS) {
      pen.within(windows[view], () => centreMark(pen, projectorOf(scene, view)(centre), CENTRE_MARK_PX));
    }
  },
};

/** The hull of the patches, each patch in it, and the nominal point that the shares are told of. */
function polygon(pen: Pen, scene: Scene): void {
  const { contacts, patches, inside, polygon: edge } = seatReport(scene)!.support;
  const to = projectorOf(scene, 'plan');
  const ring = supportRing(edge, to);
  const lit = scene.lit === 'support';
  pen.ring(ring, { fill: 'measure', alpha: lit ? 0.22 : 0.13 });
  pen.ring(ring, { stroke: lit ? 'accent' : inside ? 'measure' : 'stop', width: lit ? 2.4 : 1.5 });
  for (const name of CONTACTS) {
    const patch = supportRing(patches[name], to);
    if (patch.length > 2) pen.ring(patch, { fill: 'measure', alpha: 0.28 });
    else pen.line(patch, { stroke: 'measure', width: 4 });
    pen.disc(to(contacts[name]), 3, { fill: 'measure' });
  }
}

/** The trade's mark for a centre of mass: a quartered disc. */
function centreMark(pen: Pen, { x, y }: ScreenPoint, radius: number): void {
  const { context, palette } = pen;
  pen.disc({ x, y }, radius + 1.5, { fill: 'paper' });
  pen.disc({ x, y }, radius, { fill: 'paper', stroke: 'ink', width: 1.4 });
  context.fillStyle = palette.ink;
  for (const start of [0, Math.PI]) {
    context.beginPath();
    context.moveTo(x, y);
    context.arc(x, y, radius, start, start + Math.PI / 2);
    context.closePath();
    context.fill();
  }
}

/** Arrows of the loads at the contacts: up into the body, as long as the share they carry. */
function loads(pen: Pen, scene: Scene, to: (p: Vec3) => ScreenPoint): void {
  const { shares, contacts } = seatReport(scene)!.support;
  const scale = scene.geometry.camera.pixelsPerMetre;
  for (const name of CONTACTS) {
    const share = shares[name];
    const tip = to(contacts[name]);
    pen.line([tip, { x: tip.x, y: tip.y + share * ARROW_OF_ALL * scale }], { stroke: 'measure', width: 2 });
    pen.ring([tip, { x: tip.x - 4, y: tip.y + 8 }, { x: tip.x + 4, y: tip.y + 8 }], { fill: 'measure' });
  }
}
