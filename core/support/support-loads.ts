import type { Seat } from '../fit/seat-schema.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import type { Stance } from '../stance/stance.ts';
import { GRAVITY } from '../units/gravity.ts';
import { CONTACTS, type Contact, type Support } from './support.ts';

/** How the weight rests on knee, rear foot and front foot: barycentric coordinates of the centre of mass. SI. */
export function supportLoads(stance: Stance, seat: Seat): Support {
  const contacts: Record<Contact, BoatPoint> = {
    knee: stance.points.kneeContact,
    rearFoot: stance.points.rearBall,
    frontFoot: stance.points.frontBall,
  };
  const { shares, area } = sharesOf(contacts, stance.centreOfMass);
  const weight = stance.totalMassKg * GRAVITY;
  const edge = nearestEdge(contacts, shares, area);
  const loadsN = {
    knee: shares.knee * weight,
    rearFoot: shares.rearFoot * weight,
    frontFoot: shares.frontFoot * weight,
  };
  return {
    contacts,
    shares,
    loadsN,
    ...edge,
    inside: edge.margin >= 0,
    area,
    padPressurePa: Math.max(0, loadsN.knee) / contactArea(seat),
  };
}

/** Contact area under the knee, m²: 40 cm² on a flat pad to 120 cm² in a deep recess (estimate). */
function contactArea({ kneePad }: Seat): number {
  return 0.004 + 0.008 * Math.min(1, kneePad.recessDepthM / 0.03);
}

/** Barycentric shares of a point over the triangle of contacts, in plan, and the triangle's area. */
export function sharesOf(contacts: Readonly<Record<Contact, BoatPoint>>, at: { x: number; y: number }) {
  const [a, b, c] = CONTACTS.map((name) => contacts[name]) as [BoatPoint, BoatPoint, BoatPoint];
  const cross = (p: { x: number; y: number }, q: { x: number; y: number }, r: { x: number; y: number }) =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const twice = cross(a, b, c);
  const det = Math.abs(twice) < 1e-9 ? Math.sign(twice || 1) * 1e-9 : twice;
  const shares = {
    knee: cross(b, c, at) / det,
    rearFoot: cross(c, a, at) / det,
    frontFoot: cross(a, b, at) / det,
  };
  return { shares, area: Math.abs(twice) / 2 };
}

function nearestEdge(
  contacts: Readonly<Record<Contact, BoatPoint>>,
  shares: Record<Contact, number>,
  area: number,
) {
  let margin = Number.POSITIVE_INFINITY;
  let nearest: [Contact, Contact] = ['knee', 'rearFoot'];
  for (const opposite of CONTACTS) {
    const [p, q] = CONTACTS.filter((c) => c !== opposite) as [Contact, Contact];
    const length = Math.hypot(contacts[p].x - contacts[q].x, contacts[p].y - contacts[q].y);
    const distance = length > 0 ? (shares[opposite] * 2 * area) / length : 0;
    if (distance < margin) {
      margin = distance;
      nearest = [p, q];
    }
  }
  return { margin, nearestEdge: nearest };
}
