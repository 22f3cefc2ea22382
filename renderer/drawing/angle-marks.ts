import type { QuantityId } from '../../core/findings/quantities.ts';
import { along, norm, subtract, type Vec3 } from '../../core/frame/vec3.ts';
import type { Stance, StanceAngle } from '../../core/stance/stance.ts';
import { type AngleArc, angleArc } from './angle-arc.ts';
import type { ViewName } from './view-geometry.ts';

/** One angle as drawn: its arc in space, what it is called in the report, and the view it is written in. */
export interface AngleMark {
  readonly angle: StanceAngle & QuantityId;
  readonly view: ViewName;
  readonly arc: AngleArc;
  readonly value: number;
  /** A reference line that the angle is measured from, where no limb shows it. */
  readonly from: readonly [Vec3, Vec3] | null;
}

/** Radii of the arcs on the screen, pixels. */
const ARC_PX = { joint: 30, hip: 34 };
/** The trunk's arc stands out this far along the trunk, where there is room beside the back. */
const TRUNK_SHARE = 0.82;

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
      angleArc({ corner: kneelingHip, from: overHip, to: kneelingKnee }, radius(ARC_PX.hip)),
    ),
    trunkMark('trunkPitch', 'profile', { foot: midHip, head: { ...midShoulder, y: midHip.y } }),
    trunkMark('trunkRoll', 'section', { foot: midHip, head: { ...midShoulder, x: midHip.x } }),
  ];
  return made.filter((m) => m !== null);

  function mark(angle: AngleMark['angle'], view: ViewName, arc: AngleArc | null): AngleMark | null {
    return arc && { angle, view, arc, value: angles[angle], from: null };
  }

  function trunkMark(
    angle: AngleMark['angle'],
    view: ViewName,
    { foot, head }: { foot: Vec3; head: Vec3 },
  ): AngleMark | null {
    const reach = norm(subtract(head, foot));
    const top = { ...foot, z: foot.z + reach };
    const arc = angleArc({ corner: foot, from: top, to: head }, reach * TRUNK_SHARE);
    return (
      arc && { angle, view, arc, value: angles[angle], from: [foot, along(foot, top, TRUNK_SHARE + 0.06)] }
    );
  }
}
