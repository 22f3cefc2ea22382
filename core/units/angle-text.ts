import { type ParsedMeasure, parseMeasure, type WrittenUnit } from './measure-text.ts';

const WRITTEN: readonly WrittenUnit[] = [
  { names: ['°', 'deg', 'degree', 'degrees'], factor: 1 },
  { names: ["'", 'min', 'minutes'], factor: 1 / 60 },
];

/** Reads an angle as a person writes it, in **degrees** as documents hold it: `12`, `12,5°`, `7° 30'` (7.5). */
export function parseAngle(text: string): ParsedMeasure {
  return parseMeasure(text, {
    units: WRITTEN,
    bare: 1,
    below: (factor) => (factor === 1 ? 1 / 60 : undefined),
  });
}
