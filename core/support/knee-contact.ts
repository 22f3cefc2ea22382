import type { KneePad } from '../document/seat-schema.ts';

/** How far skin and what lies under it give over the kneecap, metres (estimate). */
const FLESH_GIVE = 0.003;

/**
 * Area over which a knee bears on its pad, m², seen from above: a round knee of this radius (metres) sunk as deep as the
 * recess, the foam and the flesh let it. A ball sunk by h is cut in a circle whose radius squared is 2rh − h² (spherical
 * cap); a pad narrower than that circle carries no more than its own breadth. An estimate to compare pads by.
 *
 * A knee of 60 mm on a flat pad with 8 mm of foam: 38 cm²; in a recess 30 mm deep: 101 cm².
 */
export function kneeContactArea(pad: KneePad, kneeRadius: number): number {
  return Math.PI * kneeContactRadius(pad, kneeRadius) ** 2;
}

/** Radius of that circle, metres: 36 mm for a knee of 60 mm on a flat pad with 8 mm of foam. */
export function kneeContactRadius(pad: KneePad, kneeRadius: number): number {
  const depth = Math.min(kneeRadius, pad.recessDepthM + pad.foamGiveM + FLESH_GIVE);
  const cut = Math.sqrt(Math.max(0, 2 * kneeRadius * depth - depth ** 2));
  return Math.min(cut, pad.widthM / 2);
}
