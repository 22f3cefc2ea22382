import type { Boat } from '../fit/boat-schema.ts';
import type { Hull } from './hull.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { hullFromTape } from './hull-from-tape.ts';

/** The hull of a boat document, whichever way it was measured. Metres, boat frame. */
export function hullOfBoat(boat: Boat): Hull {
  const { hull, name } = boat;
  if (hull.kind === 'tape') return hullFromTape(hull, name);
  const stations = hull.stations.map(({ xM, section }) => ({ x: xM, section }));
  return hullFromOffsets({ name, stations });
}
