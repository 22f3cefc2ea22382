import type { Complex } from './exponential-integral.ts';
import { solveComplex } from './solve-complex.ts';
import { waveSource } from './wave-source.ts';

/** The immersed half of a section: y ≥ 0 and z ≤ 0 from keel to waterline, metres, the water plane at z = 0. */
export interface WetHalf {
  /** From keel to waterline: half breadth and height over the surface, metres; under water z is negative. */
  readonly y: Float64Array | readonly number[];
  /** As many as `y`. */
  readonly z: Float64Array | readonly number[];
}

/** Heave of a section per metre of length and kg/m³ of water: added mass in m² and damping in m²/s. */
export interface HeaveCoefficients {
  /** m²: times the water's density, kg per metre of length. */
  readonly addedMass: number;
  /** m²/s: times the water's density, N·s/m per metre of length; from the pressure on the section. */
  readonly damping: number;
  /** The damping again, from the waves far away: it tells how well the section is resolved. */
  readonly farDamping: number;
}

/** One straight piece of the section: its middle and length, metres. */
interface Panel {
  /** Middle of the piece. */
  readonly y: number;
  /** Negative under water. */
  readonly z: number;
  /** Metres. */
  readonly length: number;
  /** Unit normal into the water. */
  readonly normalY: number;
  /** Up is positive. */
  readonly normalZ: number;
}

/**
 * Added mass and damping of a section that heaves at a circular frequency, by sources on its contour that make waves
 * (W. Frank, NSRDC report 2375, 1967): deep water, small motion, no speed. The section is symmetric. Null where nothing is
 * immersed. A half circle of radius R at high frequency has the added mass πR²/2.
 */
export function sectionHeave(
  half: WetHalf,
  { omega, gravity }: { omega: number; gravity: number },
): HeaveCoefficients | null {
  const panels = panelsOf(half);
  if (panels.length === 0) return null;
  const k = omega ** 2 / gravity;
  const count = panels.length;
  const velocity: Complex[] = [];
  const potential: Complex[] = [];
  for (const at of panels) {
    for (const source of panels) {
      const right = waveSource(at, source, { k, side: 1 });
      const left = waveSource(at, source, { k, side: -1 });
      potential.push({ re: right.phi.re + left.phi.re, im: right.phi.im + left.phi.im });
      velocity.push({
        re: along(at, right.y.re + left.y.re, right.z.re + left.z.re),
        im: along(at, right.y.im + left.y.im, right.z.im + left.z.im),
      });
    }
  }
  const strengths = solveComplex(
    velocity,
    panels.map(({ normalZ }) => ({ re: normalZ, im: 0 })),
  );
  let [re, im, farRe, farIm] = [0, 0, 0, 0];
  panels.forEach((at, i) => {
    const weight = 2 * at.normalZ * at.length;
    for (let j = 0; j < count; j++) {
      const [phi, s] = [potential[i * count + j]!, strengths[j]!];
      re += weight * (phi.re * s.re - phi.im * s.im);
      im += weight * (phi.re * s.im + phi.im * s.re);
    }
    const reach = 2 * at.length * Math.exp(k * at.z) * Math.cos(k * at.y);
    farRe += reach * strengths[i]!.re;
    farIm += reach * strengths[i]!.im;
  });
  return { addedMass: -re, damping: omega * im, farDamping: omega * (farRe ** 2 + farIm ** 2) };
}

/** A vector's part along the panel's normal. */
const along = (panel: Panel, y: number, z: number) => panel.normalY * y + panel.normalZ * z;

/** Straight panels of the half contour, keel first; those of no length are left out. */
function panelsOf({ y, z }: WetHalf): Panel[] {
  const panels: Panel[] = [];
  for (let i = 1; i < y.length; i++) {
    const [dy, dz] = [y[i]! - y[i - 1]!, z[i]! - z[i - 1]!];
    const length = Math.hypot(dy, dz);
    if (length < 1e-9) continue;
    panels.push({
      y: (y[i]! + y[i - 1]!) / 2,
      z: (z[i]! + z[i - 1]!) / 2,
      length,
      // From keel to waterline the water lies to the right of the walk.
      normalY: dz / length,
      normalZ: -dy / length,
    });
  }
  return panels;
}
