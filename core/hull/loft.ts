import type { LoftLines, SectionPoint, Station } from './hull.ts';

/**
 * A line whose second difference jumps by more than this factor from one station to the next is a knuckle (a stem
 * rising from a straight keel), not a curve: a cubic through it would swing below the keel. Fair lines stay under 2.
 */
const KNUCKLE_JUMP = 4;

/** Steepest end slope of a monotone cubic, in units of the chord's slope (Fritsch and Carlson 1980). */
const MONOTONE_LIMIT = 3;

/**
 * An end is blunt when the line leaves it about like a square root (an ellipsoid; exponents within these): no cubic follows
 * that. A wedge-shaped end has exponent 1 and keeps the cubic, as does an end of too few stations to tell.
 */
const BLUNT_POWER = { least: 0.4, most: 0.6 } as const;

/**
 * Fairs lines fore and aft through sections of equal point counts, in order of x. Metres; see `LoftLines`. Parabolic lines
 * are followed exactly, others to the fourth power of the spacing.
 */
export function loftLines(stations: readonly Station[], sections: readonly SectionPoint[][]): LoftLines {
  const count = stations.length;
  const points = sections[0]!.length;
  const x = Float64Array.from(stations, (s) => s.x);
  const y = Float64Array.from(sections.flat(), (p) => p[0]);
  const z = Float64Array.from(sections.flat(), (p) => p[1]);
  const slopeY = new Float64Array(count * points);
  const slopeZ = new Float64Array(count * points);
  const aftPower = new Float64Array(2 * points);
  const forePower = new Float64Array(2 * points);
  for (let j = 0; j < points; j++) {
    fairLine({ x, value: y, slope: slopeY, points, line: j, aftPower, forePower, at: j });
    fairLine({ x, value: z, slope: slopeZ, points, line: j, aftPower, forePower, at: points + j });
  }
  return { count, points, x, y, z, slopeY, slopeZ, aftPower, forePower };
}

/** One line fore and aft, as one coordinate of it is interpolated. */
interface Line {
  readonly x: Float64Array;
  readonly value: Float64Array;
  readonly slope: Float64Array;
  /** Points of a section: the stride from one station to the next. */
  readonly points: number;
  /** Index of the point within its section. */
  readonly line: number;
  readonly aftPower: Float64Array;
  readonly forePower: Float64Array;
  /** Index of this line's exponents. */
  readonly at: number;
}

/**
 * Slopes of one line at every station: of the parabola through the station and its neighbours (fourth order for the
 * volume), held monotone at a knuckle, and replaced by a power law at a blunt end.
 */
function fairLine(line: Line): void {
  const { x, value, slope, points, line: j } = line;
  const last = x.length - 1;
  const chord = (i: number) => (value[(i + 1) * points + j]! - value[i * points + j]!) / (x[i + 1]! - x[i]!);
  const jump = (i: number) => Math.abs(chord(i) - chord(i - 1));
  const isKnuckle = (i: number) =>
    jump(i) > KNUCKLE_JUMP * Math.min(jump(Math.max(1, i - 1)), jump(Math.min(last - 1, i + 1)));
  for (let i = 1; i < last; i++) {
    const ahead = x[i + 1]! - x[i]!;
    const behind = x[i]! - x[i - 1]!;
    const parabola = (behind * chord(i) + ahead * chord(i - 1)) / (ahead + behind);
    slope[i * points + j] = isKnuckle(i) ? monotone(parabola, chord(i - 1), chord(i)) : parabola;
  }
  slope[j] = endSlope(chord(0), slope[points + j]!, isKnuckle(1));
  slope[last * points + j] = endSlope(chord(last - 1), slope[(last - 1) * points + j]!, isKnuckle(last - 1));
  bluntEnd(line, [0, 1, 2], line.aftPower);
  bluntEnd(line, [last, last - 1, last - 2], line.forePower);
}

/** The slope cut down to what keeps the cubic from overshooting; 0 at a peak. */
function monotone(slope: number, before: number, after: number): number {
  if (before * after <= 0) return 0;
  const most = MONOTONE_LIMIT * Math.min(Math.abs(before), Math.abs(after));
  return Math.sign(before) * Math.min(most, Math.abs(slope));
}

/** Slope at an end so that the last stretch is a parabola; beside a knuckle, held to what keeps it monotone. */
function endSlope(chord: number, inner: number, knuckle: boolean): number {
  const parabola = 2 * chord - inner;
  return knuckle ? monotone(parabola, chord, chord) : parabola;
}

/** Finds a blunt end by how fast the line leaves it, and gives the station next to it the slope of the same power. */
function bluntEnd(line: Line, stations: readonly [number, number, number], power: Float64Array): void {
  const [end, next, third] = stations;
  const { x, value, slope, points, line: j } = line;
  const rise = (i: number) => value[i * points + j]! - value[end * points + j]!;
  const ratio = rise(third) / rise(next);
  if (!(ratio > 1)) return;
  const exponent = Math.log(ratio) / Math.log((x[third]! - x[end]!) / (x[next]! - x[end]!));
  if (exponent < BLUNT_POWER.least || exponent > BLUNT_POWER.most) return;
  power[line.at] = exponent;
  slope[next * points + j] = (exponent * rise(next)) / (x[next]! - x[end]!);
}

/** Where a lofted section is written: points from index `at`, slopes along x from index 0. */
export interface LoftTarget {
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly slopeY: Float64Array;
  readonly slopeZ: Float64Array;
  /** Where the section's first point is written. */
  readonly at: number;
}

/** A place between two stations: a share (0 to 1) of the interval that begins at the station. */
export interface Between {
  /** Index of the station behind. */
  readonly interval: number;
  /** 0 at the station, 1 at the next. */
  readonly share: number;
}

/** Writes the half-section at a place between stations. Metres; y stays ≥ 0. */
export function loftSection(loft: LoftLines, between: Between, into: LoftTarget): void {
  const all = { first: 0, end: loft.points };
  loftPoints(loft, between, { ...into, ...all });
  loftSlopes(loft, between, { ...into, ...all });
}

/** Points of a section from `first` up to but not `end`, of those that are written from index `at` on. */
export interface SomePoints extends Pick<LoftTarget, 'y' | 'z' | 'at'> {
  /** Index of the first point, 0 at the keel. */
  readonly first: number;
  /** Index after the last one. */
  readonly end: number;
}

/** Writes some points of the half-section at a place between stations. Metres; y stays ≥ 0. */
export function loftPoints(loft: LoftLines, { interval: i, share: u }: Between, into: SomePoints): void {
  const { points, x } = loft;
  const { y, z, at, first, end } = into;
  const h = x[i + 1]! - x[i]!;
  const a = i * points;
  const b = a + points;
  const v = 1 - u;
  // Hermite's basis: f for values, g for slopes.
  const f0 = v * v * (1 + 2 * u);
  const f1 = u * u * (3 - 2 * u);
  const g0 = h * u * v * v;
  const g1 = -h * u * u * v;
  for (let j = first; j < end; j++) {
    const across =
      f0 * loft.y[a + j]! + f1 * loft.y[b + j]! + g0 * loft.slopeY[a + j]! + g1 * loft.slopeY[b + j]!;
    y[at + j] = Math.max(0, across);
    z[at + j] =
      f0 * loft.z[a + j]! + f1 * loft.z[b + j]! + g0 * loft.slopeZ[a + j]! + g1 * loft.slopeZ[b + j]!;
  }
  if (i === 0) bluntPoints(loft, bluntAt(loft, 'aft', u), into);
  if (i === loft.count - 2) bluntPoints(loft, bluntAt(loft, 'fore', v), into);
}

/** Points whose slopes along x are written from index 0 on. */
export interface SomeSlopes extends Pick<LoftTarget, 'slopeY' | 'slopeZ'> {
  /** Index of the first point, 0 at the keel. */
  readonly first: number;
  /** Index after the last one. */
  readonly end: number;
}

/** Writes the slopes along x of those points. */
export function loftSlopes(loft: LoftLines, { interval: i, share: u }: Between, into: SomeSlopes): void {
  const { points, x } = loft;
  const { slopeY, slopeZ, first, end } = into;
  const a = i * points;
  const b = a + points;
  const v = 1 - u;
  // The derivatives along x of Hermite's basis: d for values, e for slopes.
  const d = (6 * u * v) / (x[i + 1]! - x[i]!);
  const e0 = v * (1 - 3 * u);
  const e1 = u * (3 * u - 2);
  for (let j = first; j < end; j++) {
    slopeY[j] = d * (loft.y[b + j]! - loft.y[a + j]!) + e0 * loft.slopeY[a + j]! + e1 * loft.slopeY[b + j]!;
    slopeZ[j] = d * (loft.z[b + j]! - loft.z[a + j]!) + e0 * loft.slopeZ[a + j]! + e1 * loft.slopeZ[b + j]!;
  }
  if (i === 0) bluntSlopes(loft, bluntAt(loft, 'aft', u), into);
  if (i === loft.count - 2) bluntSlopes(loft, bluntAt(loft, 'fore', v), into);
}

/** An interval at a blunt end, and a place in it. */
interface BluntEnd {
  readonly power: Float64Array;
  /** Index of the end's station. */
  readonly end: number;
  /** Index of the station beside it. */
  readonly next: number;
  /** Distance from the end as a share of the interval. */
  readonly share: number;
  /** x of the next station less x of the end. */
  readonly reach: number;
}

/** An end of a boat, as far from it as a share of its interval. */
function bluntAt(
  { count, x, aftPower, forePower }: LoftLines,
  which: 'aft' | 'fore',
  share: number,
): BluntEnd {
  const end = which === 'aft' ? 0 : count - 1;
  const next = which === 'aft' ? 1 : count - 2;
  return { power: which === 'aft' ? aftPower : forePower, end, next, share, reach: x[next]! - x[end]! };
}

/** Writes over a lofted section those of its points that follow a power law to the end. */
function bluntPoints(loft: LoftLines, { power, end, next, share }: BluntEnd, into: SomePoints): void {
  const { points } = loft;
  for (let j = into.first; j < into.end; j++) {
    const py = power[j]!;
    const pz = power[points + j]!;
    if (py > 0) {
      const y = loft.y[end * points + j]!;
      into.y[into.at + j] = y + (loft.y[next * points + j]! - y) * share ** py;
    }
    if (pz > 0) {
      const z = loft.z[end * points + j]!;
      into.z[into.at + j] = z + (loft.z[next * points + j]! - z) * share ** pz;
    }
  }
}

/** Nearest to a blunt end that its slope is taken, as a share of the interval: at the end itself it is infinite. */
const LEAST_SHARE = 1e-3;

/** And those of their slopes. */
function bluntSlopes(loft: LoftLines, { power, end, next, share, reach }: BluntEnd, into: SomeSlopes): void {
  const { points } = loft;
  const near = Math.max(share, LEAST_SHARE);
  for (let j = into.first; j < into.end; j++) {
    const py = power[j]!;
    const pz = power[points + j]!;
    const riseY = loft.y[next * points + j]! - loft.y[end * points + j]!;
    const riseZ = loft.z[next * points + j]! - loft.z[end * points + j]!;
    if (py > 0) into.slopeY[j] = (riseY * py * near ** (py - 1)) / reach;
    if (pz > 0) into.slopeZ[j] = (riseZ * pz * near ** (pz - 1)) / reach;
  }
}
