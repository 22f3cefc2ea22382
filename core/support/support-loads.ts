import type { Seat } from '../document/seat-schema.ts';
import { norm, subtract } from '../frame/vec3.ts';
import type { Stance } from '../posture/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { lazyProperty } from '../units/lazy-property.ts';
import { kneeContactArea } from './knee-contact.ts';
import { type Contact, contactPoints, type Support } from './support.ts';
import { cornersOf, type PolygonCorner, supportPatches } from './support-patches.ts';
import { polygonArea, polygonMargin, shareRanges, supportPolygon } from './support-polygon.ts';
import { heldShares, type InPlan, sharesOf, supportTriangle } from './support-triangle.ts';

/**
 * How the weight of paddler and paddle rests on knee, rear foot and front foot while nothing moves. Each contact is a patch:
 * the shares are those of the nominal points (barycentric coordinates of the centre of mass, 0 where a contact would have to
 * pull), their ranges those of every place in the patches, the margin that to the hull of the patches. Outside that hull no
 * range holds the weight and each is the nominal share. SI, boat frame; always finite. A paddler of 80 kg who
 * rests 64 % on the knee presses the pad with about 510 N.
 */
export function supportLoads(stance: Stance, seat: Seat): Support {
  const resting = restingLoads(stance, seat);
  const { shares, patches } = resting;
  return withRanges(resting, () => rangesAbout(shares, cornersOf(patches), stance.centreOfMass));
}

/** The ranges are computed at their first reading: they cost as much as all the rest. */
const withRanges = lazyProperty<'shareRanges', Support['shareRanges']>('shareRanges');

/** The same without the ranges of the shares. */
export function restingLoads(stance: Stance, seat: Seat): Omit<Support, 'shareRanges'> {
  const contacts = contactPoints(stance);
  const triangle = supportTriangle(contacts);
  const shares = heldShares(sharesOf(triangle, stance.centreOfMass));
  const patches = supportPatches(stance, seat);
  const polygon = supportPolygon(cornersOf(patches));
  const loadsN = loadsOf(shares, stance.totalMassKg * GRAVITY);
  const kneeRadius = norm(subtract(stance.points.kneelingKnee, stance.points.kneeContact));
  return {
    contacts,
    patches,
    polygon,
    shares,
    loadsN,
    ...polygonMargin(polygon, stance.centreOfMass),
    area: polygonArea(polygon),
    inLine: triangle.inLine,
    padPressurePa: Math.max(0, loadsN.knee) / kneeContactArea(seat.kneePad, kneeRadius),
  };
}

/** The ranges of the shares of a weight over `at`; outside the patches' hull each is the nominal share. */
export function rangesAbout(
  shares: Support['shares'],
  corners: readonly PolygonCorner[],
  at: InPlan,
): Support['shareRanges'] {
  const only = (share: number) => ({ least: share, most: share });
  return (
    shareRanges(corners, at) ?? {
      knee: only(shares.knee),
      rearFoot: only(shares.rearFoot),
      frontFoot: only(shares.frontFoot),
    }
  );
}

/** Vertical force on each contact of a weight, newtons. */
export function loadsOf(shares: Readonly<Record<Contact, number>>, weight: number): Record<Contact, number> {
  return {
    knee: shares.knee * weight,
    rearFoot: shares.rearFoot * weight,
    frontFoot: shares.frontFoot * weight,
  };
}
