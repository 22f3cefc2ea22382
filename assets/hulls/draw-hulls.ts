/**
 * Draws the sample hulls and writes their tables of offsets beside this file: `node assets/hulls/draw-hulls.ts`.
 * The lines are this project's own family (`core/hull/hull-family.ts`) with the shapes of the usual hulls of their
 * class. No existing boat was measured.
 */
import { writeFileSync } from 'node:fs';
import { familyStations } from '../../core/hull/hull-family.ts';
import { usualLines } from '../../core/hull/usual-lines.ts';

const HULLS = [
  { file: 'single', boatClass: 'C1', lengthM: 5.2, beamM: 0.42 },
  { file: 'pair', boatClass: 'C2', lengthM: 6.5, beamM: 0.45 },
  { file: 'four', boatClass: 'C4', lengthM: 9, beamM: 0.5 },
  { file: 'training', boatClass: 'training', lengthM: 4.9, beamM: 0.82 },
] as const;

for (const { file, ...numbers } of HULLS) {
  const rows = ['station [mm],half-breadth [mm],height [mm]'];
  for (const { x, section } of familyStations(usualLines(numbers))) {
    for (const [y, z] of section) {
      rows.push([x, y, z].map((m) => String(Math.round(m * 1e5) / 100 + 0)).join(','));
    }
  }
  writeFileSync(new URL(`${file}.csv`, import.meta.url), `${rows.join('\n')}\n`);
}
