import type { Seat } from '../fit/seat-schema.ts';
import { norm, subtract } from '../frame/vec3.ts';
import type { Stance } from '../stance/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { kneeContactArea } from './knee-contact.ts';
import { type Contact, contactsOf, type Support } from './support.ts';
import { sharesOf, supportMargin, supportTriangle } from './support-triangle.ts';

/**
 * How the weight of paddler and paddle rests on knee, rear foot and front foot while nothing moves: the barycentric
 * coordinates of the centre of mass over the triangle of contacts. SI, boat frame; always finite. A paddler of 80 kg who
 * rests 64 % on the knee presses the pad with about 510 N.
 */
export function supportLoads(stance: Stance, seat: Seat): Support {
  const contacts = contactsOf(stance);
  const triangle = supportTriangle(contacts);
  const shares = sharesOf(triangle, stance.centreOfMass);
  const loadsN = loadsOf(shares, stance);
  const kneeRadius = norm(subtract(stance.points.kneelingKnee, stance.points.kneeContact));
  return {
    contacts,
    shares,
    loadsN,
    ...supportMargin(triangle, stance.centreOfMass),
    area: triangle.area,
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
