import type { Stance } from '../posture/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { contactPoints, type DriveLoads } from './support.ts';
import { loadsOf } from './support-loads.ts';
import { sharesOf, supportTriangle } from './support-triangle.ts';

/**
 * A force of the water on the blade, forward along the boat: newtons, at a place in the boat frame, metres. Its lift (up) and its
 * part across the boat (toward port) are nothing unless they are given; the place along the boat counts for those two alone.
 */
export interface BladeForce {
  /** Positive drives the boat forward. */
  readonly forceN: number;
  /** Height over the lowest point of the keel line. */
  readonly atZ: number;
  /** To port of the centreline. */
  readonly atY: number;
  /** Forward of amidships; 0 unless given. */
  readonly atX?: number;
  /** Newtons; 0 unless given. */
  readonly liftN?: number;
  /** Newtons; 0 unless given. */
  readonly acrossN?: number;
}

/** Knee and front foot count as at least this far apart fore and aft, metres: closer, the model is not valid (estimate). */
const LEAST_LEVER = 0.2;

/**
 * The contacts carry at least this share of the weight, however much the blade lifts: below it shares mean nothing (estimate).
 */
const LEAST_CARRIED = 0.2;

/**
 * Loads of a force on the blade on the contacts, by statics of paddler and paddle together: the arms' pull is inside that body,
 * so only the water's push on the blade, the weight and the contacts count. SI, boat frame; always finite.
 *
 * Moments about the vertical: the water pushes beside the boat, so the knee is pressed toward the blade and the front foot away
 * from it, by force × (blade's distance out from the knee) ÷ (front foot's distance forward of the knee); a push across the
 * boat is shared by the two like a load on a beam. Moments about an axis across the boat: the water pushes low and the pad
 * holds higher, so the weight seems to move aft by force × (knee's height over the blade) ÷ weight. Moments about the boat's
 * length: knee and front foot are pressed apart at two heights, so it seems to move away from the blade by the sideways force ×
 * (knee's height over the foot) ÷ weight. Lift takes weight off the contacts, at the blade's own place.
 *
 * Left out: the body's own accelerations, the rear foot's hold, and what the front foot takes of the forward force (all of it
 * is put on the knee). For 80 kg, 200 N and a blade 0.4 m below the knee's bearing point the weight seems to move 0.10 m aft.
 */
export function driveLoads(stance: Stance, blade: BladeForce): DriveLoads {
  const { forceN, atZ, atY, liftN = 0, acrossN = 0 } = blade;
  const contacts = contactPoints(stance);
  const { knee, frontFoot } = contacts;
  const { x, y } = stance.centreOfMass;
  const atX = blade.atX ?? x;
  const weight = stance.totalMassKg * GRAVITY;
  const carried = Math.max(LEAST_CARRIED * weight, weight - liftN);
  const lever = Math.max(LEAST_LEVER, frontFoot.x - knee.x);
  const onFoot = (acrossN * (atX - knee.x) - forceN * (atY - knee.y)) / lever;
  const towardPort = acrossN - onFoot;
  const seemsAt = {
    x: (x * weight - atX * liftN - forceN * (knee.z - atZ)) / carried,
    y: (y * weight - atY * liftN + acrossN * atZ - knee.z * towardPort - frontFoot.z * onFoot) / carried,
  };
  const shares = sharesOf(supportTriangle(contacts), seemsAt);
  return {
    seemsAt,
    shares,
    loadsN: loadsOf(shares, carried),
    padForwardN: forceN,
    padSidewaysN: Math.abs(towardPort),
    bladeForceN: forceN,
  };
}
