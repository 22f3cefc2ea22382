import { figureOf, type SheetUnits } from '../setout/sheet-length.ts';

/** A length as one says it to an athlete: `4 mm`, `1.5 cm`, or inches to 1/32. The argument is in metres. */
export function showLength(lengthM: number, units: SheetUnits): string {
  if (units === 'in') return `${figureOf(lengthM * 1000, 'in')} in`;
  const millimetres = Math.round(lengthM * 1000);
  return millimetres < 10 ? `${millimetres} mm` : `${Number((millimetres / 10).toFixed(1))} cm`;
}
