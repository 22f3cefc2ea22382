/** Units that lengths on a sheet are written in. Templates are full size in either. */
export const SHEET_UNITS = ['mm', 'in'] as const;
/** `mm`: whole millimetres; `in`: inches and fractions to 1/32. */
export type SheetUnits = (typeof SHEET_UNITS)[number];

const MM_PER_INCH = 25.4;
/** Inches are written to the nearest 1/32 in (0.8 mm), which is as fine as an inch tape reads and matches 1 mm. */
const THIRTY_SECONDS = 32;

/** A length as a bare figure for drawings and tables: `175`, or `6 7/8` to the nearest 1/32 in. Argument in mm. */
export function figureOf(lengthMm: number, units: SheetUnits): string {
  if (units === 'mm') return String(Math.round(lengthMm) + 0);
  const parts = Math.round((Math.abs(lengthMm) / MM_PER_INCH) * THIRTY_SECONDS);
  const sign = lengthMm < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / THIRTY_SECONDS);
  let over = parts % THIRTY_SECONDS;
  let under = THIRTY_SECONDS;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ''}${over}/${under}`;
}

/** A length with its unit, for sentences: `175 mm`, `6 7/8 in`. Argument in millimetres. */
export function writtenLength(lengthMm: number, units: SheetUnits): string {
  return `${figureOf(lengthMm, units)} ${units}`;
}

/** Metres to millimetres. */
export function millimetres(lengthM: number): number {
  return lengthM * 1000;
}

/** Metres to whole millimetres, as a tape is read; never −0. */
export function wholeMillimetres(lengthM: number): number {
  return Math.round(lengthM * 1000) + 0;
}
