import type { Boat } from '../fit/boat-schema.ts';
import { correctHull } from './correct-hull.ts';
import type { Hull } from './hull.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { hullFromTape } from './hull-from-tape.ts';

/**
 * The hull of a boat document, by offsets or by tape, with its float check's correction if it has one. Metres, boat
 * frame (the document's own: nothing is shifted).
 * @throws RangeError when the document's sections are no hull.
 */
export function hullOfBoat({
  hull: source,
  name,
  correction,
}: Pick<Boat, 'hull' | 'name' | 'correction'>): Hull {
  const hull =
    source.kind === 'tape'
      ? hullFromTape(source, name)
      : hullFromOffsets({ name, stations: source.stations.map(({ xM, section }) => ({ x: xM, section })) });
  return correction ? correctHull(hull, correction) : hull;
}
