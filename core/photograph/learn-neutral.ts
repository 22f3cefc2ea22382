import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import { squareRootOf } from '../body/covariance-root.ts';
import type { Fit } from '../document/fit-schema.ts';
import { NEUTRAL_TERMS, type OwnNeutral } from '../document/neutral-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import { postureResponse } from '../posture/posture-response.ts';
import { solvedUnknowns, solveStance } from '../posture/solve-stance.ts';
import { STANCE_UNKNOWNS, type StanceUnknown } from '../posture/stance.ts';
import { stanceProblem } from '../posture/stance-problem.ts';
import { toRadians } from '../units/angle.ts';

/** What a confirmed picture of the ready stance told: the fit at that time, the seat, and the angles as readings, radians. */
export interface ConfirmedLook {
  /** What the paddler knelt in when the picture was taken. */
  readonly fit: Fit;
  /** Index of the seat. */
  readonly seat: number;
  /** Left out where the picture told next to nothing. */
  readonly readings: Readonly<
    Partial<Record<StanceUnknown, { readonly value: number; readonly sd: number }>>
  >;
}

/** How much one person's posture differs from one setting and day to another, radians (estimate; 4–7° lie between persons). */
const WITHIN_PERSON_SD = toRadians(1.5);

/**
 * An athlete's own neutral posture from confirmed pictures: what of the neutrals of everybody fits better. Bayes' rule, linear about
 * the stance that everybody would take on the same fittings (`postureResponse`); each reading in turn. Null without a reading.
 */
export function learnNeutral(looks: readonly ConfirmedLook[], learntOn: string): OwnNeutral | null {
  const belief = {
    mean: new Array<number>(NEUTRAL_TERMS).fill(0),
    covariance: identity(NEUTRAL_TERMS),
  };
  let pictures = 0;
  for (const look of looks) if (learnFrom(look, belief)) pictures += 1;
  if (pictures === 0) return null;
  return {
    learntOn,
    pictures,
    strays: belief.mean.map((s) => Math.min(8, Math.max(-8, round(s)))),
    roots: squareRootOf(belief.covariance).flat().map(round),
    setAside: false,
  };
}

/** What is believed of somebody's posture: means and covariance of the unknowns, radians. */
interface Belief {
  /** One for each unknown. */
  mean: number[];
  /** Square and symmetric, rad². */
  covariance: number[][];
}

/** Takes one picture in; false where it says nothing of the ready stance. */
function learnFrom({ fit, seat: index, readings }: ConfirmedLook, belief: Belief): boolean {
  const own = fit.seats[index];
  const names = STANCE_UNKNOWNS.filter((name) => readings[name]);
  if (!own?.athlete || names.length === 0) return false;
  const seat = everybodys(own);
  const body = bodyOfAthlete(own.athlete);
  const q = solvedUnknowns(solveStance({ body, seat, frame: seatFrame(fit.boat, seat, index) }));
  const problem = stanceProblem(body, seat, { phase: 'ready' });
  const { toTargets, terms } = postureResponse(
    problem,
    q,
    STANCE_UNKNOWNS.map(() => true),
  );
  for (const name of names) {
    const k = STANCE_UNKNOWNS.indexOf(name);
    const slopes = Array.from({ length: NEUTRAL_TERMS }, (_, t) => toTargets[k * terms + t]!);
    const { value, sd } = readings[name]!;
    condition(belief, slopes, { off: value - q[k]!, variance: sd ** 2 + WITHIN_PERSON_SD ** 2 });
  }
  return true;
}

/** The seat of somebody of whom nothing was learnt and nothing is held. */
function everybodys(seat: Seat): Seat {
  const { neutral: _, ...athlete } = seat.athlete!;
  return { ...seat, athlete, pins: {} };
}

/** Bayes' rule for one reading that answers the terms with `slopes`. */
function condition(
  belief: Belief,
  slopes: readonly number[],
  { off, variance }: { off: number; variance: number },
): void {
  const { mean, covariance } = belief;
  const towards = covariance.map((row) => row.reduce((sum, c, t) => sum + c * slopes[t]!, 0));
  const whole = slopes.reduce((sum, h, t) => sum + h * towards[t]!, variance);
  const missed = off - slopes.reduce((sum, h, t) => sum + h * mean[t]!, 0);
  belief.mean = mean.map((m, t) => m + (towards[t]! * missed) / whole);
  belief.covariance = covariance.map((row, i) => row.map((c, j) => c - (towards[i]! * towards[j]!) / whole));
}

/** The unit matrix. */
const identity = (n: number) =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)));
/** To a millionth. */
const round = (value: number) => Math.round(1e6 * value) / 1e6;
