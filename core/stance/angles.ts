import { angleOf, inner, type Jet, type JetVec, mixVec, outer, root, shift, times } from './jet.ts';

/** Keeps the angle of a straight corner differentiable: it reads at most π − 0.0001. In square metres. */
const STRAIGHT = 1e-9;

/** Included angle at `corner` between the ways to `from` and to `to`, radians: π is straight. */
export function cornerAngle(from: JetVec, corner: JetVec, to: JetVec): Jet {
  const u = mixVec(1, from, -1, corner);
  const w = mixVec(1, to, -1, corner);
  const normal = outer(u, w);
  return angleOf(root(shift(inner(normal, normal), STRAIGHT ** 2)), inner(u, w));
}

/**
 * Angle trunk–hip–thigh in the plane square to the line of the hips, radians: π is a straight line, less is flexion,
 * more is extension. Smooth through π, where an unsigned angle would have a corner. `up` is the trunk's direction,
 * `across` the unit vector from the kneeling to the front hip.
 */
export function hipAngle(up: JetVec, across: JetVec, thigh: JetVec): Jet {
  const turn = angleOf(times(inner(outer(up, thigh), across), -1), times(inner(up, thigh), -1));
  return shift(times(turn, -1), Math.PI);
}
