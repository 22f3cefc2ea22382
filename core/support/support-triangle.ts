import { type BoatPoint, planeNorm } from '../frame/vec3.ts';
import { CONTACTS, type Contact } from './support.ts';

/** A place in plan, metres, boat frame. */
export type InPlan = Pick<BoatPoint, 'x' | 'y'>;
/** The three contacts in plan. */
type Corners = Readonly<Record<Contact, InPlan>>;

/**
 * A triangle lower than this over its longest side, metres, is treated as a line: each contact is itself a patch some
 * centimetres across, and over a thinner triangle the shares would be quotients of two small numbers.
 */
export const LEAST_HEIGHT = 0.01;

/** The edge that lies over against each contact. */
const EDGES = CONTACTS.map((_, k): readonly [Contact, Contact] => [
  CONTACTS[k === 0 ? 1 : 0]!,
  CONTACTS[k === 2 ? 1 : 2]!,
]);

/** The triangle of the three contacts in plan. */
export interface SupportTriangle {
  readonly corners: Corners;
  /** m². */
  readonly area: number;
  /** The contacts lie so nearly in one line that they cannot hold the weight to either side of it. */
  readonly inLine: boolean;
}

/** The triangle over three contacts, metres, boat frame. */
export function supportTriangle(corners: Corners): SupportTriangle {
  const twice = Math.abs(twiceArea(corners.knee, corners.rearFoot, corners.frontFoot));
  const { knee, rearFoot, frontFoot } = corners;
  const longest = Math.max(between(rearFoot, frontFoot), between(knee, frontFoot), between(knee, rearFoot));
  return { corners, area: twice / 2, inLine: twice <= LEAST_HEIGHT * longest };
}

/**
 * Shares of a weight over `at` (metres, boat frame) on the three contacts: the barycentric coordinates, which sum to 1 and
 * balance the moments about every line; negative where that contact would have to pull. Over contacts in one line only the
 * moments along it can be balanced: of the shares that do so, those with the least sum of squares.
 *
 * A weight over the knee: 1, 0, 0.
 */
export function sharesOf({ corners, inLine }: SupportTriangle, at: InPlan): Record<Contact, number> {
  const { knee, rearFoot, frontFoot } = corners;
  if (inLine) return sharesAlong(corners, at);
  const whole = twiceArea(knee, rearFoot, frontFoot);
  return {
    knee: twiceArea(rearFoot, frontFoot, at) / whole,
    rearFoot: twiceArea(frontFoot, knee, at) / whole,
    frontFoot: twiceArea(knee, rearFoot, at) / whole,
  };
}

/**
 * Shares that contacts can hold: none pulls, so one that would is 0 and the others carry the whole in their proportion. They sum
 * to 1. −0.1, 0.5 and 0.6 become 0, 0.4545 and 0.5455.
 */
export function heldShares(shares: Readonly<Record<Contact, number>>): Record<Contact, number> {
  const pushing = {
    knee: Math.max(0, shares.knee),
    rearFoot: Math.max(0, shares.rearFoot),
    frontFoot: Math.max(0, shares.frontFoot),
  };
  const sum = pushing.knee + pushing.rearFoot + pushing.frontFoot;
  return { knee: pushing.knee / sum, rearFoot: pushing.rearFoot / sum, frontFoot: pushing.frontFoot / sum };
}

/** Loads that contacts can hold, their sum kept: newtons. */
export function heldLoads(loads: Readonly<Record<Contact, number>>): Record<Contact, number> {
  const { knee, rearFoot, frontFoot } = heldShares(loads);
  const whole = loads.knee + loads.rearFoot + loads.frontFoot;
  return { knee: knee * whole, rearFoot: rearFoot * whole, frontFoot: frontFoot * whole };
}

/** Least-squares shares along the longest side. Three contacts within a point carry a third each. */
function sharesAlong(corners: Corners, at: InPlan): Record<Contact, number> {
  const [p, q] = EDGES.toSorted((a, b) => lengthOf(corners, b) - lengthOf(corners, a))[0]!;
  const length = Math.max(between(corners[p], corners[q]), LEAST_HEIGHT);
  const along = { x: (corners[q].x - corners[p].x) / length, y: (corners[q].y - corners[p].y) / length };
  const placeOf = ({ x, y }: InPlan) => x * along.x + y * along.y;
  const mean = CONTACTS.reduce((sum, c) => sum + placeOf(corners[c]), 0) / CONTACTS.length;
  const spread = CONTACTS.reduce((sum, c) => sum + (placeOf(corners[c]) - mean) ** 2, 0);
  const lever = (placeOf(at) - mean) / Math.max(spread, LEAST_HEIGHT ** 2);
  const share = (c: Contact) => 1 / CONTACTS.length + lever * (placeOf(corners[c]) - mean);
  return { knee: share('knee'), rearFoot: share('rearFoot'), frontFoot: share('frontFoot') };
}

/** Distance in plan. */
const between = (p: InPlan, q: InPlan) => planeNorm(p.x - q.x, p.y - q.y);
/** Length of an edge. */
const lengthOf = (corners: Corners, [p, q]: readonly [Contact, Contact]) => between(corners[p], corners[q]);

/** Twice the signed area of a triangle, m², positive counter-clockwise. */
export function twiceArea(p: InPlan, q: InPlan, r: InPlan): number {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
}
