import type { ViewPoint } from '../../../core/graphics/view.ts';
import type { FigurePoint } from '../../../core/posture/stance.ts';
import type { ShowScene } from '../../../core/show/show-scene.ts';
import type { BodyPlace } from '../../../core/trial/observation.ts';

/** Where a place lies: a share of the way from one point of the figure to another, then moved in the side view, metres. */
interface Anchor {
  readonly from: FigurePoint;
  readonly to?: FigurePoint;
  readonly share?: number;
  readonly by?: ViewPoint;
}

const ANCHORS: Readonly<Record<BodyPlace, Anchor>> = {
  lowerBack: { from: 'midHip', to: 'midShoulder', share: 0.25, by: [-0.09, 0] },
  kneelingHip: { from: 'kneelingHip', by: [-0.04, 0] },
  rearAnkle: { from: 'kneelingAnkle' },
  kneelingShin: { from: 'kneelingKnee', to: 'kneelingAnkle', share: 0.5 },
  rearToes: { from: 'rearToe' },
  frontHip: { from: 'frontHip', by: [0.06, 0.04] },
  frontOfThigh: { from: 'kneelingHip', to: 'kneelingKnee', share: 0.5, by: [0.06, 0] },
  frontKnee: { from: 'frontKnee' },
  kneelingKnee: { from: 'kneeContact', by: [0.02, 0.02] },
  frontFoot: { from: 'frontBall' },
};

/** Places named on the stern's side of the figure, and on the bow's, from above down. */
export const PLACES_AFT: readonly BodyPlace[] = [
  'lowerBack',
  'kneelingHip',
  'rearAnkle',
  'kneelingShin',
  'rearToes',
];
export const PLACES_FORWARD: readonly BodyPlace[] = [
  'frontHip',
  'frontOfThigh',
  'frontKnee',
  'kneelingKnee',
  'frontFoot',
];

/** Where a place of the body lies in the side view of a scene, metres from the seat's mark: forward, up. */
export function placeInView({ points, frame }: ShowScene, place: BodyPlace): ViewPoint {
  const { from, to = from, share = 0, by = [0, 0] } = ANCHORS[place];
  const [a, b] = [points[from], points[to]];
  return [a.x + (b.x - a.x) * share - frame.stationX + by[0], a.z + (b.z - a.z) * share + by[1]];
}
