import { type Boat, boatSchema } from '../../../core/document/boat-schema.ts';
import type { HullSource, TapeHull } from '../../../core/document/hull-kinds-schema.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { say } from '../../language/messages.ts';
import { type BoatEntries, type StationEntry, tidyM } from './boat-entries.ts';

export type MadeHull = { hull: HullSource } | { problem: string };

type Complete = { readonly [K in Exclude<keyof StationEntry, 'beamsM'>]: number } & Pick<
  StationEntry,
  'beamsM'
>;

function complete(station: StationEntry): station is Complete {
  const { fromSternM, keelM, sheerM, sheerBeamM } = station;
  return [fromSternM, keelM, sheerM, sheerBeamM].every((cell) => cell !== null);
}

/** The hull that the entries describe, or what is still missing, in words. */
export function hullOfEntries(entries: BoatEntries): MadeHull {
  if (entries.hullKind === 'offsets') {
    return entries.offsets ? { hull: entries.offsets } : { problem: say('boat.offsets.none') };
  }
  if (entries.hullKind === 'usual' && entries.usual) return { hull: entries.usual };
  const { lengthM, stations, beamHeightsM } = entries;
  const measured = stations.filter(complete);
  if (lengthM === null || measured.length < 5) {
    return { problem: say('boat.station.too-few', { count: measured.length }) };
  }
  const wrong = wrongStation(measured, lengthM);
  if (wrong) return { problem: wrong };
  const made: TapeHull = {
    kind: 'tape',
    lengthM,
    stations: measured.map((s) => ({
      xM: tidyM(s.fromSternM - lengthM / 2),
      keelM: s.keelM,
      sheerM: s.sheerM,
      sheerBeamM: s.sheerBeamM,
      beams: s.beamsM.flatMap((beamM, i) => {
        const aboveKeelM = beamHeightsM[i];
        return beamM === null || !aboveKeelM ? [] : [{ aboveKeelM, beamM }];
      }),
    })),
  };
  return { hull: levelled(made) };
}

function wrongStation(stations: readonly Complete[], lengthM: number): string | null {
  for (const [i, s] of stations.entries()) {
    const number = i + 1;
    if (s.fromSternM <= 0 || s.fromSternM >= lengthM) return say('boat.station.outside', { number });
    if (s.sheerM <= s.keelM) return say('boat.station.sheer-low', { number });
  }
  const places = new Set(stations.map((s) => s.fromSternM));
  return places.size < stations.length ? say('boat.station.twice') : null;
}

/** The same hull with its lowest keel at height 0, where the boat frame has its origin. */
function levelled(hull: TapeHull): TapeHull {
  const low = Math.min(...hull.stations.map((s) => s.keelM));
  if (low === 0) return hull;
  return {
    ...hull,
    stations: hull.stations.map((s) => ({
      ...s,
      keelM: tidyM(s.keelM - low),
      sheerM: tidyM(s.sheerM - low),
    })),
  };
}

/** How far the entries' base line lies below the lowest keel, metres: heights above it are brought down by as much. */
function baseLine(entries: BoatEntries): number {
  if (entries.hullKind !== 'tape') return 0;
  return Math.min(...entries.stations.filter(complete).map((s) => s.keelM));
}

/** The boat that the entries describe, or what is still wrong, by field (`hull` for all of the hull). */
export function boatOfEntries(
  entries: BoatEntries,
  before: Boat | null,
): { boat: Boat } | { problems: Readonly<Record<string, string>> } {
  const made = hullOfEntries(entries);
  if ('problem' in made) return { problems: { hull: made.problem, ...missing(entries) } };
  const half = hullLengthOf(made.hull) / 2;
  const toX = (fromStern: number | null) => (fromStern === null ? null : tidyM(fromStern - half));
  const toHeight = (height: number | null) => (height === null ? null : tidyM(height - baseLine(entries)));
  const { floorboard, profile, rails, pads, rests } = entries;
  const sameHull = before && JSON.stringify(before.hull) === JSON.stringify(made.hull);
  const parsed = boatSchema.safeParse({
    ...(before?.id ? { id: before.id } : {}),
    name: entries.name,
    boatClass: entries.boatClass,
    massKg: entries.massKg,
    centre: before?.centre ?? null,
    hull: made.hull,
    skinM: entries.skinM,
    floatCheck: before?.floatCheck ?? null,
    correction: sameHull ? before.correction : null,
    ...(before?.earlierFloatChecks ? { earlierFloatChecks: before.earlierFloatChecks } : {}),
    floorboard: {
      heightM: toHeight(floorboard.heightM),
      widthM: floorboard.widthM,
      aftEndXM: toX(floorboard.aftFromSternM),
      foreEndXM: toX(floorboard.foreFromSternM),
      // Not in the form yet: what the boat had is kept.
      thicknessM: before?.floorboard.thicknessM,
      outline: before?.floorboard.outline,
      ...(profile.length > 0
        ? {
            profile: profile.map((point) => ({
              xM: toX(point.fromSternM),
              heightM: toHeight(point.heightM),
            })),
          }
        : {}),
    },
    hardware: { ...entries.hardware, ...(rails.length > 0 ? { rails } : {}) },
    ...(pads.length + rests.length > 0 ? { stock: { pads, rests } } : {}),
    seats: entries.seatsFromSternM.map((fromStern) => ({ stationM: toX(fromStern) })),
  });
  if (parsed.success) return { boat: parsed.data };
  return { problems: { ...missing(entries), ...wrongFields(parsed.error.issues) } };
}

function wrongFields(issues: readonly { path: PropertyKey[] }[]): Record<string, string> {
  const few = (path: string) => path === 'floorboard.profile';
  return Object.fromEntries(
    issues
      .map(({ path }) => path.join('.'))
      .map((path) => [path, say(few(path) ? 'boat.profile.few' : 'field.needed')]),
  );
}

/** Fields that are still empty, by the names that the schema gives them. */
function missing(entries: BoatEntries): Record<string, string> {
  const { floorboard } = entries;
  const empty: Record<string, boolean> = {
    name: entries.name.trim() === '',
    massKg: entries.massKg === null,
    'floorboard.heightM': floorboard.heightM === null,
    'floorboard.widthM': floorboard.widthM === null,
    'floorboard.aftEndXM': floorboard.aftFromSternM === null,
    'floorboard.foreEndXM': floorboard.foreFromSternM === null,
  };
  entries.seatsFromSternM.forEach((fromStern, i) => {
    empty[`seats.${i}.stationM`] = fromStern === null;
  });
  const fields = Object.keys(empty).filter((field) => empty[field]);
  return Object.fromEntries(fields.map((field) => [field, say('field.needed')]));
}
