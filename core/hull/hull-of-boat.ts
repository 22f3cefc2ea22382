import type { Boat } from '../document/boat-schema.ts';
import type {
  HullCorrection,
  HullSource,
  Stems,
  TapeHull,
  UsualHull,
} from '../document/hull-kinds-schema.ts';
import { correctHull } from './correct-hull.ts';
import type { Hull } from './hull.ts';
import { familyStations } from './hull-family.ts';
import { hullFromOffsets } from './hull-from-offsets.ts';
import { hullFromTape } from './hull-from-tape.ts';
import type { NoHull } from './no-hull.ts';
import { withStems } from './stem-ends.ts';
import { usualLines } from './usual-lines.ts';

/** The part of a boat's document that describes its hull. */
type HullDocument = Pick<Boat, 'hull' | 'name' | 'correction'>;

/** Hulls as their documents describe them, before any correction, with the name that each was made for. */
const uncorrected = new WeakMap<HullSource, { readonly name: string; readonly hull: Hull | NoHull }>();
/** Corrected hulls, each with the hull that it was made from. */
const corrected = new WeakMap<HullCorrection, { readonly of: Hull; readonly hull: Hull }>();

/**
 * The hull of a boat document, by offsets, by tape or a usual one, with its float check's correction if it has one. Metres,
 * boat frame (the document's own: nothing is shifted). For documents that passed the schema; a document that is still being
 * edited needs `hullOrNot`. @throws Error when the document makes no hull: an error of the program.
 *
 * The same document gives the same hull. It is made once (1.5 to 4 ms) and kept as long as the document's `hull` is there:
 * documents are never changed in place, and a copy with another floorboard has the same `hull` in it.
 */
export function hullOfBoat(boat: HullDocument): Hull {
  const hull = hullOrNot(boat);
  if (hull.kind === 'hull') return hull;
  throw new Error(`a boat with a hull that the schema refuses: ${hull.reason.key}`);
}

/** The same for a document that may be incomplete. A `NoHull` says why it makes no hull. */
export function hullOrNot({ hull: source, name, correction }: HullDocument): Hull | NoHull {
  const hull = uncorrectedHull(source, name);
  if (hull.kind === 'no-hull' || !correction) return hull;
  const known = corrected.get(correction);
  if (known?.of === hull) return known.hull;
  const made = correctHull(hull, correction);
  corrected.set(correction, { of: hull, hull: made });
  return made;
}

/** The hull before any correction, made once. */
function uncorrectedHull(source: HullSource, name: string): Hull | NoHull {
  const known = uncorrected.get(source);
  if (known?.name === name) return known.hull;
  const bare = bareHull(source, name);
  const rakes = bare.kind === 'hull' && source.kind !== 'offsets' && source.stems;
  const hull = rakes ? raked(bare, source, rakes) : bare;
  uncorrected.set(source, { name, hull });
  return hull;
}

/** A hull by tape or of a class with its ends raked. */
function raked(hull: Hull, source: TapeHull | UsualHull, stems: Stems): Hull {
  if (source.kind === 'usual') return withStems(hull, stems);
  const xs = source.stations.map(({ xM }) => xM);
  return withStems(hull, stems, { aftX: Math.min(...xs), foreX: Math.max(...xs) });
}

/** The hull as its document describes it, with plumb ends. */
function bareHull(source: HullSource, name: string): Hull | NoHull {
  if (source.kind === 'tape') return hullFromTape(source, name);
  if (source.kind === 'usual') return hullFromOffsets({ name, stations: familyStations(usualLines(source)) });
  return hullFromOffsets({ name, stations: source.stations.map(({ xM, section }) => ({ x: xM, section })) });
}
