import type { Line } from './shape.ts';

/** How lines become path data: units of the picture to one of the shapes, whether up is turned to down, places written. */
export interface PathScale {
  /** Picture units for each unit of the shape. */
  readonly perUnit: number;
  readonly flip: boolean;
  /** Digits after the point. */
  readonly decimals: number;
}

/** The usual picture of a view: metres with up turned to down, written to a tenth of the picture's unit. */
export function viewScale(perMetre: number): PathScale {
  return { perUnit: perMetre, flip: true, decimals: 1 };
}

/** Lines as SVG path data. */
export function svgPath(
  lines: readonly Line[],
  { perUnit, flip, decimals }: PathScale,
  closed: 'open' | 'closed',
): string {
  const steps = 10 ** decimals;
  const written = (value: number) => String(Math.round(value * perUnit * steps) / steps);
  const up = flip ? -1 : 1;
  let path = '';
  for (const line of lines) {
    for (let k = 0; k < line.length; k += 2) {
      path += `${k === 0 ? 'M' : 'L'}${written(line[k]!)} ${written(up * line[k + 1]!)}`;
    }
    if (closed === 'closed') path += 'Z';
  }
  return path;
}
