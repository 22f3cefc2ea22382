import { along, norm, subtract, type Vec3 } from '../frame/vec3.ts';
import type { FigureMass, FigurePoint, Stance } from '../posture/stance.ts';
import { twoLink } from '../posture/two-link.ts';
import { keysOf } from '../units/entries.ts';

/**
 * A figure a share of the way from one solved stance to another of the same seat: every point, mass and angle is on the
 * straight line between, but the hands stay as far apart on the shaft as they are, and elbows bend as the arms' bones ask. Fit for stances that lie near each other: other bones are
 * shortened by the square of the difference.
 */
export function blendStances(from: Stance, to: Stance, share: number): Stance {
  if (share <= 0) return from;
  if (share >= 1) return to;
  const points = { ...from.points };
  for (const name of keysOf(points)) {
    points[name] = along(from.points[name], to.points[name], share);
  }
  points.lowerHand = onShaft(from.points, points);
  for (const arm of ['lower', 'top'] as const) points[`${arm}Elbow`] = elbowOf(from.points, points, arm);
  const angles = { ...from.angles };
  for (const name of keysOf(angles)) {
    angles[name] = from.angles[name] + share * (to.angles[name] - from.angles[name]);
  }
  return {
    ...(share < 0.5 ? from : to),
    points,
    angles,
    masses: blendMasses(from.masses, to.masses, share),
    centreOfMass: along(from.centreOfMass, to.centreOfMass, share),
  };
}

/** Masses on their way from one stance to another. */
function blendMasses(from: readonly FigureMass[], to: readonly FigureMass[], share: number): FigureMass[] {
  return from.map((mass, i) => ({ ...mass, centre: along(mass.centre, to[i]!.centre, share) }));
}

/** The lower hand on the moved shaft, as far from the top hand as `own` has it. */
function onShaft(own: Stance['points'], { topHand, lowerHand }: Readonly<Record<FigurePoint, Vec3>>): Vec3 {
  const apart = norm(subtract(lowerHand, topHand));
  if (apart === 0) return lowerHand;
  return along(topHand, lowerHand, norm(subtract(own.lowerHand, own.topHand)) / apart);
}

/** Where the elbow of a moved arm is, metres: its bones as long as `own` has them, bent the way the moved points have it. */
export function elbowOf(
  own: Stance['points'],
  moved: Readonly<Record<FigurePoint, Vec3>>,
  arm: 'lower' | 'top',
): Vec3 {
  const [shoulder, elbow, hand] = [`${arm}Shoulder`, `${arm}Elbow`, `${arm}Hand`] as const;
  const long = (a: FigurePoint, b: FigurePoint) => norm(subtract(own[a], own[b]));
  const bend = subtract(moved[elbow], moved[shoulder]);
  const links = { first: long(shoulder, elbow), second: long(elbow, hand), bend };
  return twoLink(moved[shoulder], moved[hand], links).middle;
}
