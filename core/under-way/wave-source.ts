import { type Complex, scaledExponentialIntegral } from './exponential-integral.ts';

/** A straight piece of a contour: its middle, length, and unit normal into the water. Metres. */
export interface SourcePanel {
  /** Middle of a straight piece of the section, metres; z is negative under water. */
  readonly y: number;
  /** Negative under water. */
  readonly z: number;
  /** Metres. */
  readonly length: number;
  /** Outward is positive. */
  readonly normalY: number;
  /** Up is positive. */
  readonly normalZ: number;
}

/** Potential of a panel of unit strength at a point, and its slopes across and up. */
export interface Influence {
  /** Potential, and its slopes across and up. */
  readonly phi: Complex;
  readonly y: Complex;
  readonly z: Complex;
}

/**
 * A panel of pulsing sources under a free surface, seen from the middle of another; `side` −1 takes its mirror image across
 * the centreline. Wave number k per metre, time factor e^{iωt}, waves run outward. With ∇²G = δ:
 *
 *   G = (1/2π)(ln r − ln r₁) − (1/π) Re P(a) + i e^{kY} cos kX,  a = −Y + iX,  P(a) = e^{−ka}(E₁(−ka) − iπ sgn X),
 *
 * X and Y the distances to the image in the surface. Sources: Frank (1967); Wehausen and Laitone (1960), 13.31.
 */
export function waveSource(
  at: SourcePanel,
  source: SourcePanel,
  { k, side }: { k: number; side: 1 | -1 },
): Influence {
  const placed = side === 1 ? source : { ...source, y: -source.y, normalY: -source.normalY };
  const direct = logPanel(at, placed);
  const image = logPanel(at, { ...placed, z: -placed.z, normalZ: -placed.normalZ });
  const wave = wavePart(at.y - placed.y, at.z + placed.z, k);
  const { length } = source;
  return {
    phi: { re: direct.phi - image.phi + wave.phi.re * length, im: wave.phi.im * length },
    y: { re: direct.y - image.y + wave.y.re * length, im: wave.y.im * length },
    z: { re: direct.z - image.z + wave.z.re * length, im: wave.z.im * length },
  };
}

/** The part that makes waves, at its panel's middle. */
function wavePart(X: number, Y: number, k: number): Influence {
  const a = { re: -Y, im: X };
  const outward = X > 0 ? 1 : X < 0 ? -1 : 0;
  const scaled = scaledExponentialIntegral({ re: -k * a.re, im: -k * a.im - (X === 0 ? 1e-300 : 0) });
  const decay = Math.exp(k * Y);
  const [cos, sin] = [decay * Math.cos(k * X), decay * Math.sin(k * X)];
  // e^{−ka} = cos − i sin; times −iπ·outward. Straight under its image E₁ lies on its cut: P is real there, as it is from both sides.
  const P = {
    re: scaled.re - Math.PI * outward * sin,
    im: outward === 0 ? 0 : scaled.im - Math.PI * outward * cos,
  };
  // P′(a) = −1/a − k·P; a falls with z and grows by i with y.
  const square = a.re ** 2 + a.im ** 2;
  const slope = { re: -a.re / square - k * P.re, im: a.im / square - k * P.im };
  return {
    phi: { re: -P.re / Math.PI, im: cos },
    y: { re: slope.im / Math.PI, im: -k * sin },
    z: { re: slope.re / Math.PI, im: k * cos },
  };
}

/** (1/2π)·∫ ln r along a panel and its slopes; on the panel itself the slope along the normal is that on the water's side, ½. */
function logPanel(at: SourcePanel, { y, z, length, normalY, normalZ }: SourcePanel) {
  // The tangent lies a quarter turn from the normal: (tangentY, tangentZ) = (−normalZ, normalY).
  const [dy, dz] = [at.y - y, at.z - z];
  const s = -dy * normalZ + dz * normalY;
  const n = dy * normalY + dz * normalZ;
  const [left, right] = [s + length / 2, s - length / 2];
  const [farLeft, farRight] = [left ** 2 + n ** 2, right ** 2 + n ** 2];
  const onIt = Math.abs(n) < 1e-12 * length && Math.abs(s) < length / 2;
  const turn = onIt ? Math.PI : n === 0 ? 0 : Math.atan(left / n) - Math.atan(right / n);
  const phi =
    (0.5 * left * Math.log(farLeft) - 0.5 * right * Math.log(farRight) - length + n * (onIt ? 0 : turn)) /
    (2 * Math.PI);
  const slopeS = (0.5 * Math.log(farLeft / farRight)) / (2 * Math.PI);
  const slopeN = turn / (2 * Math.PI);
  return {
    phi,
    y: -slopeS * normalZ + slopeN * normalY,
    z: slopeS * normalY + slopeN * normalZ,
  };
}
