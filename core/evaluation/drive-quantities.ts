import type { Paddle } from '../document/seat-schema.ts';
import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';
import { along, type BoatPoint, norm, subtract } from '../frame/vec3.ts';
import type { FloatResult } from '../hydrostatics/afloat.ts';
import { waterZAt } from '../paddle/beside-hand.ts';
import type { Stance } from '../posture/stance.ts';
import type { FreeForce } from '../support/blade-force.ts';
import { NO_FREE_FORCE } from '../support/blade-force.ts';
import type { BladeForce } from '../support/drive-loads.ts';
import { driveLoads } from '../support/drive-loads.ts';
import type { DriveLoads } from '../support/support.ts';
import { heldLoads } from '../support/support-triangle.ts';
import { entriesOf } from '../units/entries.ts';
import type { Quantity } from './finding.ts';
import type { QuantityId } from './quantities.ts';
import { QUANTITIES } from './quantities.ts';
import { driveForceOf, type SeatState } from './seat-state.ts';

/**
 * A blade's force where the water takes it at mid-drive: the blade is just covered, so half its length under the water; as
 * far across as the shaft leads it in this stance. Its free parts are shares of the force, nothing unless given. Metres and
 * newtons, boat frame; null where the boat does not float.
 */
export function bladeForceOf(
  { points }: Pick<Stance, 'points'>,
  paddle: Paddle,
  { forceN, water, free = NO_FREE_FORCE }: { forceN: number; water: FloatResult; free?: FreeForce },
): BladeForce | null {
  if (water.kind !== 'afloat') return null;
  const middle = bladeMiddle(points, paddle);
  return {
    forceN,
    atX: middle.x,
    atY: middle.y,
    atZ: waterZAt(water, middle) - paddle.bladeLengthM / 2,
    liftN: free.lift * forceN,
    acrossN: free.out * forceN * Math.sign(points.lowerHand.y - points.topHand.y),
  };
}

/** The middle of the blade of a paddle in these hands, metres, boat frame. */
function bladeMiddle({ topHand, lowerHand }: Stance['points'], paddle: Paddle): BoatPoint {
  const spacing = norm(subtract(lowerHand, topHand));
  return along(topHand, lowerHand, (paddle.lengthM - paddle.bladeLengthM / 2) / Math.max(spacing, 0.01));
}

/** Loads of the drive's mean force on a seat's contacts; null where the boat does not float. SI, boat frame. */
export function driveOf(
  {
    seat,
    body,
    free,
    stances: { ready },
  }: Pick<SeatState, 'seat' | 'body' | 'free'> & {
    readonly stances: Pick<SeatState['stances'], 'ready'>;
  },
  water: FloatResult,
): DriveLoads | null {
  const forceN = driveForceOf({ seat, body });
  const blade = bladeForceOf(ready, seat.paddle, { forceN, water, ...(free && { free }) });
  return blade && driveLoads(ready, blade);
}

/** The drive's quantities of one occupied seat, without spreads: loads under the mean force, fixing under its peak. SI. */
export function driveQuantities(drive: DriveLoads | null, index: number): Quantity[] {
  return entriesOf(driveValues(drive)).map(([id, value]) => ({
    id,
    seat: index,
    value,
    sd: null,
    unit: QUANTITIES[id].unit,
  }));
}

/** The same as plain values by the quantity's id. */
export function driveValues(drive: DriveLoads | null): Partial<Record<QuantityId, number>> {
  if (!drive) return {};
  const { knee, rearFoot, frontFoot } = heldLoads(drive.loadsN);
  return {
    driveKneeLoad: knee,
    driveRearLoad: rearFoot,
    driveFrontLoad: frontFoot,
    padFixing: PEAK_OVER_MEAN * drive.padForwardN,
    padFixingSide: PEAK_OVER_MEAN * drive.padSidewaysN,
  };
}
