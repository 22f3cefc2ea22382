import { GRAVITY } from '../units/gravity.ts';
import { integrateToInfinity } from './adaptive-quadrature.ts';
import type { ImmersedGrid } from './immersed-grid.ts';
import { waveNumber } from './wave-number.ts';

/** Speed in m/s, density in kg/m³, depth of the water in metres (undefined: deep). */
export interface Wavy {
  /** Metres in a second. */
  readonly speed: number;
  /** kg/m³. */
  readonly waterDensity: number;
  /** Metres; deep unless given. */
  readonly depth?: number;
  /** Relative tolerance of the integral over wave directions. */
  readonly tolerance?: number;
  /** Newtons that need not be distinguished, whatever the tolerance; 0 unless given. */
  readonly negligible?: number;
}

/** Of the wave integral: the grid's own error is ten times this. */
const TOLERANCE = 2e-4;

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
export function waveResistance(
  grid: ImmersedGrid,
  { speed, waterDensity, depth, tolerance = TOLERANCE, negligible = 0 }: Wavy,
): number {
  if (!(speed > 0) || grid.x.length < 2) return 0;
  const k0 = GRAVITY / speed ** 2;
  const scale = (4 * waterDensity * speed ** 2) / Math.PI;
  const transform = sectionTransform(grid);
  // Over critical speed the waves across the course cannot follow: directions start where k0 h sec²θ = 1.
  const leastSecant = depth === undefined ? 1 : Math.max(1, 1 / Math.sqrt(k0 * depth));
  const integral = integrateToInfinity(
    (u) => {
      const secant = leastSecant * Math.cosh(u);
      const k = waveNumber(k0 * secant ** 2, depth);
      if (!(k > 0)) return 0;
      const spectrum = k ** 2 * transform({ k, along: k / secant, depth }) * depthFactor(k, depth);
      // cosθ dθ with sec θ = s₀ cosh u: s₀ sinh u du / (s² √(s² − 1)); at s₀ = 1 that is du / s².
      const stretch = leastSecant === 1 ? 1 : (leastSecant * Math.sinh(u)) / Math.sqrt(secant ** 2 - 1);
      return (spectrum * stretch) / secant ** 2;
    },
    { relative: tolerance, absolute: negligible / scale },
  );
  return scale * integral;
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

/** One of the waves that move with the boat. */
interface Wave {
  /** Wave number, and its part along the course, per metre. */
  readonly k: number;
  /** Wave number × cosine of its direction. */
  readonly along: number;
  /** Of the water, metres; undefined where it is deep. */
  readonly depth: number | undefined;
}

/** |H|² of the grid for one wave, m⁴: areas are taken as straight between depths, their transform as straight between stations. */
function sectionTransform({ x, z, area }: ImmersedGrid): (wave: Wave) => number {
  const value = new Float64Array(x.length);
  const powerAlong = powerAlongStations(x);
  const depths = depthWeights(z);
  return (wave) => {
    const first = depths.weigh(wave);
    weighInto(value, depths.weights, { area, first });
    return powerAlong(value, wave.along);
  };
}

/** Σ weights·area of each station from depth `first` on, in three sums so that none waits for the other. */
function weighInto(
  value: Float64Array,
  weights: Float64Array,
  { area, first }: { area: Float64Array; first: number },
): void {
  const depths = weights.length;
  for (let i = 0; i < value.length; i++) {
    const row = i * depths;
    let one = 0;
    let two = 0;
    let three = 0;
    let j = first;
    for (; j + 2 < depths; j += 3) {
      one += weights[j]! * area[row + j]!;
      two += weights[j + 1]! * area[row + j + 1]!;
      three += weights[j + 2]! * area[row + j + 2]!;
    }
    for (; j < depths; j++) one += weights[j]! * area[row + j]!;
    value[i] = one + two + three;
  }
}

/**
 * |∫ v′(x) exp(i ω x) dx|² of a function straight between its nodes; what is not 0 at an end is a jump there (a transom). The
 * nodes lie alike on both sides of their middle: cosines and sines of one half serve both.
 */
function powerAlongStations(x: Float64Array): (value: Float64Array, along: number) => number {
  const last = x.length - 1;
  const middle = (x[0]! + x[last]!) / 2;
  const perSpan = Float64Array.from({ length: last }, (_, i) => 1 / (x[i + 1]! - x[i]!));
  const cos = new Float64Array(x.length);
  const sin = new Float64Array(x.length);
  return (value, along) => {
    for (let i = 0; 2 * i <= last; i++) {
      // One tangent of half the angle gives both.
      const t = Math.tan((along / 2) * (x[i]! - middle));
      const over = 1 / (1 + t * t);
      cos[i] = (1 - t * t) * over;
      sin[i] = 2 * t * over;
      cos[last - i] = cos[i]!;
      sin[last - i] = -sin[i]!;
    }
    let real = 0;
    let imaginary = 0;
    for (let i = 0; i < last; i++) {
      const slope = (value[i + 1]! - value[i]!) * perSpan[i]!;
      real += slope * (sin[i + 1]! - sin[i]!);
      imaginary -= slope * (cos[i + 1]! - cos[i]!);
    }
    real = real / along + value[0]! * cos[0]! - value[last]! * cos[last]!;
    imaginary = imaginary / along + value[0]! * sin[0]! - value[last]! * sin[last]!;
    return real ** 2 + imaginary ** 2;
  };
}

/** Where a wave has decayed below e to the minus this, 10⁻⁷, the hull under it adds nothing that the tolerance can see. */
const GONE = 16;

/**
 * Weights w with Σ wⱼ·areaⱼ = ∫ y e(z) dz, where e is the wave's decay with depth and area = ∫ y dz: by parts it is
 * area(0)·e(0) − ∫ area·e′ dz, exact for areas straight between depths. `weigh` gives the first depth whose weight counts.
 */
function depthWeights(z: Float64Array): { weights: Float64Array; weigh: (wave: Wave) => number } {
  const last = z.length - 1;
  const weights = new Float64Array(z.length);
  const decay = new Float64Array(z.length);
  const sums = new Float64Array(z.length);
  const perStep = Float64Array.from({ length: last }, (_, j) => 1 / (z[j + 1]! - z[j]!));
  const weigh = (wave: Wave) => {
    let first = 0;
    while (first < last - 1 && wave.k * z[first + 1]! < -GONE) first++;
    decays(z, wave, { first, decay, sums });
    weights[first] = 0;
    for (let j = first; j < last; j++) {
      // ∫ e′ = e₁ − e₀, and ∫ e′·(z − z₀)/Δ = e₁ − (E₁ − E₀)/Δ with E the integral of e.
      const upper = decay[j + 1]! - (sums[j + 1]! - sums[j]!) * perStep[j]!;
      weights[j]! -= decay[j + 1]! - decay[j]! - upper;
      weights[j + 1] = -upper;
    }
    weights[last]! += 1;
    return first;
  };
  return { weights, weigh };
}

/** The wave's decay e(z) at depths (1 at the surface) and its integral over z, metres, from depth `first` on. */
function decays(
  z: Float64Array,
  { k, depth }: Wave,
  { first, decay, sums }: { first: number; decay: Float64Array; sums: Float64Array },
): void {
  if (depth === undefined || k * depth > 20) {
    for (let j = first; j < z.length; j++) {
      decay[j] = Math.exp(k * z[j]!);
      sums[j] = decay[j]! / k;
    }
    return;
  }
  // cosh k(z + h) and sinh k(z + h) over cosh kh, by e^{kz} and its inverse.
  const [up, down] = [1 / (1 + Math.exp(-2 * k * depth)), 1 / (1 + Math.exp(2 * k * depth))];
  for (let j = first; j < z.length; j++) {
    const e = Math.exp(k * z[j]!);
    decay[j] = up * e + down / e;
    sums[j] = (up * e - down / e) / k;
  }
}
