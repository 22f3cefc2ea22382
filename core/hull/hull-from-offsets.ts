import { checkOffsets } from '../document/check-offsets.ts';
import type { Hull, Offsets } from './hull.ts';
import { loftHull } from './loft-hull.ts';
import { type NoHull, noHull } from './no-hull.ts';

/**
 * Prepares a hull from a table of offsets: stations in any order, each a half-section from keel to sheer (y ≥ 0).
 * Metres, in whatever frame the table has; the boat frame for a boat. The hull keeps copies and is immutable.
 *
 * Between the given points a half-section is a fair curve (`sectionCurve`), kept as a polyline within 0.1 mm of it:
 * chords between waterlines 5 cm apart would float a racing single 10 mm too deep. Straight runs and knuckles stay; a
 * point given twice in succession is always a knuckle. `between: 'chords'` takes the points as a polyline, as they are.
 * A box 5 × 0.5 × 0.4 m is three stations of [[0.25, 0], [0.25, 0.4]].
 * A table that is no hull gives the first problem as a value; `checkOffsets` lists them all.
 */
export function hullFromOffsets(offsets: Offsets): Hull | NoHull {
  const [problem] = checkOffsets(offsets.stations);
  return problem ? noHull(problem) : loftHull(offsets);
}
