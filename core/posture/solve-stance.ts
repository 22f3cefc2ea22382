import type { BodyEstimate } from '../body/body.ts';
import type { Pins, Seat } from '../document/seat-schema.ts';
import { type SeatFrame, toBoatFrame } from '../frame/mirror.ts';
import type { Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { lazyProperty } from '../units/lazy-property.ts';
import { figureTo, type SolverFigure } from './figure.ts';
import { centreOf, placedMasses } from './figure-masses.ts';
import { figureAngles, figurePoints } from './figure-points.ts';
import { type Minimum, minimise } from './minimise.ts';
import { NEUTRAL } from './neutral-posture.ts';
import { stanceObjective, termResiduals } from './objective.ts';
import {
  FIGURE_POINTS,
  type FigureMass,
  type FigurePoint,
  type Phase,
  type ReachShortfall,
  STANCE_UNKNOWNS,
  type Stance,
  type StanceTerm,
} from './stance.ts';
import { type StanceProblem, type Strays, stanceProblem } from './stance-problem.ts';
import { inStanceSpace } from './stance-space.ts';
import { STANCE_TERMS } from './stance-terms.ts';
import { strokePitch } from './stroke-pitch.ts';

/** Missing lengths below this are rounding, metres. */
const SHORTFALL_FLOOR = 1e-6;

/**
 * Solves the kneeling figure of one seat in one phase: the least-squares posture over the fittings. Points come in the boat
 * frame (metres), angles in radians. The answer depends on the input alone. `start` (radians, order of `STANCE_UNKNOWNS`)
 * exists to test that: of 150 000 random stances from random starts none ended more than 0.001° elsewhere. Always finite;
 * `shortfalls` has what cannot be reached. `strays` is one person's own way of kneeling. Without `phase`: ready. For a man of
 * 1.80 m on fittings in the middle of the usual bands: front knee 119°, kneeling knee 92°, trunk 12° forward.
 */
export function solveStance(input: {
  body: BodyEstimate;
  seat: Seat;
  frame: SeatFrame;
  phase?: Phase;
  start?: readonly number[];
  strays?: Strays;
}): Stance {
  const { body, seat, phase = 'ready', strays } = input;
  return solvedStance(stanceProblem(body, seat, { phase, strays }), input);
}

/** The stance of a problem; `start` as for `solveStance`. A `bare` one comes without its masses and forces. */
export function solvedStance(
  problem: StanceProblem,
  input: { frame: SeatFrame; start?: ArrayLike<number> | undefined; bare?: boolean },
): Stance {
  const pins = pinsOf(problem);
  const free = pins.map((pin) => pin === null);
  const start = STANCE_UNKNOWNS.map((name, i) => pins[i] ?? input.start?.[i] ?? NEUTRAL[name].at);
  return inStanceSpace(problem, (space) => {
    const minimum = minimise(stanceObjective(problem, space), { start, free });
    return described({ problem, minimum, figure: figureTo(space.figure, minimum.q, problem) }, input);
  });
}

/**
 * Unknowns that are held, radians; null is free: the coach's pins, and at catch and exit the trunk's pitch, which is the
 * stroke's own. The other pins describe the athlete's own way of kneeling and hold in every phase.
 */
function pinsOf({ seat, phase }: StanceProblem): (number | null)[] {
  const pins = STANCE_UNKNOWNS.map((name) => {
    const pin = seat.pins[`${name}Deg` as keyof Pins];
    return pin === undefined ? null : toRadians(pin);
  });
  if (phase === 'ready') return pins;
  pins[STANCE_UNKNOWNS.indexOf('trunkPitch')] = strokePitch(seat, phase);
  return pins;
}

/**
 * The figure at given unknowns (radians, order of `STANCE_UNKNOWNS`), solved or not: for a stance displaced from its
 * least-squares solution. Boat frame; `masses` and `forcing` are empty.
 */
export function stanceAt(problem: StanceProblem, q: Float64Array, frame: SeatFrame): Stance {
  const minimum = { q, cost: 0, iterations: 0, converged: true };
  return inStanceSpace(problem, (space) =>
    described({ problem, minimum, figure: figureTo(space.figure, q, problem) }, { frame, bare: true }),
  );
}

/** The unknowns that a stance was solved for, radians, order of `STANCE_UNKNOWNS`. */
export function solvedUnknowns({ angles }: Pick<Stance, 'angles'>): Float64Array {
  return Float64Array.from(STANCE_UNKNOWNS, (name) => angles[name]);
}

const withMasses = lazyProperty<'masses', readonly FigureMass[]>('masses');
const withForcing = lazyProperty<'forcing', readonly StanceTerm[]>('forcing');

/** The solved stance in the boat's frame, with everything that follows from it. */
function described(
  { problem, minimum, figure }: { problem: StanceProblem; minimum: Minimum; figure: SolverFigure },
  { frame, bare = false }: { frame: SeatFrame; bare?: boolean },
): Stance {
  const { weighing } = problem;
  const points = figurePoints(problem, figure);
  const inBoat = pointsInBoat(points, frame);
  const stance = {
    phase: problem.phase,
    points: inBoat,
    angles: figureAngles(problem, { figure, points, q: minimum.q }),
    centreOfMass: toBoatFrame(centreOf(figure, weighing), frame),
    totalMassKg: weighing.weights.massKg,
    shortfalls: shortfallsOf(problem, figure),
    iterations: minimum.iterations,
    converged: minimum.converged,
  };
  if (bare) return { ...stance, masses: [], forcing: [] };
  const weighed = withMasses(stance, () => placedMasses(problem.masses, inBoat));
  return withForcing(weighed, () => forcingOf(problem, minimum.q));
}

/** Every point of the figure. */
type Points = Record<FigurePoint, Vec3>;

/** Points from the paddler's frame to the boat's. */
function pointsInBoat(points: Points, frame: SeatFrame): Points {
  // A copy has room for every point at once; a record that grows is moved again and again.
  const out = { ...points };
  for (const name of FIGURE_POINTS) out[name] = toBoatFrame(points[name], frame);
  return out;
}

/** The terms of the objective by their share of the cost, the strongest first; equal shares in the terms' own order. */
function forcingOf(problem: StanceProblem, q: Float64Array): StanceTerm[] {
  const residuals = new Float64Array(STANCE_TERMS.length);
  termResiduals(problem, q, residuals);
  const cost = residuals.reduce((sum, residual) => sum + residual * residual, 0);
  const whole = cost > 0 ? cost : 1;
  return STANCE_TERMS.map((term, i) => {
    const residual = residuals[i]!;
    return { term, residual, share: (residual * residual) / whole };
  }).sort((a, b) => b.share - a.share);
}

/** Limbs that do not reach their fitting or grip, and the missing lengths. */
function shortfallsOf({ contacts }: StanceProblem, { leg, arms }: SolverFigure): ReachShortfall[] {
  const found: ReachShortfall[] = [];
  const add = (part: ReachShortfall['part'], shortfall: number) => {
    if (shortfall > SHORTFALL_FLOOR) found.push({ part, shortfall });
  };
  add('rearRest', contacts.rearShortfall);
  add('frontFoot', leg.excess);
  add('lowerHand', arms.lower.excess);
  add('topHand', arms.top.excess);
  return found;
}
