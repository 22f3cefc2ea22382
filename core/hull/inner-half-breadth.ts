import type { HullFace } from './broader-face.ts';
import { type LoftedSection, loftedSection } from './section-at.ts';

/**
 * Half-breadth of the hull's inner face at a place and height, metres: how far from the centreline a fitting may reach
 * there. The skin is measured square to the shell, bottom included. Null above the sheer, within the bottom's skin or
 * below it, and beyond the hull's ends.
 */
export function innerHalfBreadth(hull: HullFace, at: { x: number; z: number }, skin: number): number | null {
  if (!(at.x >= hull.aftX && at.x <= hull.foreX)) return null;
  const section = loftedSection(hull, at.x);
  const last = section.z.length - 1;
  if (!(at.z <= section.z[last]! && at.z >= section.z[0]!)) return null;
  let inner = Number.POSITIVE_INFINITY;
  for (let j = 1; j <= last; j++) inner = Math.min(inner, nearEdge(section, j, { height: at.z, skin }));
  return inner > 0 && Number.isFinite(inner) ? inner : null;
}

/** Least y at a height that lies within a skin of the edge from point j − 1 to j; infinite when none does. */
function nearEdge(
  { y, z }: LoftedSection,
  j: number,
  { height, skin }: { height: number; skin: number },
): number {
  const dy = y[j]! - y[j - 1]!;
  const dz = z[j]! - z[j - 1]!;
  if (height > Math.max(z[j - 1]!, z[j]!) + skin || height < Math.min(z[j - 1]!, z[j]!) - skin)
    return Number.POSITIVE_INFINITY;
  const length = Math.hypot(dy, dz);
  // A band of half-width `skin` about the edge: round at both ends, and its inner side between them.
  let least = Math.min(
    nearPoint(y[j - 1]!, height - z[j - 1]!, skin),
    nearPoint(y[j]!, height - z[j]!, skin),
  );
  if (length === 0) return least;
  const shiftY = (-dz / length) * skin;
  const shiftZ = (dy / length) * skin;
  const share = dz === 0 ? -1 : (height - z[j - 1]! - shiftZ) / dz;
  if (share >= 0 && share <= 1) least = Math.min(least, y[j - 1]! + shiftY + share * dy);
  return least;
}

/** Least y at a height `above` a point of half-breadth y that lies within a skin of it. */
function nearPoint(y: number, above: number, skin: number): number {
  return Math.abs(above) <= skin ? y - Math.sqrt(skin * skin - above * above) : Number.POSITIVE_INFINITY;
}
