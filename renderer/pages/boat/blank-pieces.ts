import type { BoardHole, Boat, Rails } from '../../../core/document/boat-schema.ts';
import type { StockPad, StockRest } from '../../../core/document/stock-schema.ts';

/** A form's version of a type: null for each number that is missing. */
type Unfinished<T> = { readonly [K in keyof T]: T[K] extends number ? number | null : T[K] };

/** Rails as they are filled in; their ends, from the stern, may be left out. Metres. */
export interface RailsValues extends Unfinished<Omit<Rails, 'aftEndXM' | 'foreEndXM'>> {
  readonly aftFromSternM: number | null;
  readonly foreFromSternM: number | null;
}
export type PadValues = Unfinished<StockPad>;
export type RestValues = Unfinished<StockRest>;

/** A point of the floorboard's profile, from the stern, metres. */
export interface ProfilePoint {
  readonly fromSternM: number | null;
  readonly heightM: number | null;
}

/** A hole of the floorboard as it is filled in: its place from the stern and to port, metres. */
export interface HoleValues {
  readonly fromSternM: number | null;
  readonly yM: number | null;
  readonly diameterM: number | null;
  readonly state: BoardHole['state'];
}

export const BLANK_HOLE: HoleValues = { fromSternM: null, yM: null, diameterM: 0.0065, state: 'drilled' };

export const BLANK_POINT: ProfilePoint = { fromSternM: null, heightM: null };
export const BLANK_RAILS: RailsValues = {
  fitting: 'kneePad',
  apartM: null,
  heightM: 0,
  holeM: 0.006,
  aftFromSternM: null,
  foreFromSternM: null,
};

/** A pad to begin with: the usual size, its height and name left to be filled in. */
export const BLANK_PAD: PadValues = {
  name: '',
  count: 1,
  lengthM: 0.26,
  widthM: 0.16,
  heightM: null,
  recessDepthM: 0.02,
  foamM: 0.01,
  foamGiveM: 0.008,
};

/** A rest to begin with, likewise. */
export const BLANK_REST: RestValues = {
  name: '',
  count: 1,
  widthM: 0.14,
  heightM: null,
  tiltDeg: 60,
  foamM: 0.01,
};

/** A profile's points from the stern on. */
export function profileValues(
  profile: Boat['floorboard']['profile'],
  fromStern: (xM: number) => number,
): ProfilePoint[] {
  return (profile ?? [])
    .map(({ xM, heightM }) => ({ fromSternM: fromStern(xM), heightM }))
    .toSorted((a, b) => a.fromSternM - b.fromSternM);
}
