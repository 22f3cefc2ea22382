import type { Hull } from '../hull/hull.ts';
import { immersedSums } from '../hull/immersed-sums.ts';
import { SUM } from '../hull/section-rows.ts';
import type { WaterPlane } from '../hull/water-plane.ts';
import type { Attitude, ImmersedProperties } from './afloat.ts';
import { leastFreeboard } from './freeboard.ts';
import { isAttitude, waterPlane } from './water-plane.ts';
import { waterlineExtent } from './waterline-extent.ts';

/** A volume below this, cubic metres, counts as 0: its centre would be rounding alone. */
const LEAST_VOLUME = 1e-15;

/**
 * What is under water at one attitude: metres and radians, boat frame. The water plane is
 * z = draft − x·tan(trim) − y·tan(heel), trim positive bow up, heel positive starboard down. Lengths, areas and second
 * moments of the waterplane are those of the plane itself, not of its shadow on the boat's floor. Over the sheer the
 * hull counts as closed by a flat deck, so the result stays finite and continuous; `leastFreeboard` is negative then.
 * A hull clear of the water has volume 0 and its centroid at the origin.
 *
 * Checked against closed forms: an ellipsoid of half-axes 2.5, 0.25 and 0.15 m with the plane through its centre gives
 * 0.19635 m³.
 * @throws RangeError for an attitude that is not finite or steeper than 85°.
 */
export function immersedProperties(hull: Hull, attitude: Attitude): ImmersedProperties {
  if (!isAttitude(attitude)) {
    throw new RangeError('draft must be finite, trim and heel within ±85°');
  }
  const plane = waterPlane(attitude);
  return propertiesAt(hull, plane);
}

/**
 * The same at a plane. Volume and its moments are those of the equilibrium search. The waterplane, in which the ends count
 * most, and the shell come from a second pass that integrates the ends more finely.
 */
export function propertiesAt(
  hull: Hull,
  plane: WaterPlane,
  ends: 'steady' | 'fine' = 'fine',
): ImmersedProperties {
  const body = immersedSums(hull, plane);
  const volume = body[SUM.volume]! > LEAST_VOLUME ? body[SUM.volume]! : 0;
  const per = volume > 0 ? 1 / volume : 0;
  const centroid = {
    x: body[SUM.momentX]! * per,
    y: body[SUM.momentY]! * per,
    z: body[SUM.momentZ]! * per,
  };
  const sums = ends === 'fine' ? immersedSums(hull, plane, 'fine') : body;
  const extent = waterlineExtent(hull, plane);
  const { area, lcf, acrossMoment, alongMoment } = waterplaneMoments(plane, sums);
  const ratio = (of: number) => (of > 0 ? volume / of : 0);
  return {
    volume,
    centroid,
    waterplane: {
      area,
      lcf,
      transverseBm: acrossMoment * per,
      longitudinalBm: alongMoment * per,
      length: extent.length,
      beam: extent.beam,
      aftEnd: extent.aftEnd,
      foreEnd: extent.foreEnd,
    },
    wettedSurface: sums[SUM.shell]!,
    blockCoefficient: ratio(extent.length * extent.beam * extent.depth),
    prismaticCoefficient: ratio(extent.length * extent.greatestSection),
    waterplaneCoefficient:
      extent.length * extent.beam > 0 ? sums[SUM.plane]! / (extent.length * extent.beam) : 0,
    leastFreeboard: leastFreeboard(hull, plane),
  };
}

/**
 * Area and second moments of the waterplane in its own plane, from the sums as seen from above. A length along the
 * boat is stretched by k, an area by n; moments are about axes through the centre of flotation.
 */
function waterplaneMoments({ alongSlope, acrossSlope }: WaterPlane, sums: Float64Array) {
  const flat = sums[SUM.plane]!;
  const lcf = flat > 0 ? sums[SUM.planeX]! / flat : 0;
  const across = flat > 0 ? sums[SUM.planeY]! / flat : 0;
  const xx = Math.max(0, sums[SUM.planeXx]! - flat * lcf * lcf);
  const yy = Math.max(0, sums[SUM.planeYy]! - flat * across * across);
  const xy = sums[SUM.planeXy]! - flat * lcf * across;
  // A point (x, y) of the plan lies at u = k·x + shear·y and v = (n/k)·y in the plane; area grows by n.
  const k = Math.hypot(1, alongSlope);
  const n = Math.hypot(1, alongSlope, acrossSlope);
  const shear = (alongSlope * acrossSlope) / k;
  return {
    area: flat * n,
    lcf,
    acrossMoment: yy * (n / k) ** 2 * n,
    alongMoment: (xx * k * k + 2 * xy * k * shear + yy * shear * shear) * n,
  };
}
