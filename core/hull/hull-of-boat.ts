import type { Boat } from '../document/boat-schema.ts';
import type { HullSource, Stems, TapeHull, UsualHull } from '../document/hull-kinds-schema.ts';
import { correctHull } from './correct-hull.ts';
import type { Hull } from './hull.ts';
import { familyStations } from './hull-family.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { hullFromTape } from './hull-from-tape.ts';
import type { NoHull } from './no-hull.ts';
import { withStems } from './stem-ends.ts';
import { usualLines } from './usual-lines.ts';

/** What a boat's document says of its hull. */
type HullDocument = Pick<Boat, 'hull' | 'name' | 'correction'>;

/**
 * The hull of a boat document, by offsets, by tape or a usual one, with its float check's correction if it has one. Metres, boat
 * frame (the document's own: nothing is shifted). For documents that the schema has let through: of those a hull can be made, and
 * one without is a fault of the program. For what is still being written see `hullOrNot`.
 */
export function hullOfBoat(boat: HullDocument): Hull {
  const hull = hullOrNot(boat);
  if (hull.kind === 'hull') return hull;
  throw new Error(`a boat with a hull that the schema refuses: ${hull.reason.key}`);
}

/** The same of a document that need not be whole: a `NoHull` says what keeps it from being a hull. */
export function hullOrNot({ hull: source, name, correction }: HullDocument): Hull | NoHull {
  const upright = bareHull(source, name);
  if (upright.kind === 'no-hull') return upright;
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
function bareHull(source: HullSource, name: string): Hull | NoHull {
  if (source.kind === 'tape') return hullFromTape(source, name);
  if (source.kind === 'usual') return hullFromOffsets({ name, stations: familyStations(usualLines(source)) });
  return hullFromOffsets({ name, stations: source.stations.map(({ xM, section }) => ({ x: xM, section })) });
}
