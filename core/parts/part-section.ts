import type { Part } from './part.ts';

/** A place in a section across the boat: y to port and z up, metres, boat frame. */
export interface SectionPlace {
  /** Negative to starboard. */
  readonly y: number;
  /** Above the lowest point of the keel line. */
  readonly z: number;
}

/**
 * The true section of a part across the boat at `x` (boat frame, metres): its corners going round, or none where the part does
 * not reach. A block 16 cm wide, turned by 12° and cut well inside its ends, is 16 / cos 12° = 16.4 cm wide there.
 */
export function sectionOfPart(
  { vertices, faces }: Pick<Part, 'vertices' | 'faces'>,
  x: number,
): SectionPlace[] {
  const cuts: SectionPlace[] = [];
  for (const face of faces) {
    face.forEach((from, k) => {
      const a = vertices[from]!;
      const b = vertices[face[(k + 1) % face.length]!]!;
      if (a.x > x === b.x > x) return;
      const share = (x - a.x) / (b.x - a.x);
      cuts.push({ y: a.y + share * (b.y - a.y), z: a.z + share * (b.z - a.z) });
    });
  }
  return goingRound(cuts);
}

/** Nearer than this two cuts are one corner, metres. */
const SAME = 1e-9;

/** Cuts in order round their middle, each once: the section of a convex solid is convex. */
function goingRound(cuts: readonly SectionPlace[]): SectionPlace[] {
  const once = cuts.filter(
    (cut, k) => cuts.findIndex((other) => Math.hypot(other.y - cut.y, other.z - cut.z) < SAME) === k,
  );
  const y = once.reduce((sum, cut) => sum + cut.y, 0) / once.length;
  const z = once.reduce((sum, cut) => sum + cut.z, 0) / once.length;
  return once.toSorted((a, b) => Math.atan2(a.z - z, a.y - y) - Math.atan2(b.z - z, b.y - y));
}
