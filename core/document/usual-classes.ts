/** Kinds of boat that a usual hull is drawn for. */
export const USUAL_CLASSES = ['C1', 'C2', 'C4', 'training'] as const;
/** A class that has usual lines. */
export type UsualClass = (typeof USUAL_CLASSES)[number];

/** Ends of a usual hull's length and greatest beam, metres. */
export const USUAL_LIMITS = { lengthM: [3, 12], beamM: [0.25, 1.5] } as const;

/** How well the drawing of a class describes one boat of it: standard deviations. */
export interface UsualDoubt {
  /** Volume under a given draft, relative. */
  readonly volume: number;
  /** Centre of buoyancy fore and aft, as a share of the length. */
  readonly centre: number;
  /** Height of keel or sheer at one place, metres. */
  readonly heightM: number;
  /** Breadth at a height, relative. */
  readonly beam: number;
}

/**
 * The doubt of a usual hull: an **estimate**, no published source. Drawing the family with its fullness fore and aft by
 * ± 0.2, bottom flatness ± 15 %, bilge ± 10 %, flare ± 6 points, rocker ± 12 mm and depth ± 5 % spreads a single's draft by
 * 6 mm, its trim by 8 mm and its waterline beam by 3 %.
 */
export const USUAL_DOUBT: UsualDoubt = { volume: 0.08, centre: 0.005, heightM: 0.004, beam: 0.035 };
