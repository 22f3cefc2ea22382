import type { Line } from './shape.ts';

const written = (value: number) => String(Math.round(value * 10) / 10);

/** Lines as SVG path data, up turned to down; `perMetre` gives the picture's units, written to a tenth. */
export function svgPath(
  lines: readonly Line[],
  { perMetre, closed }: { perMetre: number; closed: boolean },
): string {
  let path = '';
  for (const line of lines) {
    for (let k = 0; k < line.length; k += 2) {
      path += `${k === 0 ? 'M' : 'L'}${written(line[k]! * perMetre)} ${written(-line[k + 1]! * perMetre)}`;
    }
    if (closed) path += 'Z';
  }
  return path;
}
