import type { Boat } from '../fit/boat-schema.ts';

/** Standard deviations that a hull's own data bring to what is computed afloat, metres. */
export interface HullSpread {
  readonly draft: number;
  readonly trimRest: number;
  readonly trimCatch: number;
  readonly freeboardBow: number;
  readonly freeboardStern: number;
  readonly leastFreeboard: number;
  readonly transverseGm: number;
}

/**
 * How uncertain draft, trim and freeboard are from the hull's data alone: estimates (no published figure for racing
 * canoes was found). A table of offsets is good to a few millimetres, a tape to about a centimetre, and a float check
 * brings either down to what was left over in it.
 */
export function hullSpread(boat: Boat): HullSpread {
  const base = boat.hull.kind === 'offsets' ? 0.002 : 0.006;
  const sd = boat.correction ? Math.max(0.0015, boat.correction.residualM) : base;
  return {
    draft: sd,
    trimRest: sd,
    trimCatch: sd,
    freeboardBow: sd * Math.SQRT2,
    freeboardStern: sd * Math.SQRT2,
    leastFreeboard: sd * Math.SQRT2,
    transverseGm: 2 * sd,
  };
}
