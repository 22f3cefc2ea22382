import { GRAVITY } from '../units/gravity.ts';
import { integrateToInfinity } from './adaptive-quadrature.ts';
import type { ImmersedGrid } from './immersed-grid.ts';
import { waveNumber } from './wave-number.ts';

/** Speed in m/s, density in kg/m³, depth of the water in metres (undefined: deep). */
export interface Wavy {
  readonly speed: number;
  readonly waterDensity: number;
  readonly depth?: number;
  /** Relative tolerance of the integral over wave directions. */
  readonly tolerance?: number;
}

const TOLERANCE = 1e-4;

/**
 * Wave resistance in newtons by Michell's thin-ship integral: a slender hull, ideal water, small waves; steady speed. In
 * deep water
 *
 *   R = (4 ρ k₀² U² / π) ∫ |H(θ)|² sec³θ dθ,  H = ∬ (∂y/∂x) exp(k z + i k cosθ x) dx dz,  k = k₀ sec²θ,  k₀ = g/U²;
 *
 * in water of depth h the waves obey k = k₀ sec²θ tanh(k h), exp(k z) becomes cosh k(z + h)/cosh kh, and the integrand is
 * |H|² k² cosθ / (tanh kh · (1 − 2kh/sinh 2kh)), from the least angle at which waves can follow.
 *
 * Sources: J. H. Michell, Phil. Mag. 45 (1898) 106; E. O. Tuck, J. Austral. Math. Soc. B 30 (1989) 365; for finite depth
 * the source potential of Wehausen and Laitone, Surface Waves (1960), section 13. Sinkage, viscosity and breaking are left out.
 */
export function waveResistance(grid: ImmersedGrid, { speed, waterDensity, depth, tolerance }: Wavy): number {
  if (!(speed > 0) || grid.x.length < 2) return 0;
  const k0 = GRAVITY / speed ** 2;
  const transform = sectionTransform(grid);
  // Over critical speed the waves across the course cannot follow: directions start where k0 h sec²θ = 1.
  const leastSecant = depth === undefined ? 1 : Math.max(1, 1 / Math.sqrt(k0 * depth));
  const integral = integrateToInfinity((u) => {
    const secant = leastSecant * Math.cosh(u);
    const k = waveNumber(k0 * secant ** 2, depth);
    if (!(k > 0)) return 0;
    const spectrum = k ** 2 * transform({ k, along: k / secant, depth }) * depthFactor(k, depth);
    // cosθ dθ with sec θ = s₀ cosh u: s₀ sinh u du / (s² √(s² − 1)); at s₀ = 1 that is du / s².
    const stretch = leastSecant === 1 ? 1 : (leastSecant * Math.sinh(u)) / Math.sqrt(secant ** 2 - 1);
    return (spectrum * stretch) / secant ** 2;
  }, tolerance ?? TOLERANCE);
  return ((4 * waterDensity * speed ** 2) / Math.PI) * integral;
}

/** 1 / (tanh kh · (1 − 2kh / sinh 2kh)): 1 in deep water. */
function depthFactor(k: number, depth: number | undefined): number {
  if (depth === undefined) return 1;
  const kh = k * depth;
  if (kh > 20) return 1;
  // Under 0.01 the bracket is (2/3)(kh)², which the difference of near equals would lose.
  const bracket = kh < 0.01 ? (2 / 3) * kh ** 2 : 1 - (2 * kh) / Math.sinh(2 * kh);
  return 1 / (Math.tanh(kh) * bracket);
}

interface Wave {
  /** Wave number, and its part along the course, per metre. */
  readonly k: number;
  readonly along: number;
  readonly depth: number | undefined;
}

/** |H|² of the grid for one wave, m⁴: areas are taken as straight between depths, their transform as straight between stations. */
function sectionTransform({ x, z, area }: ImmersedGrid): (wave: Wave) => number {
  const weights = new Float64Array(z.length);
  const value = new Float64Array(x.length);
  return ({ k, along, depth }) => {
    depthWeights(z, { k, depth }, weights);
    for (let i = 0, at = 0; i < x.length; i++) {
      let sum = 0;
      for (let j = 0; j < z.length; j++, at++) sum += weights[j]! * area[at]!;
      value[i] = sum;
    }
    return powerAlong(x, value, along);
  };
}

/**
 * |∫ v′(x) exp(i ω x) dx|² of a function straight between its nodes; what is not 0 at an end is a jump there (a transom).
 */
function powerAlong(x: Float64Array, value: Float64Array, along: number): number {
  const last = x.length - 1;
  let [cos, sin] = [Math.cos(along * x[0]!), Math.sin(along * x[0]!)];
  let [real, imaginary] = [value[0]! * cos, value[0]! * sin];
  for (let i = 1; i <= last; i++) {
    const [nextCos, nextSin] = [Math.cos(along * x[i]!), Math.sin(along * x[i]!)];
    const slope = (value[i]! - value[i - 1]!) / ((x[i]! - x[i - 1]!) * along);
    real += slope * (nextSin - sin);
    imaginary -= slope * (nextCos - cos);
    [cos, sin] = [nextCos, nextSin];
  }
  real -= value[last]! * cos;
  imaginary -= value[last]! * sin;
  return real ** 2 + imaginary ** 2;
}

/**
 * Weights w with Σ wⱼ·areaⱼ = ∫ y e(z) dz, where e is the wave's decay with depth and area = ∫ y dz: by parts it is
 * area(0)·e(0) − ∫ area·e′ dz, exact for areas straight between depths.
 */
function depthWeights(
  z: Float64Array,
  { k, depth }: { k: number; depth: number | undefined },
  weights: Float64Array,
) {
  weights.fill(0);
  weights[z.length - 1] = 1;
  let [before, sumBefore] = decay(z[0]!, k, depth);
  for (let j = 1; j < z.length; j++) {
    const [here, sumHere] = decay(z[j]!, k, depth);
    // ∫ e′ = e₁ − e₀, and ∫ e′·(z − z₀)/Δ = e₁ − (E₁ − E₀)/Δ with E the integral of e.
    const upper = here - (sumHere - sumBefore) / (z[j]! - z[j - 1]!);
    weights[j]! -= upper;
    weights[j - 1]! -= here - before - upper;
    [before, sumBefore] = [here, sumHere];
  }
}

/** The wave's decay e(z) at a depth (1 at the surface) and its integral over z, metres. */
function decay(z: number, k: number, depth: number | undefined): readonly [number, number] {
  if (depth === undefined || k * depth > 20) {
    const e = Math.exp(k * z);
    return [e, e / k];
  }
  const over = Math.cosh(k * depth);
  return [Math.cosh(k * (z + depth)) / over, Math.sinh(k * (z + depth)) / (over * k)];
}
