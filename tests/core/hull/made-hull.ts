import type { Hull, Offsets } from '../../../core/hull/hull.ts';
import { hullFromOffsets } from '../../../core/hull/hull-from-offsets.ts';
import type { NoHull } from '../../../core/hull/no-hull.ts';

/** The hull of a table that is one; a test with any other table fails. */
export const madeHull = (offsets: Offsets): Hull => asHull(hullFromOffsets(offsets));

/** A hull that must be there. */
export function asHull(made: Hull | NoHull): Hull {
  if (made.kind === 'hull') return made;
  throw new Error(`no hull, at station ${made.station}: ${made.reason.key}`);
}
