import type { Seat } from '../document/seat-schema.ts';
import { norm, subtract } from '../frame/vec3.ts';
import type { Stance } from '../posture/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { kneeContactArea } from './knee-contact.ts';
import { type Contact, contactsOf, type Support } from './support.ts';
import { cornersOf, supportPatches } from './support-patches.ts';
import { polygonArea, polygonMargin, shareRanges, supportPolygon } from './support-polygon.ts';
import { heldShares, sharesOf, supportTriangle } from './support-triangle.ts';

/**
 * How the weight of paddler and paddle rests on knee, rear foot and front foot while nothing moves. Each contact is a patch:
 * the shares are those of the nominal points (barycentric coordinates of the centre of mass, 0 where a contact would have to
 * pull), their ranges those of every place in the patches, the margin that to the hull of the patches. Outside that hull no
 * range holds the weight and each is the nominal share. SI, boat frame; always finite. A paddler of 80 kg who
 * rests 64 % on the knee presses the pad with about 510 N.
 */
export function supportLoads(stance: Stance, seat: Seat): Support {
  const contacts = contactsOf(stance);
  const triangle = supportTriangle(contacts);
  const shares = heldShares(sharesOf(triangle, stance.centreOfMass));
  const corners = cornersOf(supportPatches(stance, seat));
  const polygon = supportPolygon(corners);
  const at = (share: number) => ({ least: share, most: share });
  const loadsN = loadsOf(shares, stance);
  const kneeRadius = norm(subtract(stance.points.kneelingKnee, stance.points.kneeContact));
  return {
    contacts,
    shares,
    loadsN,
    shareRanges: shareRanges(corners, stance.centreOfMass) ?? {
      knee: at(shares.knee),
      rearFoot: at(shares.rearFoot),
      frontFoot: at(shares.frontFoot),
    },
    ...polygonMargin(polygon, stance.centreOfMass),
    area: polygonArea(polygon),
    inLine: triangle.inLine,
    padPressurePa: Math.max(0, loadsN.knee) / kneeContactArea(seat.kneePad, kneeRadius),
  };
}

/** Vertical force on each contact, newtons. */
export function loadsOf(
  shares: Readonly<Record<Contact, number>>,
  { totalMassKg }: Pick<Stance, 'totalMassKg'>,
): Record<Contact, number> {
  const weight = totalMassKg * GRAVITY;
  return {
    knee: shares.knee * weight,
    rearFoot: shares.rearFoot * weight,
    frontFoot: shares.frontFoot * weight,
  };
}
