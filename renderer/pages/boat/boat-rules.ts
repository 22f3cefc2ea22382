import { type Boat, boatSchema } from '../../../core/document/boat-schema.ts';
import type { HullSource, Stems, TapeHull } from '../../../core/document/hull-kinds-schema.ts';
import { USUAL_DOUBT } from '../../../core/document/usual-classes.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { say } from '../../language/messages.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';
import { BOAT_FIELDS } from './boat-fields.ts';
import { type BoatValues, boatValues, type StationValues, tidyM } from './boat-values.ts';
import { outlyingBeams } from './stands-out.ts';

export type MadeHull = { hull: HullSource } | { problem: string };

type Complete = { readonly [K in Exclude<keyof StationValues, 'beamsM'>]: number } & Pick<
  StationValues,
  'beamsM'
>;

function complete(station: StationValues): station is Complete {
  const { fromSternM, keelM, sheerM, sheerBeamM } = station;
  return [fromSternM, keelM, sheerM, sheerBeamM].every((cell) => cell !== null);
}

/** The hull that the values describe, or what is still missing, in words. */
export function hullOfValues(values: BoatValues): MadeHull {
  if (values.hullKind === 'offsets') {
    return values.offsets ? { hull: values.offsets } : { problem: say('boat.offsets.none') };
  }
  if (values.hullKind === 'usual') return usualOf(values);
  const { lengthM, stations, beamHeightsM } = values;
  const measured = stations.filter(complete);
  if (lengthM === null || measured.length < 5) {
    return { problem: say('boat.station.too-few', { count: measured.length }) };
  }
  const wrong = wrongStation(measured, lengthM);
  if (wrong) return { problem: wrong };
  const made: TapeHull = {
    kind: 'tape',
    lengthM,
    ...stemsOf(values),
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

/** A usual hull of the class; what a boat's own one holds besides stays while the class does. */
function usualOf(values: BoatValues): MadeHull {
  const { usualClass: boatClass, lengthM, beamM, usual } = values;
  if (lengthM === null || beamM === null) return { problem: say('boat.usual.needed') };
  const { stems: _before, ...same } = usual?.boatClass === boatClass ? usual : { doubt: USUAL_DOUBT };
  return { hull: { ...same, kind: 'usual', boatClass, lengthM, beamM, ...stemsOf(values) } };
}

/** The stems that are raked; none where both ends stand upright. */
function stemsOf({ stems }: BoatValues): { stems?: Stems } {
  const { bowRakeM, bowCurveM, sternRakeM, sternCurveM } = stems;
  const bow = bowRakeM ? { bow: { rakeM: bowRakeM, curveM: bowCurveM ?? 0 } } : {};
  const stern = sternRakeM ? { stern: { rakeM: sternRakeM, curveM: sternCurveM ?? 0 } } : {};
  return bowRakeM || sternRakeM ? { stems: { ...bow, ...stern } } : {};
}

function wrongStation(stations: readonly Complete[], lengthM: number): string | null {
  for (const [i, s] of stations.entries()) {
    const number = i + 1;
    if (s.fromSternM <= 0 || s.fromSternM >= lengthM) return say('boat.station.outside', { number });
    if (s.sheerM <= s.keelM) return say('boat.station.sheer-low', { number });
  }
  const places = stations.map((s) => s.fromSternM);
  const second = places.findIndex((place, i) => places.indexOf(place) < i);
  if (second < 0) return null;
  return say('boat.station.twice', {
    first: places.indexOf(places[second]!) + 1,
    second: second + 1,
  });
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

/** How far the values' base line lies below the lowest keel, metres: heights above it are brought down by as much. */
function baseLine(values: BoatValues): number {
  const measured = values.hullKind === 'tape' ? values.stations.filter(complete) : [];
  return measured.length === 0 ? 0 : Math.min(...measured.map((s) => s.keelM));
}

/** What a boat's form asks of the boat that it makes or changes. */
export function boatRules(before: Boat | null): FormRules<BoatValues, Boat> {
  return {
    schema: boatSchema,
    fields: BOAT_FIELDS,
    documentOf: (values) => documentOf(values, before),
    check: (values) => {
      const made = hullOfValues(values);
      const standsOut = values.hullKind === 'tape' ? outlyingBeams(values) : [];
      return {
        hull: 'problem' in made ? made.problem : null,
        ...Object.fromEntries(standsOut.map((one) => [one.path, say('boat.station.stands-out')])),
      };
    },
    fieldOf: (path) => RENAMED.reduce((at, [from, to]) => at.replace(from, to), path),
    wordsFor: (path) => (path === 'profile' ? say('boat.profile.few') : null),
  };
}

function documentOf(values: BoatValues, before: Boat | null): unknown {
  const made = hullOfValues(values);
  const sameHull =
    before !== null && JSON.stringify(made) === JSON.stringify(hullOfValues(boatValues(before)));
  // One that is not touched stays as it was, also in what the form rounds off.
  const hull = sameHull ? before.hull : 'hull' in made ? made.hull : null;
  const half = (hull ? hullLengthOf(hull) : (values.lengthM ?? 0)) / 2;
  const low = baseLine(values);
  const toX = (fromStern: number | null) => (fromStern === null ? null : tidyM(fromStern - half));
  const toHeight = (height: number | null) => (height === null ? null : tidyM(height - low));
  const { floorboard, profile, rails, holes, pads, rests } = values;
  const { boltM, ...hardware } = values.hardware;
  const points = profile.map((point) => ({ xM: toX(point.fromSternM), heightM: toHeight(point.heightM) }));
  return {
    ...(before?.id ? { id: before.id } : {}),
    name: values.name,
    boatClass: values.hullKind === 'usual' ? racingClass(values.usualClass) : values.boatClass,
    massKg: values.massKg,
    centre: before?.centre ?? null,
    hull,
    skinM: values.skinM,
    floatCheck: before?.floatCheck ?? null,
    correction: sameHull ? before.correction : null,
    ...(before?.earlierFloatChecks ? { earlierFloatChecks: before.earlierFloatChecks } : {}),
    floorboard: {
      heightM: toHeight(floorboard.heightM),
      widthM: floorboard.widthM,
      thicknessM: floorboard.thicknessM,
      outline: before?.floorboard.outline,
      aftEndXM: toX(floorboard.aftFromSternM),
      foreEndXM: toX(floorboard.foreFromSternM),
      ...(points.length > 0 ? { profile: points } : {}),
    },
    hardware: {
      ...hardware,
      ...(boltM === null ? {} : { boltM }),
      ...(rails.length > 0 ? { rails: rails.map((pair) => railsOf(pair, toX)) } : {}),
    },
    ...(holes.length > 0
      ? { holes: holes.map(({ fromSternM, ...hole }) => ({ ...hole, xM: toX(fromSternM) })) }
      : {}),
    ...(pads.length + rests.length > 0 ? { stock: { pads, rests } } : {}),
    seats: values.seatsFromSternM.map((fromStern) => ({ stationM: toX(fromStern) })),
  };
}

/** Rails as the document has them: ends that are not filled in are left out. */
function railsOf(
  { aftFromSternM, foreFromSternM, ...pair }: BoatValues['rails'][number],
  toX: (fromStern: number | null) => number | null,
) {
  return {
    ...pair,
    ...(aftFromSternM === null ? {} : { aftEndXM: toX(aftFromSternM) }),
    ...(foreFromSternM === null ? {} : { foreEndXM: toX(foreFromSternM) }),
  };
}

/** The class whose limits hold for a usual boat: none for a training single. */
const racingClass = (usual: BoatValues['usualClass']) => (usual === 'training' ? 'none' : usual);

/** Where a part of the document stands in the form. */
const RENAMED: readonly (readonly [RegExp, string])[] = [
  [/^hull\b.*/, 'hull'],
  [/^floorboard\.profile/, 'profile'],
  [/^(profile\.\d+)\.xM$/, '$1.fromSternM'],
  [/^(holes\.\d+)\.xM$/, '$1.fromSternM'],
  [/^floorboard\.(aft|fore)EndXM$/, 'floorboard.$1FromSternM'],
  [/^hardware\.rails/, 'rails'],
  [/^(rails\.\d+)\.(aft|fore)EndXM$/, '$1.$2FromSternM'],
  [/^stock\./, ''],
  [/^seats\.(\d+)\.stationM$/, 'seatsFromSternM.$1'],
];
