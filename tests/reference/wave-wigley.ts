/**
 * Michell's integral of a Wigley hull by another way: the inner integrals in closed form, the outer one by Gauss–Legendre
 * panels in θ. Wigley: y = (B/2)(1 − (2x/L)²)(1 − (z/T)²), −T ≤ z ≤ 0. Finite depth by Simpson's rule over z.
 */
import { GRAVITY } from '../../core/units/gravity.ts';

export interface Wigley {
  readonly L: number;
  readonly B: number;
  readonly T: number;
}

/** ∫₋T⁰ (1 − (z/T)²) e^{kz} dz. */
function depthIntegral(k: number, T: number): number {
  const a = k * T;
  if (a < 1e-3) return T * (2 / 3 - a / 4 + a ** 2 / 15);
  return T * (1 / a - 2 / a ** 3 + Math.exp(-a) * (2 / a ** 2 + 2 / a ** 3));
}

/** |∫ (dY/dx) e^{iωx} dx| for Y = (B/2)(1 − (2x/L)²): odd slope, so only the sine counts. */
function alongIntegral(omega: number, { L, B }: Wigley): number {
  const p = (omega * L) / 2;
  // ∫ −(4B/L²) x sin ωx dx over ±L/2 = −(8B/(L²ω²)) (sin p − p cos p).
  return (-(8 * B) / (L * omega) ** 2) * (Math.sin(p) - p * Math.cos(p));
}

/** Five-point Gauss–Legendre on `panels` panels. */
function gauss(f: (t: number) => number, [from, to]: readonly [number, number], panels: number): number {
  const nodes = [0, 0.5384693101056831, 0.906179845938664];
  const weights = [0.5688888888888889, 0.4786286704993665, 0.2369268850561891];
  const h = (to - from) / panels;
  let sum = 0;
  for (let i = 0; i < panels; i++) {
    const mid = from + (i + 0.5) * h;
    for (let j = 0; j < 3; j++) {
      const s = (h / 2) * nodes[j]!;
      sum += weights[j]! * (j === 0 ? f(mid) : f(mid - s) + f(mid + s));
    }
  }
  return (sum * h) / 2;
}

/** Newtons, deep water. */
export function wigleyWaveResistance(
  hull: Wigley,
  { speed, density }: { speed: number; density: number },
): number {
  const k0 = GRAVITY / speed ** 2;
  // θ up to where sec θ is 200: the integrand falls like sec⁻³ there.
  const integral = gauss(
    (theta) => {
      const secant = 1 / Math.cos(theta);
      const h = alongIntegral(k0 * secant, hull) * depthIntegral(k0 * secant ** 2, hull.T);
      return h ** 2 * secant ** 3;
    },
    [0, Math.acos(1 / 200)],
    4000,
  );
  return ((4 * density * k0 ** 2 * speed ** 2) / Math.PI) * integral;
}

/** cosh k(z + h) / cosh kh for z ≤ 0, without overflow. */
const shallowDecay = (z: number, k: number, h: number) =>
  (Math.exp(k * z) + Math.exp(-k * (z + 2 * h))) / (1 + Math.exp(-2 * k * h));

/** k with k = deep·tanh kh by bisection: slow and sure. */
function bisected(deep: number, h: number): number {
  let [low, high] = [1e-12, deep];
  for (let i = 0; i < 200; i++) {
    const mid = (low + high) / 2;
    if (mid < deep * Math.tanh(mid * h)) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}

/**
 * Newtons in water of depth h: the same integrand by other quadratures, with the dispersion solved by bisection.
 */
export function wigleyShallowResistance(
  hull: Wigley,
  { speed, density, depth }: { speed: number; density: number; depth: number },
): number {
  const k0 = GRAVITY / speed ** 2;
  const start = k0 * depth >= 1 ? 0 : Math.acos(Math.sqrt(k0 * depth));
  const integral = gauss(
    (theta) => {
      const k = bisected(k0 / Math.cos(theta) ** 2, depth);
      const [kh, cos] = [k * depth, Math.cos(theta)];
      const vertical = gauss((z) => (1 - (z / hull.T) ** 2) * shallowDecay(z, k, depth), [-hull.T, 0], 8);
      const h = alongIntegral(k * cos, hull) * vertical;
      const group = kh > 300 ? 0 : (2 * kh) / Math.sinh(2 * kh);
      return (h ** 2 * k ** 2 * cos) / (Math.tanh(kh) * (1 - group));
    },
    [start + 1e-9, Math.acos(1 / 100)],
    1500,
  );
  return ((4 * density * speed ** 2) / Math.PI) * integral;
}
