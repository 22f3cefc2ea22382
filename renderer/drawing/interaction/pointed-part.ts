import type { Finding } from '../../../core/evaluation/finding.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import { topOf } from '../../../core/parts/part.ts';
import { seatPlace } from '../view/handle-places.ts';
import { isInsideRing } from '../view/inside-ring.ts';
import { projectorOf, type Scene, seatReport } from '../view/scene.ts';
import { isWithin, type ScreenPoint, screenDistance } from '../view/screen-point.ts';
import { supportRing } from '../view/support-ring.ts';
import { viewAt } from '../view/view-geometry.ts';
import { isOnFigure } from './on-figure.ts';

type PartName = Finding['part'];

/** How near the pointer must be to a joint or the shaft, pixels. */
const NEAR_JOINT = 14;
const NEAR_SHAFT = 8;

/** The part of the drawing under a screen point, as findings name them; null on empty paper. */
export function pointedPart(scene: Scene, screen: ScreenPoint): PartName | null {
  if (isWithin(screen, scene.layout.strip)) return 'hull';
  const view = viewAt(scene.layout.windows, screen);
  if (view === 'plan') return partFromAbove(scene, screen);
  if (view === 'profile') return partFromSide(scene, screen);
  return view === 'section' && isOnTrunk(scene, 'section', screen) ? 'trunk' : null;
}

function partFromAbove(scene: Scene, screen: ScreenPoint): PartName | null {
  const { fit, report } = scene.picture;
  const { kneePad, rearRest, frontFoot } = seatPlace(fit, report, scene.seat).parts;
  const to = projectorOf(scene, 'plan');
  const hit = (outline: readonly Vec3[]) => isInsideRing(outline.map(to), screen);
  for (const part of [kneePad, rearRest, frontFoot]) if (hit(topOf(part))) return part.part;
  const support = seatReport(scene)?.support;
  return support && isInsideRing(supportRing(support.polygon, to), screen) ? 'support' : null;
}

function partFromSide(scene: Scene, screen: ScreenPoint): PartName | null {
  const points = seatReport(scene)?.stances.ready.points;
  if (!points) return null;
  const to = projectorOf(scene, 'profile');
  const joints: [Vec3, PartName][] = [
    [points.frontKnee, 'frontKnee'],
    [points.kneelingKnee, 'kneelingKnee'],
    [points.kneelingHip, 'hip'],
  ];
  const joint = joints.find(([at]) => screenDistance(to(at), screen) < NEAR_JOINT);
  if (joint) return joint[1];
  if (nearSegment(to(points.topHand), to(points.lowerHand), screen) < NEAR_SHAFT) return 'paddle';
  return isOnTrunk(scene, 'profile', screen) ? 'trunk' : null;
}

function isOnTrunk(scene: Scene, view: 'profile' | 'section', screen: ScreenPoint): boolean {
  return isOnFigure(scene, { index: scene.seat, view, of: 'trunk' }, screen);
}

/** Distance from a point to a segment. */
function nearSegment(a: ScreenPoint, b: ScreenPoint, p: ScreenPoint): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
