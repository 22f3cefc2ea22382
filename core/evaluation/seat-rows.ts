import { BODY_LENGTHS, type BodyEstimate, type BodyLength } from '../body/body.ts';
import { squareRootOf } from '../body/covariance-root.ts';
import type { FittingCoordinate } from '../document/coordinates.ts';
import { coordinateOf, withSeatCoordinate } from '../document/fitting-coordinate.ts';
import { midDrive, topHandSd } from '../paddle/mid-drive.ts';
import { termDistances } from '../posture/objective.ts';
import { strayRoots } from '../posture/own-neutral.ts';
import type { PostureResponse } from '../posture/posture-response.ts';
import { postureResponse } from '../posture/posture-response.ts';
import { solvedUnknowns, stanceAt } from '../posture/solve-stance.ts';
import type { Stance } from '../posture/stance.ts';
import { STANCE_UNKNOWNS } from '../posture/stance.ts';
import type { StanceProblem } from '../posture/stance-problem.ts';
import { stanceProblem } from '../posture/stance-problem.ts';
import { strokePitch } from '../posture/stroke-pitch.ts';
import { FREE_FORCE_SD, NO_FREE_FORCE, PEAK_FORCE_SPREAD } from '../support/blade-force.ts';
import { toDegrees, toRadians } from '../units/angle.ts';
import { keysOf, recordOf } from '../units/entries.ts';
import {
  type Displaceable,
  type DisplacedFit,
  type Displacement,
  displaceable,
  displacedValues,
} from './displaced-values.ts';
import { DRIVE_FORCE_SD, STROKE_PITCH_SD_DEG } from './doubt-sources.ts';
import { driveForceOf, type SeatState } from './seat-state.ts';

/** Change of one value, in its unit, for one standard deviation of each source of a seat's doubt. */
export type Row = Float64Array;

/** Steps of the differences: of an unknown, radians; of a body length, metres; of all else, shares of its own doubt. */
const STEP = { unknown: 1e-3, length: 1e-3, share: 0.05 } as const;

/** Unknowns of the stance. */
const N = STANCE_UNKNOWNS.length;
const TRUNK_PITCH = STANCE_UNKNOWNS.indexOf('trunkPitch');
const FREE = {
  ready: STANCE_UNKNOWNS.map(() => true),
  catch: STANCE_UNKNOWNS.map((name) => name !== 'trunkPitch'),
};

/** One phase of a seat: its problem, its solution, and how the solution responds. */
interface PhaseAnswer {
  /** What was solved. */
  readonly problem: StanceProblem;
  /** The unknowns as solved. */
  readonly q: Float64Array;
  /** Distance of each term from its target, in tolerances. */
  readonly distances: Float64Array;
  /** How the unknowns respond when a term's target moves. */
  readonly response: PostureResponse;
}

/** The inputs of every column. */
interface Work {
  /** Values of seat and boat, and their response to a displaced seat. */
  readonly of: Displaceable;
  /** The seat as solved. */
  readonly state: SeatState;
  readonly ready: PhaseAnswer;
  readonly catch: PhaseAnswer;
}

/** Change of every value for one standard deviation of one source, in the order of the table. */
type Column = Float64Array;

/**
 * First-order response of every value to one standard deviation of each source of a seat's doubt: body lengths (all together,
 * by their covariance), body mass, drive force, top hand, the trunk's pitch at catch and exit, and the target of each term of
 * the stance's objective. Sources are independent, so variances are sums of squares along a row and covariances products of
 * two. The responses of stance (`postureResponse`) and boat (`floatSlopes`) are linear: nothing is solved again. A person's own
 * targets are the same in every phase.
 */
export function seatRows(
  fit: DisplacedFit,
  { posture = true }: { posture?: boolean } = {},
): { rows: Map<string, Row>; usual: ReadonlyMap<string, number> } {
  const work = workOf(fit);
  const columns = [
    ...mixedColumns(lengthColumns(work), squareRootOf(work.state.body.covariance)),
    ...plainColumns(work),
    ...(posture ? strokeColumns(work) : []),
    ...(posture ? mixedColumns(unknownColumns(work), targetRoots(work)) : []),
  ];
  const rows = work.of.table.keys.map(
    (name, i) => [name, Float64Array.from(columns, (column) => column[i]!)] as const,
  );
  return { rows: new Map(rows), usual: usualVariances(work) };
}

/** What all columns of one seat share. */
function workOf(fit: DisplacedFit): Work {
  const state = fit.computed.seats[fit.index]!;
  return { of: displaceable(fit), state, ready: answerOf(state, 'ready'), catch: answerOf(state, 'catch') };
}

/** How far fittings ordinarily differ between seats, metres (estimate): about a quarter of the usual bands. */
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
 * Variance of each value's estimate between usual settings: without this boat's fittings the value is that much less certain.
 */
function usualVariances(work: Work): ReadonlyMap<string, number> {
  const { seat, body } = work.state;
  const { keys } = work.of.table;
  const sums = new Float64Array(keys.length);
  for (const [name, spread] of Object.entries(USUAL_SPREAD)) {
    const coordinate = name as FittingCoordinate;
    const step = STEP.share * spread;
    const moved = withSeatCoordinate(seat, coordinate, coordinateOf(seat, coordinate) + step);
    const ready = followed(work.ready, { ...work.state, seat: moved });
    const displaced = { seat: moved, body, stances: { ready }, clearances: true };
    const column = columnOf(work, displaced, STEP.share);
    for (let i = 0; i < sums.length; i++) sums[i]! += column[i]! ** 2;
  }
  return new Map(keys.map((key, i) => [key, sums[i]!]));
}

/** A phase as solved, with its response. */
function answerOf({ body, seat, stances }: SeatState, phase: 'ready' | 'catch'): PhaseAnswer {
  const problem = stanceProblem(body, seat, { phase });
  const q = solvedUnknowns(stances[phase]);
  const distances = termDistances(problem, q);
  return { problem, q, distances, response: postureResponse(problem, q, FREE[phase]) };
}

/** Change of every value from its base, divided by `step`. */
function columnOf({ of }: Work, displacement: Displacement, step: number): Column {
  const column = displacedValues(of, displacement);
  for (let i = 0; i < column.length; i++) column[i] = (column[i]! - of.base[i]!) / step;
  return column;
}

/** Columns Σ roots[c][i] × given[i]: independent sources instead of correlated ones. */
function mixedColumns(given: readonly Column[], roots: readonly (readonly number[])[]): Column[] {
  return roots.map((root) => {
    const mixed = new Float64Array(given[0]!.length);
    root.forEach((share, i) => {
      const column = given[i];
      if (share === 0 || !column) return;
      for (let k = 0; k < mixed.length; k++) mixed[k]! += share * column[k]!;
    });
    return mixed;
  });
}

/** The stance of another body or on other fittings with the unknowns having followed, boat frame. */
function followed(
  { problem, q, distances, response }: PhaseAnswer,
  { body, seat, frame }: Pick<SeatState, 'body' | 'seat' | 'frame'>,
): Stance {
  const other = stanceProblem(body, seat, { phase: problem.phase });
  const change = termDistances(other, q).map((d, t) => d - distances[t]!);
  const moved = response.follow(change).map((d, k) => q[k]! + d);
  return stanceAt(other, moved, frame);
}

/** Body lengths that clearances also depend on. */
const CLEARING: readonly BodyLength[] = ['kneeRadius', 'footLength'];

/** Change of every value per metre of each body length, the posture following. */
function lengthColumns(work: Work): Column[] {
  return BODY_LENGTHS.map((name) =>
    bodyColumn(work, longer(work.state.body, name), {
      step: STEP.length,
      clearances: CLEARING.includes(name),
    }),
  );
}

/** Change of every value for a body that is off by `step`: both stances follow the body. */
function bodyColumn(
  work: Work,
  body: BodyEstimate,
  { step, clearances = false }: { step: number; clearances?: boolean },
): Column {
  const moved = { ...work.state, body };
  const stances = { ready: followed(work.ready, moved), catch: followed(work.catch, moved) };
  return columnOf(work, { body, stances, clearances }, step);
}

/** The body with one length longer by the step. */
function longer(body: BodyEstimate, name: BodyLength): BodyEstimate {
  const estimate = body.lengths[name];
  const value = estimate.value + STEP.length;
  return { ...body, lengths: { ...body.lengths, [name]: { ...estimate, value } } };
}

/**
 * Body mass, the drive's force with its free parts, and the top hand's height, which matters most for the paddle's length by
 * the stance.
 */
function plainColumns(work: Work): Column[] {
  const { state } = work;
  const { seat } = state;
  const forceSd = seat.stroke.driveForceN === undefined ? PEAK_FORCE_SPREAD : DRIVE_FORCE_SD;
  const force = driveForceOf(state) * (1 + STEP.share * forceSd);
  const topHandOverM = midDrive(state).topHandOver + STEP.share * topHandSd(state);
  const withStroke = (stroke: typeof seat.stroke) =>
    columnOf(work, { seat: { ...seat, stroke: { ...seat.stroke, ...stroke } } }, STEP.share);
  return [
    bodyColumn(work, heavier(state.body), { step: STEP.share }),
    withStroke({ driveForceN: force }),
    withStroke({ topHandOverM }),
    ...(['lift', 'out'] as const).map((part) =>
      columnOf(work, { free: { ...NO_FREE_FORCE, [part]: STEP.share * FREE_FORCE_SD[part] } }, STEP.share),
    ),
  ];
}

/** The body heavier by a share of its mass's doubt, every segment by the same factor. */
function heavier(body: BodyEstimate): BodyEstimate {
  const factor = 1 + (STEP.share * body.massSd) / body.mass;
  const segments = recordOf(keysOf(body.segments), (name) => {
    const segment = body.segments[name];
    return { ...segment, massKg: segment.massKg * factor };
  });
  return { ...body, mass: body.mass * factor, segments };
}

/** The trunk's pitch at the catch, the free unknowns following, and at the exit, of which the trunk alone counts. */
function strokeColumns(work: Work): Column[] {
  const { stroke } = work.state.seat;
  const sdOf = (own: number | undefined) =>
    toRadians(own === undefined ? STROKE_PITCH_SD_DEG.usual : STROKE_PITCH_SD_DEG.own);
  const { problem, q, response } = work.catch;
  const atCatch = STEP.share * sdOf(stroke.catchPitchDeg);
  const moved = q.map((at, k) => at + atCatch * response.toHeld[TRUNK_PITCH * N + k]!);
  const atExit = strokePitch(work.state.seat, 'exit') + STEP.share * sdOf(stroke.exitPitchDeg);
  const pitched = { ...stroke, exitPitchDeg: toDegrees(atExit) };
  return [
    columnOf(work, { stances: { catch: stanceAt(problem, moved, work.state.frame) } }, STEP.share),
    columnOf(work, { seat: { ...work.state.seat, stroke: pitched } }, STEP.share),
  ];
}

/** Change of every value per radian of each unknown alone: those of ready, then those of the catch. */
function unknownColumns(work: Work): Column[] {
  return (['ready', 'catch'] as const).flatMap((phase) => {
    const { problem, q } = work[phase];
    return STANCE_UNKNOWNS.map((_, k) => {
      if (!FREE[phase][k]) return new Float64Array(work.of.base.length);
      const moved = q.map((at, i) => (i === k ? at + STEP.unknown : at));
      const stance = stanceAt(problem, moved, work.state.frame);
      return columnOf(work, { stances: { [phase]: stance } }, STEP.unknown);
    });
  });
}

/** For each root of the targets' covariance, how it moves the unknowns of ready, then those of the catch. */
function targetRoots(work: Work): number[][] {
  const { terms } = work.ready.response;
  return strayRoots(work.state.seat).map((root) =>
    [work.ready, work.catch].flatMap(({ response }) =>
      STANCE_UNKNOWNS.map((_, k) =>
        root.reduce(
          (sum, share, t) => (share === 0 ? sum : sum + share * response.toTargets[k * terms + t]!),
          0,
        ),
      ),
    ),
  );
}
