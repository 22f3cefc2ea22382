/**
 * Draws the sample hulls and writes their tables of offsets beside this file: `node assets/hulls/draw-hulls.ts`.
 * The lines are this project's own: parabola-like plan, superellipse bottoms with straight flare above, every section
 * and every fore-and-aft line convex. No existing boat was measured.
 */
import { writeFileSync } from 'node:fs';

interface Lines {
  readonly file: string;
  readonly lengthM: number;
  /** Full beam at the sheer, greatest. */
  readonly beamM: number;
  /** Keel to sheer amidships, and how much the sheer rises to bow and stern. */
  readonly depthM: number;
  readonly bowRiseM: number;
  readonly sternRiseM: number;
  /** How high the keel line stands at its ends. */
  readonly rockerM: number;
  /** Greatest beam lies aft of midships by this share of half the length. */
  readonly aftShift: number;
  /** Fullness of the plan: 2 is a parabola, more is fuller toward the ends. */
  readonly plan: number;
  /** Superellipse exponents: bottom flatness and turn of the bilge. */
  readonly flatness: number;
  readonly bilge: number;
  /** Share of straight flare in a half-section, 0–1. */
  readonly flare: number;
}

const HULLS: readonly Lines[] = [
  { file: 'single', lengthM: 5.2, beamM: 0.42, depthM: 0.27, bowRiseM: 0.035, sternRiseM: 0.02, rockerM: 0.03, aftShift: 0.04, plan: 2.4, flatness: 3.2, bilge: 2.3, flare: 0.1 },
  { file: 'pair', lengthM: 6.5, beamM: 0.45, depthM: 0.3, bowRiseM: 0.04, sternRiseM: 0.025, rockerM: 0.035, aftShift: 0.03, plan: 2.4, flatness: 3.2, bilge: 2.2, flare: 0.1 },
  { file: 'four', lengthM: 9, beamM: 0.5, depthM: 0.35, bowRiseM: 0.045, sternRiseM: 0.03, rockerM: 0.045, aftShift: 0.02, plan: 2.5, flatness: 3.2, bilge: 2.2, flare: 0.1 },
  { file: 'training', lengthM: 4.9, beamM: 0.82, depthM: 0.29, bowRiseM: 0.06, sternRiseM: 0.05, rockerM: 0.035, aftShift: 0.02, plan: 2.4, flatness: 4, bilge: 2.4, flare: 0.08 },
];

const STATIONS = 41;
const POINTS = 25;

/** Share of half the length, −1 stern to 1 bow, with the greatest beam moved to 0. */
const fromBeam = (xi: number, shift: number) => xi + shift * (1 - xi * xi);

function halfSection(lines: Lines, xi: number): { y: number; z: number }[] {
  const plan = Math.max(0, 1 - Math.abs(fromBeam(xi, lines.aftShift)) ** lines.plan);
  const halfBeam = (lines.beamM / 2) * plan;
  const keel = lines.rockerM * xi ** 4;
  const sheer = lines.depthM + (xi > 0 ? lines.bowRiseM : lines.sternRiseM) * xi * xi;
  return Array.from({ length: POINTS }, (_, k) => {
    const height = (k / (POINTS - 1)) ** 1.8;
    const round = (1 - (1 - height) ** lines.bilge) ** (1 / lines.flatness);
    return {
      y: halfBeam * ((1 - lines.flare) * round + lines.flare * height),
      z: keel + (sheer - keel) * height,
    };
  });
}

function table(lines: Lines): string {
  const rows = ['station [mm],half-breadth [mm],height [mm]'];
  for (let i = 0; i < STATIONS; i++) {
    const xi = -1 + (2 * i) / (STATIONS - 1);
    const x = (xi * lines.lengthM) / 2;
    for (const { y, z } of halfSection(lines, xi)) {
      rows.push([x, y, z].map((m) => (m * 1000 + 0).toFixed(1).replace(/^-0\.0$/, '0.0')).join(','));
    }
  }
  return `${rows.join('\n')}\n`;
}

for (const lines of HULLS) writeFileSync(new URL(`${lines.file}.csv`, import.meta.url), table(lines));
