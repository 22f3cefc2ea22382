import { type ParsedMeasure, parseMeasure, type WrittenUnit } from './measure-text.ts';

/** Kilograms in each unit of mass that may be shown or entered. The pound is exact (international yard and pound, 1959). */
export const MASS_UNITS = { kg: 1, lb: 0.45359237 } as const;
/** Units that masses are written and read in. */
export type MassUnit = keyof typeof MASS_UNITS;

/** Kilograms in a stone (14 lb). Stones are read but never shown. */
const STONE = 14 * MASS_UNITS.lb;

const WRITTEN: readonly WrittenUnit[] = [
  { names: ['kg', 'kilo', 'kilos', 'kilogram', 'kilograms'], factor: MASS_UNITS.kg },
  { names: ['lb', 'lbs', 'pound', 'pounds'], factor: MASS_UNITS.lb },
  { names: ['st', 'stone', 'stones'], factor: STONE },
];

/**
 * Reads a mass as a person writes it, in kilograms: `72,5`, `160 lb`, `11 st 4`; `8 st` is 50.80 kg. A number without a unit is
 * in `defaultUnit`.
 */
export function parseMass(text: string, { defaultUnit }: { defaultUnit: MassUnit }): ParsedMeasure {
  return parseMeasure(text, {
    units: WRITTEN,
    bare: MASS_UNITS[defaultUnit],
    below: (factor) => (factor === STONE ? MASS_UNITS.lb : undefined),
  });
}
