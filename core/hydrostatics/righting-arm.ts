import type { Afloat } from './afloat.ts';

/**
 * Righting arm GZ of a boat held at a heel, metres: horizontal distance across the boat from its weight to its
 * buoyancy, positive when the pair turns it back from a heel to starboard (and so negative at an upright heel to
 * port). A box of breadth B, draft T and height of weight KG gives sin φ · (B²/12T + T/2 − KG + B²/24T · tan²φ).
 */
export function rightingArm({ trim, heel, centroid, centreOfMass }: Afloat): number {
  const k = Math.tan(trim);
  const t = Math.tan(heel);
  const dx = centroid.x - centreOfMass.x;
  const dy = centroid.y - centreOfMass.y;
  const dz = centroid.z - centreOfMass.z;
  return (t * k * dx - (1 + k * k) * dy + t * dz) / (Math.hypot(1, k, t) * Math.hypot(1, k));
}
