import { type ParsedMeasure, parseMeasure, type WrittenUnit } from './measure-text.ts';

/** Metres in each unit of length that may be shown or entered. The inch is exact (international yard and pound, 1959). */
export const LENGTH_UNITS = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 } as const;
/** Units that lengths are written and read in. */
export type LengthUnit = keyof typeof LENGTH_UNITS;

const WRITTEN: readonly WrittenUnit[] = [
  { names: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], factor: LENGTH_UNITS.mm },
  { names: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], factor: LENGTH_UNITS.cm },
  { names: ['m', 'metre', 'metres', 'meter', 'meters'], factor: LENGTH_UNITS.m },
  { names: ['in', '"', 'inch', 'inches'], factor: LENGTH_UNITS.in },
  { names: ['ft', "'", 'foot', 'feet'], factor: LENGTH_UNITS.ft },
];

/** What a bare number means after a part in this unit: `1 m 75` is centimetres, `5 ft 10` is inches. */
function unitBelow(factor: number): number | undefined {
  if (factor === LENGTH_UNITS.m) return LENGTH_UNITS.cm;
  return factor === LENGTH_UNITS.ft ? LENGTH_UNITS.in : undefined;
}

/**
 * Reads a length as a person writes it, in metres. A number without a unit is in `defaultUnit`.
 * `parseLength('6 7/8 in', { defaultUnit: 'cm' })` gives 0.174625; `'17,5'` gives 0.175.
 */
export function parseLength(text: string, { defaultUnit }: { defaultUnit: LengthUnit }): ParsedMeasure {
  return parseMeasure(text, { units: WRITTEN, bare: LENGTH_UNITS[defaultUnit], below: unitBelow });
}
