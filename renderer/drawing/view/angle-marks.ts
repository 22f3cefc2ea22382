import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import { along, norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import type { Stance, StanceAngle } from '../../../core/posture/stance.ts';
import { type AngleArc, angleArc, arcToward } from './angle-arc.ts';
import type { ViewName } from './view-geometry.ts';

/** One angle as drawn: its arc in space, what it is called in the report, and the view it is written in. */
export interface AngleMark {
  readonly angle: StanceAngle & QuantityId;
  readonly view: ViewName;
  readonly arc: AngleArc;
  readonly value: number;
  /** Lines that the angle lies between, where no limb shows them: the upright, and the trunk's own line. */
  readonly from: readonly [Vec3, Vec3] | null;
  readonly to: readonly [Vec3, Vec3] | null;
}

/** Radii of the arcs on the screen, pixels. */
const ARC_PX = { joint: 30, hip: 24 };
/**
 * How far out the trunk's arc is drawn, as a share of the trunk: beside the back in the side view, over the head from
 * behind, where a lean of a few degrees is wide enough to be seen.
 */
const TRUNK_SHARE = { profile: 0.82, section: 1.82 } as const;

/** The angles that the drawing shows, as arcs in space; what cannot be drawn (a limb of no length) is left out. */
export function angleMarks({ points, angles }: Stance, pixelsPerMetre: number): AngleMark[] {
  const radius = (px: number) => px / pixelsPerMetre;
  const { midHip, midShoulder, kneelingHip, kneelingKnee, kneelingAnkle, frontHip, frontKnee, frontAnkle } =
    points;
  const up = subtract(midShoulder, midHip);
  const overHip = { x: kneelingHip.x + up.x, y: kneelingHip.y + up.y, z: kneelingHip.z + up.z };
  const made: (AngleMark | null)[] = [
    mark(
      'frontKnee',
      'profile',
      angleArc({ corner: frontKnee, from: frontHip, to: frontAnkle }, radius(ARC_PX.joint)),
    ),
    mark(
      'kneelingKnee',
      'profile',
      angleArc({ corner: kneelingKnee, from: kneelingHip, to: kneelingAnkle }, radius(ARC_PX.joint)),
    ),
    mark(
      'kneelingHip',
      'profile',
      arcToward(
        { corner: kneelingHip, from: overHip, toward: { x: 1, y: 0, z: 0 }, angle: angles.kneelingHip },
        radius(ARC_PX.hip),
      ),
    ),
    trunkMark('trunkPitch', 'profile', { foot: midHip, head: { ...midShoulder, y: midHip.y } }),
    trunkMark('trunkRoll', 'section', { foot: midHip, head: { ...midShoulder, x: midHip.x } }),
  ];
  return made.filter((m) => m !== null);

  function mark(angle: AngleMark['angle'], view: ViewName, arc: AngleArc | null): AngleMark | null {
    return arc && { angle, view, arc, value: angles[angle], from: null, to: null };
  }

  function trunkMark(
    angle: AngleMark['angle'],
    view: 'profile' | 'section',
    { foot, head }: { foot: Vec3; head: Vec3 },
  ): AngleMark | null {
    const reach = norm(subtract(head, foot));
    const top = { ...foot, z: foot.z + reach };
    const arc = angleArc({ corner: foot, from: top, to: head }, reach * TRUNK_SHARE[view]);
    const out = TRUNK_SHARE[view] + 0.05;
    const from = [foot, along(foot, top, out)] as const;
    return arc && { angle, view, arc, value: angles[angle], from, to: [foot, along(foot, head, out)] };
  }
}
