import type { Seat } from '../fit/seat-schema.ts';
import type { Stance } from '../stance/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { DriveLoads } from './support.ts';
import { sharesOf, supportLoads } from './support-loads.ts';

/** Share of the drive's horizontal force that the knee passes into the pad (estimate; the front foot takes the rest). */
const PAD_SHARE = 0.6;

/** What a blade force at the lower hand's height asks of the contacts: loads and the pad fixing's force. SI. */
export function driveLoads(stance: Stance, seat: Seat, { bladeForceN }: { bladeForceN: number }): DriveLoads {
  const { contacts } = supportLoads(stance, seat);
  const weight = stance.totalMassKg * GRAVITY;
  const height = stance.points.lowerHand.z - contacts.knee.z;
  const { x, y } = stance.centreOfMass;
  const { shares } = sharesOf(contacts, { x: x + (bladeForceN * height) / weight, y });
  return {
    shares,
    loadsN: {
      knee: shares.knee * weight,
      rearFoot: shares.rearFoot * weight,
      frontFoot: shares.frontFoot * weight,
    },
    padFixingN: PAD_SHARE * bladeForceN,
    bladeForceN,
  };
}
