/** One half-section of a hull, keel to sheer, metres, boat frame. */
export interface HullStation {
  readonly x: number;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** A hull ready for computing: stations from aft to fore. Metres, boat frame. */
export interface Hull {
  readonly name: string;
  readonly length: number;
  readonly aftEnd: number;
  readonly foreEnd: number;
  readonly stations: readonly HullStation[];
}
