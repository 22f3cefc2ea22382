/** One point of a half-section: half-breadth y ≥ 0 and height z, metres, boat frame. */
export type SectionPoint = readonly [y: number, z: number];

/** One transverse section: station x in metres, half-section from keel to sheer. Boat frame. */
export interface Station {
  /** Forward of amidships. */
  readonly x: number;
  /** From keel to sheer. */
  readonly section: readonly SectionPoint[];
}

/** A table of offsets. The hull is symmetric about the centreline; a flat deck closes it at the sheer. */
export interface Offsets {
  /** Name of the boat. */
  readonly name: string;
  /** At least three, in any order. */
  readonly stations: readonly Station[];
  /** How a section runs between two given points: fair curves unless said otherwise. */
  readonly between?: 'curves' | 'chords';
}

/**
 * The lines that run fore and aft through the sections: point j of every station lies on line j. Arrays hold station
 * after station (`count × points`), metres. A line between two stations is a cubic with the slopes kept here; near a
 * blunt end, where half-breadths grow like a root, it is a power of the distance from the end.
 */
export interface LoftLines {
  /** Stations. */
  readonly count: number;
  /** Points in each half-section: the same number in all. */
  readonly points: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Slopes along the boat, per metre, of the half-breadths. */
  readonly slopeY: Float64Array;
  /** The same of the heights. */
  readonly slopeZ: Float64Array;
  /** Exponents in the aftmost interval (y of each line, then z); 0 where the cubic holds. */
  readonly aftPower: Float64Array;
  /** The same in the foremost interval. */
  readonly forePower: Float64Array;
}

/**
 * Sections made ready for clipping: stations and the lofted sections midway between them, in order of x, and one spare
 * row at the end for a section lofted on the way. `points` values a row. The running sums are integrals along the
 * half-section from its keel to each point, so that a wet stretch costs two reads however many points it has.
 */
export interface SectionRows {
  /** Rows that are part of the hull, 2 × stations − 1; the spare row has this index. */
  readonly count: number;
  /** Points of each row. */
  readonly points: number;
  /** One value a row, metres. */
  readonly x: Float64Array;
  /** Half-breadths, metres: row by row, keel to sheer. */
  readonly y: Float64Array;
  /** Heights, in the same order. */
  readonly z: Float64Array;
  /** ∫ y dz, ∫ y²/2 dz and ∫ y·z dz along the half-section: area and its moments, m², m³, m³. */
  readonly area: Float64Array;
  readonly momentY: Float64Array;
  readonly momentZ: Float64Array;
  /** Area of shell per metre of x, square metres per metre: girth stretched by the shell's slope along the boat. */
  readonly shell: Float64Array;
  /** For each row 1 where no point lies lower than the one before: a level water line then crosses it once at most. */
  readonly rising: Uint8Array;
}

/**
 * Working memory of one hull. A drag makes some hundred passes a second over the hull, and none should allocate. Every
 * computation fills it anew; nothing in it outlives a call.
 */
export interface HullScratch {
  /** Clipped values of each row, `VALUES_PER_ROW` a row. */
  readonly values: Float64Array;
  /** Simpson weight of each row. */
  readonly weights: Float64Array;
  /** Results of one pass, indexed by `SUM`. */
  readonly sums: Float64Array;
  /** Slopes along x of the points of the section lofted last. */
  readonly slopeY: Float64Array;
  readonly slopeZ: Float64Array;
}

/** A hull ready for computing. Immutable but for its scratch; two hulls never share any. Metres, boat frame. */
export interface Hull {
  /** Distinguishes it from a `NoHull`. */
  readonly kind: 'hull';
  readonly name: string;
  /** x of the aftmost and foremost stations, and the distance between them. */
  readonly aftX: number;
  /** Foremost station. */
  readonly foreX: number;
  /** Foremost less aftmost station. */
  readonly length: number;
  /** Lowest point of the keel line and highest point of the sheer. */
  readonly lowestZ: number;
  /** Highest point of the sheer. */
  readonly highestZ: number;
  /** The sections as given, aftmost first. The lofted ones may have more points between these. */
  readonly stations: readonly Station[];
  readonly between: 'curves' | 'chords';
  readonly loft: LoftLines;
  readonly rows: SectionRows;
  readonly scratch: HullScratch;
  /** Volumes to level water planes at even steps from the lowest keel to the highest sheer: where a solve starts. */
  readonly levelVolumes: Float64Array;
  /** The same with straight lines between the given points: what fairing added is part of the doubt. */
  readonly chordVolumes: Float64Array;
}
