import type { Stance } from '../posture/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { contactsOf, type DriveLoads } from './support.ts';
import { loadsOf } from './support-loads.ts';
import { sharesOf, supportTriangle } from './support-triangle.ts';

/** A force of the water on the blade, forward along the boat: newtons, at a height and a place across, metres, boat frame. */
export interface BladeForce {
  readonly forceN: number;
  readonly atZ: number;
  readonly atY: number;
}

/** Knee and front foot are taken to stand at least this far apart fore and aft, metres: closer, the model says nothing. */
const LEAST_LEVER = 0.2;

/**
 * What a force on the blade asks of the contacts, by statics of paddler and paddle together: the arms' pull is inside that
 * body, so only the water's push on the blade, the weight and the contacts count. SI, boat frame; always finite.
 *
 * Moments about the vertical: the water pushes beside the boat, so the knee is pressed toward the blade and the front foot
 * away from it, by force × (blade's distance out from the knee) ÷ (front foot's distance forward of the knee).
 * Moments about an axis across the boat: the water pushes low and the pad holds higher, so the weight seems to move aft by
 * force × (knee's height over the blade) ÷ weight. Moments about the boat's length: knee and front foot are pressed apart
 * at two heights, so it seems to move away from the blade by the sideways force × (knee's height over the foot) ÷ weight.
 *
 * Left out: the blade's lift and its push to the side, the body's own accelerations, the rear foot's hold, and what the
 * front foot takes of the forward force (all of it is put on the knee). For 80 kg, 200 N and a blade 0.4 m below the knee's
 * bearing point the weight seems to move 0.10 m aft.
 */
export function driveLoads(stance: Stance, { forceN, atZ, atY }: BladeForce): DriveLoads {
  const contacts = contactsOf(stance);
  const { knee, frontFoot } = contacts;
  const weight = stance.totalMassKg * GRAVITY;
  const { x, y } = stance.centreOfMass;
  const lever = Math.max(LEAST_LEVER, frontFoot.x - knee.x);
  const towardPort = (forceN * (atY - knee.y)) / lever;
  const shares = sharesOf(supportTriangle(contacts), {
    x: x - (forceN * (knee.z - atZ)) / weight,
    y: y - (towardPort * (knee.z - frontFoot.z)) / weight,
  });
  return {
    shares,
    loadsN: loadsOf(shares, stance),
    padForwardN: forceN,
    padSidewaysN: Math.abs(towardPort),
    bladeForceN: forceN,
  };
}
