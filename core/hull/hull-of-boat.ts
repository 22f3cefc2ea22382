import type { Boat } from '../document/boat-schema.ts';
import type { HullSource, Stems, TapeHull, UsualHull } from '../document/hull-kinds-schema.ts';
import { correctHull } from './correct-hull.ts';
import type { Hull } from './hull.ts';
import { familyStations } from './hull-family.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { hullFromTape } from './hull-from-tape.ts';
import { withStems } from './stem-ends.ts';
import { usualLines } from './usual-lines.ts';

/**
 * The hull of a boat document, by offsets, by tape or a usual one, with its float check's correction if it has one. Metres, boat
 * frame (the document's own: nothing is shifted).
 * @throws RangeError when the document's sections are no hull.
 */
export function hullOfBoat({
  hull: source,
  name,
  correction,
}: Pick<Boat, 'hull' | 'name' | 'correction'>): Hull {
  const upright = bareHull(source, name);
  const hull = source.kind === 'offsets' || !source.stems ? upright : raked(upright, source, source.stems);
  return correction ? correctHull(hull, correction) : hull;
}

/** A hull by tape or of a class with its ends raked. */
function raked(hull: Hull, source: TapeHull | UsualHull, stems: Stems): Hull {
  if (source.kind === 'usual') return withStems(hull, stems);
  const xs = source.stations.map(({ xM }) => xM);
  return withStems(hull, stems, { aftX: Math.min(...xs), foreX: Math.max(...xs) });
}

/** The hull as its document describes it, before any correction. */
function bareHull(source: HullSource, name: string): Hull {
  if (source.kind === 'tape') return hullFromTape(source, name);
  if (source.kind === 'usual') return hullFromOffsets({ name, stations: familyStations(usualLines(source)) });
  return hullFromOffsets({ name, stations: source.stations.map(({ xM, section }) => ({ x: xM, section })) });
}
