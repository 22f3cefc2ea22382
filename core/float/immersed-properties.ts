import type { Hull } from '../hull/hull.ts';
import type { Attitude, ImmersedProperties } from './afloat.ts';
import { type ImmersedSums, immersedSums } from './immersed-sums.ts';

/**
 * What is under water at one attitude: the water plane is z = draft − x·tan(trim) − y·tan(heel), trim positive bow up,
 * heel positive starboard down. Metres and radians, boat frame. Out of the water every figure is 0. Sections are
 * clipped exactly; along the boat the rule is third order in the station spacing.
 */
export function immersedProperties(hull: Hull, attitude: Attitude): ImmersedProperties {
  return propertiesOf(hull, attitude, immersedSums(hull, attitude));
}

/** Properties from the raw integrals. */
export function propertiesOf(hull: Hull, attitude: Attitude, sums: ImmersedSums): ImmersedProperties {
  const { volume, area } = sums;
  const per = (value: number, by: number) => (by > 0 ? value / by : 0);
  const lcf = per(sums.areaX, area);
  const tcf = per(sums.areaY, area);
  const length = sums.foreEnd - sums.aftEnd;
  const deep = sums.greatestSection * length;
  return {
    volume,
    centroid: {
      x: per(sums.momentX, volume),
      y: per(sums.momentY, volume),
      z: per(sums.momentZ, volume),
    },
    waterplane: {
      area,
      lcf,
      transverseBm: per(sums.areaYY - area * tcf * tcf, volume),
      longitudinalBm: per(sums.areaXX - area * lcf * lcf, volume),
      length,
      beam: sums.beam,
      aftEnd: sums.aftEnd,
      foreEnd: sums.foreEnd,
    },
    wettedSurface: sums.wettedSurface,
    blockCoefficient: per(volume, length * sums.beam * Math.max(0, attitude.draft)),
    prismaticCoefficient: per(volume, deep),
    waterplaneCoefficient: per(area, length * sums.beam),
    leastFreeboard: leastFreeboard(hull, attitude),
  };
}

/** Least height of the sheer above the water plane over all stations and both sides, and where. Metres. */
export function leastFreeboard(hull: Hull, { draft, trim, heel }: Attitude): { value: number; x: number } {
  const t = Math.tan(trim);
  const s = Math.abs(Math.tan(heel));
  let value = Number.POSITIVE_INFINITY;
  let at = 0;
  for (const { x, y, z } of hull.stations) {
    const last = z.length - 1;
    const above = z[last]! - (draft - x * t + y[last]! * s);
    if (above < value) [value, at] = [above, x];
  }
  return { value, x: at };
}
