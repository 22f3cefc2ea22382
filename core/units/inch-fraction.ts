/** Inches are written to the nearest 1/32 in (0.8 mm): as fine as an inch tape, and about 1 mm. */
const THIRTY_SECONDS = 32;

/** Inches as an inch tape reads them, to the nearest 1/32: 6.875 is `6 7/8`; below a 64th it is `0`. */
export function inchFraction(inches: number): string {
  const parts = Math.round(Math.abs(inches) * THIRTY_SECONDS);
  const sign = inches < 0 && parts > 0 ? '-' : '';
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
