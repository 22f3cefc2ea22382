import { inchFraction } from '../units/inch-fraction.ts';
import { shownPlaces } from '../units/shown-places.ts';
import { GAP, withUnit } from './with-unit.ts';

/** Units that lengths on a sheet are written in. Templates are full size in either. */
export const SHEET_UNITS = ['mm', 'in'] as const;
/** `mm`: whole millimetres; `in`: inches and fractions to 1/32. */
export type SheetUnits = (typeof SHEET_UNITS)[number];

/** Exact, by the international yard and pound agreement of 1959. */
const MM_PER_INCH = 25.4;

/** A length as a bare figure for drawings and tables: `175`, or `6 7/8` to the nearest 1/32 in. Argument in mm. */
export function bareLength(lengthMm: number, units: SheetUnits): string {
  if (units === 'mm') return String(Math.round(lengthMm) + 0);
  return inchFraction(lengthMm / MM_PER_INCH);
}

/** A length with its unit, for sentences: `175 mm`, `6 7/8 in`. Argument in millimetres. */
export function writtenLength(lengthMm: number, units: SheetUnits): string {
  return withUnit(bareLength(lengthMm, units).replaceAll(' ', GAP), units);
}

/** An angle for drawings and sentences, whole degrees: `12°`. */
export function writtenAngle(deg: number): string {
  return `${Math.round(deg) + 0}°`;
}

/**
 * A force for sentences, to tens of newtons, or to hundreds where half of its 95 % interval (`half`, newtons) is large. 347
 * gives `350 N`, and `300 N` with a half of 400.
 */
export function writtenForce(newtons: number, half = 0): string {
  const step = 10 ** -shownPlaces(half, -1);
  return withUnit(String(Math.round(newtons / step) * step + 0), 'N');
}

/** Metres to millimetres. */
export function millimetres(lengthM: number): number {
  return lengthM * 1000;
}

/** Metres to whole millimetres, as a tape is read; never −0. */
export function wholeMillimetres(lengthM: number): number {
  return Math.round(lengthM * 1000) + 0;
}

/** Finest division that a sheet is written to, millimetres: 1 mm, or 1/32 in. */
const SHOWN_STEP: Readonly<Record<SheetUnits, number>> = { mm: 1, in: MM_PER_INCH / 32 };

/**
 * A length as the tape of a sheet reads it, millimetres: whole millimetres, or whole 1/32 in. Sums and differences of readings
 * are readings too, so the numbers of a sheet agree in either unit. 175.4 mm reads 175 by a metric tape, 175.42 (6 29/32) by an
 * inch one.
 */
export function tapeReading(lengthMm: number, units: SheetUnits): number {
  const step = SHOWN_STEP[units];
  return Math.round(lengthMm / step) * step + 0;
}

/** The same, never more than the length: for a least size that must not be overstated. 59.9 mm reads 59, or 59.53 (2 11/32). */
export function tapeReadingBelow(lengthMm: number, units: SheetUnits): number {
  const step = SHOWN_STEP[units];
  return Math.floor(lengthMm / step + 1e-9) * step + 0;
}
