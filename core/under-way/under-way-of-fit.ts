import type { Fit } from '../document/fit-schema.ts';
import { boatState, massesAboard } from '../evaluation/boat-state.ts';
import type { Report } from '../evaluation/report.ts';
import type { Hull } from '../hull/hull.ts';
import type { Afloat, PointMass } from '../hydrostatics/afloat.ts';
import { floatAtRest } from '../hydrostatics/float-at-rest.ts';
import { SALINITY } from '../hydrostatics/water-density.ts';
import type { StrokeCrew } from '../stroke/stroke-cycle.ts';
import { strokeOfFit } from '../stroke/stroke-of-fit.ts';
import { GRAVITY } from '../units/gravity.ts';
import { type BowMotion, bowMotion } from './bow-motion.ts';
import { speedFor } from './equal-power.ts';
import { kinematicViscosity } from './friction.ts';
import { AIR_DRAG_AREA, FORM_FACTOR, type Resistance, towed, WAVE_DOUBT } from './resistance.ts';

/** The conditions: a speed in m/s, and the water's depth in metres (null: deep). */
export interface UnderWayQuestion {
  /** Metres in a second, in still water. */
  readonly speed: number;
  /** Depth of the water, metres; null for deep. */
  readonly depth: number | null;
  /** Strokes in a minute. */
  readonly ratePerMin: number;
  /** Another state of the fit to compare with. */
  readonly against?: { readonly fit: Fit; readonly report: Report } | null;
}

/** What is changed to see what it costs. `other`: the state that was given to compare with. */
export type CostOf = 'bowUp' | 'bowDown' | 'mass' | 'heel' | 'shallow' | 'other';

/** Usual speed over 1000 m of a boat with one to four seats, m/s: our estimate (rough). */
const USUAL_SPEEDS = [4.2, 4.6, 4.9, 5.2] as const;

/** Usual racing speed of a boat with so many seats, m/s. */
export const usualSpeed = (seats: number): number =>
  USUAL_SPEEDS[Math.min(seats, USUAL_SPEEDS.length) - 1] ?? USUAL_SPEEDS[0];

/** What one change costs against this setting at the same power. Newtons and seconds; positive is slower. */
export interface Cost {
  /** What is changed. */
  readonly of: CostOf;
  /** What the change adds to the resistance at the speed asked for. */
  readonly newtons: number;
  /** Standard deviation of `newtons`: what both share cancels. */
  readonly sd: number;
  /** `newtons` over the whole resistance. */
  readonly share: number;
  /** Seconds over each of `COURSES`. */
  readonly seconds: readonly number[];
  /** The same for one standard deviation of `newtons`. */
  readonly secondsSd: readonly number[];
}

/** What the formulas of resistance take besides the hull and speed. */
export interface Given {
  /** kg/m³. */
  readonly waterDensity: number;
  /** Speed × length of the waterline / kinematic viscosity. */
  readonly reynolds: number;
  /** Drag coefficient × frontal area, m². */
  readonly airDragArea: number;
}

/** What the water says of a setting. */
export interface UnderWay {
  /** The speed asked for. */
  readonly speed: number;
  /** Resistance there. */
  readonly at: Resistance;
  /** What the formulas were given there, so that a reader can follow them. */
  readonly given: Given;
  /** Resistance over a usual range of speeds. */
  readonly curve: readonly (Resistance & { readonly speed: number })[];
  /** What small changes cost. */
  readonly costs: readonly Cost[];
  /** The bow through one stroke; null where nobody paddles. */
  readonly bow: BowMotion | null;
}

/** Courses of the sprint, metres. */
export const COURSES = [200, 500, 1000] as const;

/** Sizes of the changes that are always told: bow over stern in metres, kilograms, radians of heel, metres of water. */
export const CHANGES = { bow: 0.035, massKg: 10, heel: Math.PI / 18, depthM: 2 } as const;

/** Trim that changes resistance by less than this share is reported as a matter of handling: our estimate. */
export const HANDLING_SHARE = 0.015;

/** Whether trim is a matter of handling here: neither `CHANGES.bow` up nor down changes resistance by a share worth telling. */
export function trimIsForHandling({ costs }: Pick<UnderWay, 'costs'>): boolean {
  return costs.every(
    ({ of, share }) => (of !== 'bowUp' && of !== 'bowDown') || Math.abs(share) < HANDLING_SHARE,
  );
}

/** Speeds of the curve, m/s. */
const CURVE = { from: 1.5, to: 6, step: 0.25 };

/** How far a difference of the wave integral may be off, as a share of it: our estimate, twice that of the integral itself. */
export const WAVE_DIFFERENCE_DOUBT = 2 * WAVE_DOUBT;

/** Drag area of one more paddler in the shelter of the first, m²: our estimate. */
const SHELTERED_AREA = 0.2;

/** What the water says of a fit; null where the boat does not float. Still air, still water, constant speed. */
export function underWayOfFit(fit: Fit, report: Report, question: UnderWayQuestion): UnderWay | null {
  const boat = boatAtRest(fit, report, question.depth);
  if (!boat) return null;
  const { speed } = question;
  const here = towedAt(boat, boat.afloat);
  const at = here(speed);
  const watts = at.total * speed;
  const cost = (of: CostOf, changed: ((speed: number) => Resistance) | null): Cost[] =>
    changed ? [costOfChange({ of, at, changed, speed, watts })] : [];
  const floated = (masses: readonly PointMass[], heel = boat.heel) => {
    const rest = floatAtRest(boat.hull, { masses, waterDensity: boat.density, heel, start: boat.afloat });
    return rest.kind === 'afloat' ? towedAt(boat, rest) : null;
  };
  const other = question.against && boatAtRest(question.against.fit, question.against.report, question.depth);
  return {
    speed,
    at,
    given: {
      waterDensity: boat.density,
      reynolds: (speed * boat.afloat.waterplane.length) / boat.viscosity,
      airDragArea: boat.airDragArea,
    },
    curve: speeds().map((each) => ({ speed: each, ...here(each) })),
    costs: [
      ...(other ? cost('other', towedAt(other, other.afloat)) : []),
      ...cost('bowUp', floated(shifted(boat, CHANGES.bow))),
      ...cost('bowDown', floated(shifted(boat, -CHANGES.bow))),
      ...cost('mass', floated([...boat.masses, { mass: CHANGES.massKg, ...boat.afloat.centreOfMass }])),
      ...cost('heel', floated(boat.masses, boat.heel + CHANGES.heel)),
      ...cost('shallow', towedAt({ ...boat, depth: CHANGES.depthM }, boat.afloat)),
    ],
    // Drag grows about with the square of speed, so by twice drag over speed for each m/s.
    bow: bowMotion(boat.crew, boat.afloat, {
      ratePerMin: question.ratePerMin,
      speed,
      surgeDamping: (2 * at.total) / speed,
    }),
  };
}

/** Resistance by speed (m/s) of a fit at rest with its crew ready, over water of a depth in metres (null: deep); null where it does not float. */
export function towedFit(
  fit: Fit,
  report: Report,
  depth: number | null,
): ((speed: number) => Resistance) | null {
  const boat = boatAtRest(fit, report, depth);
  return boat && towedAt(boat, boat.afloat);
}

/** How the boat lies, and in what water. */
interface BoatAtRest {
  readonly crew: StrokeCrew;
  readonly hull: Hull;
  readonly afloat: Afloat;
  /** Everything aboard, the boat itself too. */
  readonly masses: readonly PointMass[];
  /** Of the water, kg/m³. */
  readonly density: number;
  /** Kinematic, of the water, m²/s. */
  readonly viscosity: number;
  /** Radians, starboard down. */
  readonly heel: number;
  /** Drag coefficient × frontal area, m². */
  readonly airDragArea: number;
  /** Of the water, metres; undefined where it is deep. */
  readonly depth: number | undefined;
}

/** Null where the boat does not float. */
function boatAtRest(fit: Fit, report: Report, depth: number | null): BoatAtRest | null {
  const afloat = report.afloat.ready;
  if (afloat.kind !== 'afloat') return null;
  const state = boatState(fit);
  const crew = strokeOfFit(fit, report);
  const { seats } = crew;
  const paddlers = seats.filter((seat) => seat !== null).length;
  return {
    crew,
    hull: state.hull,
    afloat,
    masses: massesAboard(state, seats, 'ready'),
    density: state.density,
    viscosity: kinematicViscosity(fit.water.temperatureC, SALINITY[fit.water.kind]),
    heel: state.heel,
    airDragArea: AIR_DRAG_AREA.value + SHELTERED_AREA * Math.max(0, paddlers - 1),
    depth: depth ?? undefined,
  };
}

/** Resistance at any speed, in the attitude given. */
function towedAt(boat: BoatAtRest, { draft, trim, heel }: Afloat) {
  return towed(boat.hull, {
    draft,
    trim,
    heel,
    waterDensity: boat.density,
    kinematicViscosity: boat.viscosity,
    depth: boat.depth,
    airDragArea: boat.airDragArea,
  });
}

/** Everything aboard moved along so that bow over stern changes by about `bow` metres. */
function shifted({ masses, afloat }: BoatAtRest, bow: number): PointMass[] {
  const moment = afloat.momentPerCentimetreTrim * bow * 100;
  const by = -moment / (afloat.massKg * GRAVITY);
  return masses.map((each) => ({ ...each, x: each.x + by }));
}

/** What a change costs at the power that the unchanged boat takes. */
export function costOfChange({ of, at, changed, speed, watts }: CostQuestion): Cost {
  const then = changed(speed);
  const newtons = then.total - at.total;
  const sd = Math.hypot(
    ((then.friction - at.friction) * FORM_FACTOR.sd) / (1 + FORM_FACTOR.value),
    (then.wave - at.wave) * WAVE_DIFFERENCE_DOUBT,
  );
  const changedSpeed = speedFor(changed, { watts, from: speed });
  const seconds = COURSES.map((course) => course / changedSpeed - course / speed);
  const perNewton = newtons === 0 ? 0 : 1 / newtons;
  const secondsSd = seconds.map((each) => Math.abs(each * perNewton) * sd);
  return { of, newtons, sd, share: newtons / at.total, seconds, secondsSd };
}

/** Resistance now, that of the changed boat by speed, the speed in m/s and the power in watts. */
export interface CostQuestion {
  readonly of: CostOf;
  /** As it is. */
  readonly at: Resistance;
  /** As it would be, at any speed. */
  readonly changed: (speed: number) => Resistance;
  /** m/s. */
  readonly speed: number;
  /** Power that goes into the resistance as it is. */
  readonly watts: number;
}

/** The curve's speeds, evenly spaced, ends included. */
function speeds(): number[] {
  const count = Math.round((CURVE.to - CURVE.from) / CURVE.step) + 1;
  return Array.from({ length: count }, (_, i) => CURVE.from + i * CURVE.step);
}
