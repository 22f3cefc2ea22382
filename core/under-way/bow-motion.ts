import type { Afloat } from '../hydrostatics/afloat.ts';
import { shellPitchInertia } from '../stroke/pitch-inertia.ts';
import type { StrokeCrew } from '../stroke/stroke-cycle.ts';
import { GRAVITY } from '../units/gravity.ts';
import { type ForceAmplitudes, type MovingBoat, motionAt, naturalPeriods, restAt } from './boat-motion.ts';
import type { Complex } from './exponential-integral.ts';
import { harmonicsOf, seriesOf } from './harmonics.ts';
import { type StripSums, stripSums, stripsOf } from './strips.ts';
import { type Instant, type StrokeShape, strokeInstants, USUAL_STROKE } from './stroke-forcing.ts';

/** Instants of one stroke, and harmonics of its rate that are followed. */
export const INSTANTS_PER_STROKE = 64;
/** Harmonics of the stroke's rate above this one are left out. */
const HIGHEST = 5;

/** Added mass in surge over the boat's mass: our estimate for a slender hull. */
const SURGE_ADDED = 0.04;
/** Height of the drag's line under the water plane over the draft: our estimate. */
const DRAG_DEPTH = 0.5;

/**
 * One standard deviation of what nobody has measured, our estimates: the blade's share of the stroke's time, lift over forward
 * force, and the rest as shares of themselves.
 */
export const BOW_DOUBTS = {
  driveShare: 0.07,
  lift: 0.15,
  strength: 0.25,
  added: 0.15,
  damping: 0.4,
} as const;

/** What is changed one at a time to see how far the answer may be off. */
const DOUBTS: readonly {
  readonly shape?: Partial<StrokeShape>;
  readonly added?: number;
  readonly damping?: number;
}[] = [
  { shape: { driveShare: USUAL_STROKE.driveShare + BOW_DOUBTS.driveShare } },
  { shape: { lift: USUAL_STROKE.lift + BOW_DOUBTS.lift } },
  { shape: { strength: USUAL_STROKE.strength + BOW_DOUBTS.strength } },
  { added: 1 + BOW_DOUBTS.added },
  { damping: 1 + BOW_DOUBTS.damping },
];

/** The bow through one stroke, metres over where it lies at rest with the crew ready; from the catch on, even instants. */
export interface BowMotion {
  /** It is a model's, never measured. */
  readonly kind: 'estimate';
  /** Seconds. */
  readonly strokePeriod: number;
  /** Seconds, with one standard deviation: how fast the boat would bob by itself, by its stiffness and the water it takes along. */
  readonly naturalPeriods: Readonly<
    Record<'heave' | 'pitch', { readonly value: number; readonly sd: number }>
  >;
  /** Its height at each instant. */
  readonly bow: readonly number[];
  /** One standard deviation of each. */
  readonly sd: readonly number[];
  /** From its lowest to its highest. */
  readonly swing: { readonly value: number; readonly sd: number };
  /** The same as if the boat came to rest at every instant. */
  readonly stillSwing: number;
  /** Share of the time until the exit. */
  readonly exitAt: number;
}

/**
 * The conditions: strokes per minute, speed in m/s, and the increase of drag per m/s (N·s/m, usually twice drag over speed).
 */
export interface BowQuestion {
  /** Strokes in a minute. */
  readonly ratePerMin: number;
  /** Through the water, m/s. */
  readonly speed: number;
  /** N·s/m. */
  readonly surgeDamping: number;
}

/**
 * The bow's height through a stroke: blade force and drag, the body's moving masses, the boat's surge, heave and pitch with the
 * water's frequency-dependent answer by strip theory. An estimate with its doubt. Null where nobody paddles or the rate is 0.
 */
export function bowMotion(crew: StrokeCrew, afloat: Afloat, question: BowQuestion): BowMotion | null {
  if (!(question.ratePerMin > 0) || crew.seats.every((seat) => seat === null)) return null;
  const omega = (2 * Math.PI * question.ratePerMin) / 60;
  const { hull, density } = crew.boat;
  const strips = stripsOf(hull, afloat, afloat);
  const sums = new Map<number, StripSums>();
  const water = (at: number) => {
    const known = sums.get(at) ?? stripSums(strips, at, density);
    sums.set(at, known);
    return known;
  };
  const usual = strokeInstants(crew, afloat, { count: INSTANTS_PER_STROKE, shape: USUAL_STROKE });
  const boat = movingBoat(crew, { afloat, question, usual, water });
  const foremost = hull.foreX;
  const solve = (instants: readonly Instant[], moving: MovingBoat) =>
    bowOf(moving, { instants, omega, foremost, dragZ: -DRAG_DEPTH * afloat.draft });
  const value = solve(usual, boat);
  const others = DOUBTS.map(({ shape, added = 1, damping = 1 }) =>
    solve(
      shape
        ? strokeInstants(crew, afloat, { count: INSTANTS_PER_STROKE, shape: { ...USUAL_STROKE, ...shape } })
        : usual,
      added === 1 && damping === 1 ? boat : { ...boat, water: (at) => scaled(water(at), added, damping) },
    ),
  );
  const swingOf = (series: readonly number[]) => Math.max(...series) - Math.min(...series);
  const swing = swingOf(value.moving);
  return {
    kind: 'estimate',
    strokePeriod: 60 / question.ratePerMin,
    naturalPeriods: doubtedPeriods(boat),
    bow: value.moving,
    sd: value.moving.map((at, i) => Math.hypot(...others.map(({ moving }) => moving[i]! - at))),
    swing: { value: swing, sd: Math.hypot(...others.map(({ moving }) => swingOf(moving) - swing)) },
    stillSwing: swingOf(value.still),
    exitAt: USUAL_STROKE.driveShare,
  };
}

/** Natural periods with what the doubt of the water's added mass makes of them. */
function doubtedPeriods(boat: MovingBoat): BowMotion['naturalPeriods'] {
  const { heave, pitch } = naturalPeriods(boat);
  const others = DOUBTS.flatMap(({ added }) =>
    added ? [naturalPeriods({ ...boat, water: (at) => scaled(boat.water(at), added, 1) })] : [],
  );
  return {
    heave: { value: heave, sd: Math.hypot(...others.map((other) => other.heave - heave)) },
    pitch: { value: pitch, sd: Math.hypot(...others.map((other) => other.pitch - pitch)) },
  };
}

/** The water's answer with its two parts off by factors: how doubts of strip theory are tried. */
const scaled = ({ added, damping }: StripSums, byAdded: number, byDamping: number): StripSums => ({
  added: [added[0] * byAdded, added[1] * byAdded, added[2] * byAdded],
  damping: [damping[0] * byDamping, damping[1] * byDamping, damping[2] * byDamping],
});

/** All that does not change through a stroke. */
function movingBoat(
  crew: StrokeCrew,
  {
    afloat,
    question,
    usual,
    water,
  }: { afloat: Afloat; question: BowQuestion; usual: readonly Instant[]; water: MovingBoat['water'] },
): MovingBoat {
  const { hull, density, boat } = crew.boat;
  const { waterplane, volume, longitudinalGm, massKg } = afloat;
  const perMetre = density * GRAVITY * waterplane.area;
  const places = usual[0]!.places;
  const own = shellPitchInertia(hull, boat.massKg);
  return {
    massKg,
    momentX: usual[0]!.momentX,
    momentZ: usual[0]!.momentZ,
    inertia: places.reduce((sum, { mass, x, z }) => sum + mass * (x ** 2 + z ** 2), own),
    stiffness: {
      heave: perMetre,
      coupled: perMetre * waterplane.lcf,
      pitch: density * GRAVITY * volume * longitudinalGm + perMetre * waterplane.lcf ** 2,
    },
    surgeAdded: SURGE_ADDED * massKg,
    surgeDamping: question.surgeDamping,
    speed: question.speed,
    water,
  };
}

/** A stroke that is to be answered: what pushes, how fast, and where the bow's highest point lies. */
interface Driven {
  readonly instants: readonly Instant[];
  /** Circular frequency of the stroke, radians per second. */
  readonly omega: number;
  /** x of the bow, metres. */
  readonly foremost: number;
  /** Height at which drag acts, metres; negative under water. */
  readonly dragZ: number;
}

/** The bow's heights with the boat in motion, and as if it came to rest at every instant. Metres about the mean place of the crew. */
function bowOf(boat: MovingBoat, { instants, omega, foremost, dragZ }: Driven) {
  const count = instants.length;
  const forward = instants.map((each) => each.forward);
  const drag = forward.reduce((sum, each) => sum + each, 0) / count;
  const restX = boat.momentX;
  // What weight and blade ask for without any motion: moved weight, blade couple about the drag's line.
  const weightMoment = instants.map((each) => -GRAVITY * (each.momentX - restX));
  const couple = instants.map((each) => each.bladeMoment + dragZ * drag);
  const steady = instants.map((each, i) => ({ heave: each.up, pitch: weightMoment[i]! + couple[i]! }));
  const inertial = inertialForces(instants, omega);
  const surge = harmonicsOf(
    forward.map((each, i) => each - drag + inertial.surge[i]!),
    HIGHEST,
  );
  const heave = harmonicsOf(
    instants.map((each, i) => each.up + inertial.heave[i]!),
    HIGHEST,
  );
  const pitch = harmonicsOf(
    steady.map((each, i) => each.pitch + inertial.pitch[i]!),
    HIGHEST,
  );
  const mean = restAt(boat, { heave: heave[0]!.re, pitch: pitch[0]!.re });
  const bow: Complex[] = [{ re: mean.heave + foremost * mean.pitch, im: 0 }];
  for (let k = 1; k <= HIGHEST; k++) {
    const force: ForceAmplitudes = { surge: surge[k]!, heave: heave[k]!, pitch: pitch[k]! };
    const [, up, turn] = motionAt(boat, k * omega, force);
    bow.push({ re: up!.re + foremost * turn!.re, im: up!.im + foremost * turn!.im });
  }
  const still = steady.map((each) => {
    const rest = restAt(boat, each);
    return rest.heave + foremost * rest.pitch;
  });
  return { moving: seriesOf(bow, count), still };
}

/** Forces by which moving masses push the boat: −Σ m·r̈, and the moment −d/dt Σ m·(x·ż − z·ẋ). Newtons and N·m. */
function inertialForces(instants: readonly Instant[], omega: number) {
  const count = instants.length;
  const step = (2 * Math.PI) / omega / count;
  const at = (i: number) => instants[(i + count) % count]!;
  const second = (read: (instant: Instant) => number) =>
    instants.map((_, i) => -(read(at(i + 1)) - 2 * read(at(i)) + read(at(i - 1))) / step ** 2);
  const spin = instants.map((_, i) => {
    const [before, here, after] = [at(i - 1).places, at(i).places, at(i + 1).places];
    return here.reduce((sum, { mass, x, z }, j) => {
      const [up, forward] = [after[j]!.z - before[j]!.z, after[j]!.x - before[j]!.x];
      return sum + (mass * (x * up - z * forward)) / (2 * step);
    }, 0);
  });
  const pitch = spin.map((_, i) => -(spin[(i + 1) % count]! - spin[(i - 1 + count) % count]!) / (2 * step));
  return { surge: second((i) => i.momentX), heave: second((i) => i.momentZ), pitch };
}
