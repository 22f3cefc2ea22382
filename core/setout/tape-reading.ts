import type { SheetUnits } from './sheet-length.ts';

/** Finest division that a sheet is written to, millimetres: 1 mm, or 1/32 in. */
const GRAIN: Readonly<Record<SheetUnits, number>> = { mm: 1, in: 25.4 / 32 };

/**
 * A length as the tape of a sheet reads it, millimetres: whole millimetres, or whole 1/32 in. Sums and differences of readings are
 * readings, so that a sheet agrees with itself in either unit. 175.4 mm reads 175 by a metric tape, 175.42 (6 29/32) by an inch one.
 */
export function tapeReading(lengthMm: number, units: SheetUnits): number {
  const grain = GRAIN[units];
  return Math.round(lengthMm / grain) * grain + 0;
}
