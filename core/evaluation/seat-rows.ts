import { BODY_LENGTHS, type BodyEstimate, type BodyLength } from '../body/body.ts';
import { squareRootOf } from '../body/covariance-root.ts';
import type { FittingCoordinate } from '../document/coordinates.ts';
import { coordinateOf, withSeatCoordinate } from '../document/fitting-coordinate.ts';
import { midDrive, topHandSd } from '../paddle/mid-drive.ts';
import type { StanceProblem } from '../posture/objective.ts';
import { stanceProblem, termDistances } from '../posture/objective.ts';
import type { PostureResponse } from '../posture/posture-response.ts';
import { postureResponse } from '../posture/posture-response.ts';
import { stanceAt, unknownsOf } from '../posture/solve-stance.ts';
import type { Stance } from '../posture/stance.ts';
import { STANCE_UNKNOWNS } from '../posture/stance.ts';
import { FREE_FORCE_SD, NO_FREE_FORCE, PEAK_FORCE_SPREAD } from '../support/blade-force.ts';
import { toRadians } from '../units/angle.ts';
import { type DisplacedFit, type Displacement, displacedValues, type Values } from './displaced-values.ts';
import { BODY_MASS_SD_KG, DRIVE_FORCE_SD, STROKE_PITCH_SD_DEG } from './doubt-sources.ts';
import { driveForceOf, type SeatState } from './seat-state.ts';

/** How far one standard deviation of each source of a seat's doubt moves a value, in the value's unit. */
export type Row = Float64Array;

/** Steps of the differences: of an unknown, radians; of a body length, metres; of all else, shares of its own doubt. */
const STEP = { unknown: 1e-3, length: 1e-3, share: 0.05 } as const;

const N = STANCE_UNKNOWNS.length;
const TRUNK_PITCH = STANCE_UNKNOWNS.indexOf('trunkPitch');
const FREE = {
  ready: STANCE_UNKNOWNS.map(() => true),
  catch: STANCE_UNKNOWNS.map((name) => name !== 'trunkPitch'),
};

/** One phase of a seat: its problem, its unknowns as solved, and how they answer. */
interface PhaseAnswer {
  readonly problem: StanceProblem;
  readonly q: Float64Array;
  readonly response: PostureResponse;
}

/** What every column is made from. */
interface Work {
  readonly fit: DisplacedFit;
  readonly state: SeatState;
  readonly base: Values;
  readonly ready: PhaseAnswer;
  readonly catch: PhaseAnswer;
}

/** Change of every value for one standard deviation of one source. */
type Column = Values;

/**
 * The first-order answer of every value that a seat's doubts move to one standard deviation of each source: body lengths (all
 * together, by their covariance), body mass, drive force, top hand, the trunk's pitch at catch and exit, and what each term of
 * the stance's objective takes as usual. Sources are independent; so variances are sums of squares along a row, and covariances
 * products of two. The stance's answer is linear (`postureResponse`), as is the boat's (`floatSlopes`): nothing is solved again.
 * Posture is one and the same person's in every phase.
 */
export function seatRows(
  fit: DisplacedFit,
  { posture = true }: { posture?: boolean } = {},
): { rows: Map<string, Row>; usual: ReadonlyMap<string, number> } {
  const work = workOf(fit);
  const { state, base } = work;
  const columns = [
    ...mixedColumns(lengthColumns(work), squareRootOf(state.body.covariance)),
    ...plainColumns(work),
    ...(posture ? strokeColumns(work) : []),
    ...(posture ? mixedColumns(unknownColumns(work), targetRoots(work)) : []),
  ];
  const rows = new Map([...base.keys()].map((name) => [name, new Float64Array(columns.length)]));
  columns.forEach((column, c) => {
    for (const [name, change] of column) rows.get(name)![c] = change;
  });
  return { rows, usual: usualVariances(work) };
}

function workOf(fit: DisplacedFit): Work {
  const state = fit.computed.seats[fit.index]!;
  const base = displacedValues(fit, { body: state.body });
  return { fit, state, base, ready: answerOf(state, 'ready'), catch: answerOf(state, 'catch') };
}

/** How far fittings ordinarily differ from one seat to the next, metres and degrees: about a quarter of what coaches call usual. */
const USUAL_SPREAD: Partial<Record<FittingCoordinate, number>> = {
  'kneePad.aftM': 0.02,
  'kneePad.outM': 0.015,
  'kneePad.heightM': 0.025,
  'rearRest.aftM': 0.03,
  'rearRest.outM': 0.025,
  'rearRest.heightM': 0.015,
  'frontFoot.forwardM': 0.04,
  'frontFoot.outM': 0.02,
};

/**
 * How far the estimate of each value itself would differ, as a variance, from one usual setting to the next: what is known of a
 * value without this boat's fittings is that much wider.
 */
function usualVariances(work: Work): ReadonlyMap<string, number> {
  const { seat, body } = work.state;
  const before = termDistances(work.ready.problem, work.ready.q);
  const variances = new Map<string, number>();
  for (const [name, spread] of Object.entries(USUAL_SPREAD)) {
    const coordinate = name as FittingCoordinate;
    const step = STEP.share * spread;
    const moved = withSeatCoordinate(seat, coordinate, coordinateOf(seat, coordinate) + step);
    const ready = followed(work.ready, { ...work.state, seat: moved }, before);
    const column = columnOf(work, { seat: moved, body, stances: { ready } }, STEP.share);
    for (const [key, change] of column) variances.set(key, (variances.get(key) ?? 0) + change ** 2);
  }
  return variances;
}

function answerOf({ body, seat, stances }: SeatState, phase: 'ready' | 'catch'): PhaseAnswer {
  const problem = stanceProblem(body, seat, { phase });
  const q = unknownsOf(stances[phase]);
  return { problem, q, response: postureResponse(problem, q, FREE[phase]) };
}

/** Change of every value from its base, divided by `step`. */
function columnOf({ fit, base }: Work, displacement: Displacement, step: number): Column {
  const column = new Map<string, number>();
  for (const [name, value] of displacedValues(fit, displacement)) {
    const change = value - (base.get(name) ?? value);
    if (change !== 0) column.set(name, change / step);
  }
  return column;
}

/** Columns Σ roots[c][i] × given[i]: independent sources in place of ones that vary together. */
function mixedColumns(given: readonly Column[], roots: readonly (readonly number[])[]): Column[] {
  return roots.map((root) => {
    const mixed = new Map<string, number>();
    root.forEach((share, i) => {
      if (share === 0 || !given[i]) return;
      for (const [name, change] of given[i]) mixed.set(name, (mixed.get(name) ?? 0) + share * change);
    });
    return mixed;
  });
}

/** The stance of another body with the unknowns having followed it, boat frame. */
function followed(
  { problem, q, response }: PhaseAnswer,
  { body, seat, frame }: Pick<SeatState, 'body' | 'seat' | 'frame'>,
  before: Float64Array,
): Stance {
  const other = stanceProblem(body, seat, { phase: problem.phase });
  const change = termDistances(other, q).map((d, t) => d - before[t]!);
  const moved = response.follow(change).map((d, k) => q[k]! + d);
  return stanceAt(other, moved, frame);
}

/** Change of every value per metre of each body length, the posture following. */
function lengthColumns(work: Work): Column[] {
  return BODY_LENGTHS.map((name) => bodyColumn(work, longer(work.state.body, name), STEP.length));
}

function bodyColumn(work: Work, body: BodyEstimate, step: number): Column {
  const moved = { ...work.state, body };
  const stances = {
    ready: followed(work.ready, moved, termDistances(work.ready.problem, work.ready.q)),
    catch: followed(work.catch, moved, termDistances(work.catch.problem, work.catch.q)),
  };
  return columnOf(work, { body, stances }, step);
}

function longer(body: BodyEstimate, name: BodyLength): BodyEstimate {
  const estimate = body.lengths[name];
  const value = estimate.value + STEP.length;
  return { ...body, lengths: { ...body.lengths, [name]: { ...estimate, value } } };
}

/** Body mass, the drive's force with its free parts, and the top hand in it: what the paddle's length by the stance rests on most. */
function plainColumns(work: Work): Column[] {
  const { state } = work;
  const { seat } = state;
  const forceSd = seat.stroke.driveForceN === undefined ? PEAK_FORCE_SPREAD : DRIVE_FORCE_SD;
  const force = driveForceOf(state) * (1 + STEP.share * forceSd);
  const topHandOverM = midDrive(state).topHandOver + STEP.share * topHandSd(state);
  const withStroke = (stroke: typeof seat.stroke) =>
    columnOf(work, { seat: { ...seat, stroke: { ...seat.stroke, ...stroke } } }, STEP.share);
  return [
    bodyColumn(work, heavier(state.body), STEP.share),
    withStroke({ driveForceN: force }),
    withStroke({ topHandOverM }),
    ...(['lift', 'out'] as const).map((part) =>
      columnOf(work, { free: { ...NO_FREE_FORCE, [part]: STEP.share * FREE_FORCE_SD[part] } }, STEP.share),
    ),
  ];
}

function heavier(body: BodyEstimate): BodyEstimate {
  const factor = 1 + (STEP.share * BODY_MASS_SD_KG) / body.mass;
  const segments = Object.fromEntries(
    Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: s.massKg * factor }]),
  ) as BodyEstimate['segments'];
  return { ...body, mass: body.mass * factor, segments };
}

/** The trunk's pitch at the catch, the free unknowns following, and at the exit, of which the trunk alone counts. */
function strokeColumns(work: Work): Column[] {
  const { stroke } = work.state.seat;
  const { exit } = work.state.stances;
  const sdOf = (own: number | undefined) =>
    toRadians(own === undefined ? STROKE_PITCH_SD_DEG.usual : STROKE_PITCH_SD_DEG.own);
  const { problem, q, response } = work.catch;
  const atCatch = STEP.share * sdOf(stroke.catchPitchDeg);
  const moved = q.map((at, k) => at + atCatch * response.toHeld[TRUNK_PITCH * N + k]!);
  const atExit = exit.angles.trunkPitch + STEP.share * sdOf(stroke.exitPitchDeg);
  const pitched = { ...exit, angles: { ...exit.angles, trunkPitch: atExit } } as Stance;
  return [
    columnOf(work, { stances: { catch: stanceAt(problem, moved, work.state.frame) } }, STEP.share),
    columnOf(work, { stances: { exit: pitched } }, STEP.share),
  ];
}

/** Change of every value per radian of each unknown alone: those of ready, then those of the catch. */
function unknownColumns(work: Work): Column[] {
  return (['ready', 'catch'] as const).flatMap((phase) => {
    const { problem, q } = work[phase];
    return STANCE_UNKNOWNS.map((_, k) => {
      if (!FREE[phase][k]) return new Map<string, number>();
      const moved = q.map((at, i) => (i === k ? at + STEP.unknown : at));
      const stance = stanceAt(problem, moved, work.state.frame);
      return columnOf(work, { stances: { [phase]: stance } }, STEP.unknown);
    });
  });
}

/** For each term, how its target (one tolerance) moves the unknowns of ready, then those of the catch. */
function targetRoots(work: Work): number[][] {
  const { terms } = work.ready.response;
  return Array.from({ length: terms }, (_, t) =>
    [work.ready, work.catch].flatMap(({ response }) =>
      STANCE_UNKNOWNS.map((_, k) => response.toTargets[k * terms + t]!),
    ),
  );
}
