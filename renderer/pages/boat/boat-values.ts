import type { Boat } from '../../../core/document/boat-schema.ts';
import type {
  HullSource,
  OffsetsHull,
  TapeHull,
  UsualHull,
} from '../../../core/document/hull-kinds-schema.ts';
import type { UsualClass } from '../../../core/document/usual-classes.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import type { FormState } from '../../ui/form/use-form.ts';
import {
  type HoleValues,
  type PadValues,
  type ProfilePoint,
  profileValues,
  type RailsValues,
  type RestValues,
} from './blank-pieces.ts';

/** One station's cells while they are being filled in, metres; places from the stern, as a tape lies. */
export interface StationValues {
  readonly fromSternM: number | null;
  readonly keelM: number | null;
  readonly sheerM: number | null;
  readonly sheerBeamM: number | null;
  /** Full beams at each of the common heights above the keel. */
  readonly beamsM: readonly (number | null)[];
}

/** What the boat's form holds while it is being filled in. Metres and kilograms; places from the stern. */
export interface BoatValues {
  readonly name: string;
  readonly boatClass: Boat['boatClass'];
  readonly massKg: number | null;
  readonly hullKind: HullSource['kind'];
  readonly lengthM: number | null;
  readonly beamHeightsM: readonly (number | null)[];
  readonly stations: readonly StationValues[];
  readonly offsets: OffsetsHull | null;
  /** The class whose usual lines stand in while nobody has measured, and the greatest beam. */
  readonly usualClass: UsualClass;
  readonly beamM: number | null;
  /** What a usual hull's document holds besides its class and numbers. */
  readonly usual: UsualHull | null;
  /** Readings that stand out from their neighbours and are right all the same (`StandsOut.key`). */
  readonly sureOf: readonly string[];
  /** Rake and curve of the ends; null where an end stands upright. */
  readonly stems: {
    readonly bowRakeM: number | null;
    readonly bowCurveM: number | null;
    readonly sternRakeM: number | null;
    readonly sternCurveM: number | null;
  };
  readonly skinM: number;
  readonly floorboard: {
    readonly heightM: number | null;
    readonly widthM: number | null;
    readonly thicknessM: number;
    readonly aftFromSternM: number | null;
    readonly foreFromSternM: number | null;
  };
  /** Points of the floorboard's profile; none for a level board. */
  readonly profile: readonly ProfilePoint[];
  readonly hardware: Omit<Boat['hardware'], 'rails' | 'boltM'> & { readonly boltM: number | null };
  readonly rails: readonly RailsValues[];
  readonly holes: readonly HoleValues[];
  readonly pads: readonly PadValues[];
  readonly rests: readonly RestValues[];
  readonly seatsFromSternM: readonly (number | null)[];
}

/** What every section of a boat's form is given. */
export interface BoatSectionProps {
  readonly form: FormState<BoatValues>;
}

export const BLANK_STATION: StationValues = {
  fromSternM: null,
  keelM: null,
  sheerM: null,
  sheerBeamM: null,
  beamsM: [null, null],
};

const STATIONS_AT_FIRST = 7;

const BLANK_TAPE = {
  beamHeightsM: [0.05, 0.12],
  stations: Array.from({ length: STATIONS_AT_FIRST }, () => BLANK_STATION),
} as const;

/** Rounds off the error of adding and subtracting half a length: to a hundredth of a millimetre. */
export const tidyM = (value: number) => Number(value.toFixed(5));

/** Values to begin with: those of a boat, or of a usual single that has no name yet. */
export function boatValues(boat: Boat | null): BoatValues {
  return boat ? valuesOf(boat) : { ...valuesOf(usualHull({ boatClass: 'C1' })), name: '' };
}

function valuesOf(boat: Boat): BoatValues {
  const length = hullLengthOf(boat.hull);
  const { rails = [], boltM = null, ...hardware } = boat.hardware;
  const fromStern = (xM: number) => tidyM(xM + length / 2);
  return {
    name: boat.name,
    boatClass: boat.boatClass,
    massKg: boat.massKg,
    hullKind: boat.hull.kind,
    lengthM: length,
    ...(boat.hull.kind === 'tape' ? tapeValues(boat.hull, fromStern) : BLANK_TAPE),
    offsets: boat.hull.kind === 'offsets' ? boat.hull : null,
    ...usualValues(boat),
    sureOf: [],
    stems: stemValues(boat.hull),
    skinM: boat.skinM,
    floorboard: {
      heightM: boat.floorboard.heightM,
      widthM: boat.floorboard.widthM,
      thicknessM: boat.floorboard.thicknessM,
      aftFromSternM: fromStern(boat.floorboard.aftEndXM),
      foreFromSternM: fromStern(boat.floorboard.foreEndXM),
    },
    profile: profileValues(boat.floorboard.profile, fromStern),
    hardware: { ...hardware, boltM },
    rails: rails.map(({ aftEndXM, foreEndXM, ...pair }) => ({
      ...pair,
      aftFromSternM: aftEndXM === undefined ? null : fromStern(aftEndXM),
      foreFromSternM: foreEndXM === undefined ? null : fromStern(foreEndXM),
    })),
    holes: (boat.holes ?? []).map(({ xM, ...hole }) => ({ ...hole, fromSternM: fromStern(xM) })),
    pads: boat.stock?.pads ?? [],
    rests: boat.stock?.rests ?? [],
    seatsFromSternM: boat.seats.map(({ stationM }) => fromStern(stationM)),
  };
}

function stemValues(hull: HullSource): BoatValues['stems'] {
  const { bow, stern } = (hull.kind === 'offsets' ? null : hull.stems) ?? {};
  return {
    bowRakeM: bow?.rakeM ?? null,
    bowCurveM: bow?.curveM ?? null,
    sternRakeM: stern?.rakeM ?? null,
    sternCurveM: stern?.curveM ?? null,
  };
}

/** The class and beam of a usual hull; for a measured one those that it would begin from. */
function usualValues({ hull, boatClass }: Boat): Pick<BoatValues, 'usual' | 'usualClass' | 'beamM'> {
  if (hull.kind === 'usual') return { usual: hull, usualClass: hull.boatClass, beamM: hull.beamM };
  return { usual: null, usualClass: boatClass === 'none' ? 'training' : boatClass, beamM: null };
}

/** A tape hull as a table with common heights of lower beams; a beam measured elsewhere gets a column of its own. */
function tapeValues(
  hull: TapeHull,
  fromStern: (xM: number) => number,
): Pick<BoatValues, 'beamHeightsM' | 'stations'> {
  const heights = [...new Set(hull.stations.flatMap(({ beams }) => beams.map((b) => b.aboveKeelM)))].sort(
    (a, b) => a - b,
  );
  const stations = hull.stations
    .toSorted((a, b) => a.xM - b.xM)
    .map((s) => ({
      fromSternM: fromStern(s.xM),
      keelM: s.keelM,
      sheerM: s.sheerM,
      sheerBeamM: s.sheerBeamM,
      beamsM: heights.map((h) => s.beams.find((b) => b.aboveKeelM === h)?.beamM ?? null),
    }));
  return { beamHeightsM: heights, stations };
}

/** Stations spread evenly between stern and bow, half a spacing in from either end; what was measured stays by order. */
export function spreadStations(values: BoatValues): readonly StationValues[] {
  const { lengthM, stations } = values;
  if (lengthM === null) return stations;
  return stations.map((s, i) => ({
    ...s,
    fromSternM: Math.round(((i + 0.5) / stations.length) * lengthM * 100) / 100,
  }));
}

/** Seats' marks for a boat of so many seats: those already set stay, the others are left to be measured. */
export function marksForSeats(values: BoatValues, count: number): readonly (number | null)[] {
  return Array.from({ length: count }, (_, i) => values.seatsFromSternM[i] ?? null);
}
