import { norm, plus, scale, subtract } from '../frame/vec3.ts';
import type { Stance } from '../posture/stance.ts';
import { elbowOf } from './blend-stances.ts';

/**
 * How the paddle is carried where the blade is farthest out of the water: the top hand comes in to the off side and up by
 * these shares of the way between the hands, and the shaft's way down the boat's side is so much outward and downward. Estimates,
 * drawn from the look of a stroke: at 1.70 m of paddle the blade's tip passes some centimetres over the water.
 */
const INWARD = 0.16;
const UPWARD = 0.06;
const CARRIED = { out: 0.765, down: 0.645 };

/**
 * A stance between two strokes with the blade out of the water: it leaves with `share` from 0, is carried, and enters at
 * share 1. Hands and elbows move; masses stay, for the swing moves the common centre by only a few millimetres.
 */
export function clearBlade(stance: Stance, share: number): Stance {
  const lift = Math.sin(Math.PI * Math.min(1, Math.max(0, share)));
  const { topHand, lowerHand, midShoulder } = stance.points;
  const out = Math.sign(lowerHand.y - midShoulder.y) || 1;
  const shaft = subtract(lowerHand, topHand);
  const spacing = norm(shaft);
  if (lift === 0 || spacing === 0) return stance;
  const carried = { x: 0, y: out * CARRIED.out, z: -CARRIED.down };
  const direction = plus(scale(shaft, (1 - lift) / spacing), lift, carried);
  const top = plus(topHand, lift * spacing, { x: 0, y: -out * INWARD, z: UPWARD });
  const points = {
    ...stance.points,
    topHand: top,
    lowerHand: plus(top, spacing / norm(direction), direction),
  };
  for (const arm of ['lower', 'top'] as const) points[`${arm}Elbow`] = elbowOf(stance.points, points, arm);
  return { ...stance, points };
}
