import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../document/seat-schema.ts';
import { norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { armsHold } from './arms.ts';
import { type Contacts, contactsOf, lengthsOf, paddlingSign } from './contacts.ts';
import type { FigureParts } from './figure.ts';
import { centreWeights, massesBetweenJoints, type Spanned, type Weighing } from './figure-masses.ts';
import { jointLimits } from './joint-limits.ts';
import { NEUTRAL_STATURE } from './neutral-posture.ts';
import { ownStrays } from './own-neutral.ts';
import type { Phase } from './stance.ts';
import { type ObjectiveTerm, stanceTerms, targetOf } from './stance-terms.ts';

/**
 * One stance problem, ready to be evaluated at any value of its unknowns: body, fittings and phase turned into lengths, fixed
 * joints, weights and terms. Paddler's frame, SI.
 */
export interface StanceProblem extends FigureParts {
  readonly seat: Seat;
  readonly phase: Phase;
  readonly masses: readonly Spanned[];
  readonly weighing: Weighing;
  readonly terms: readonly ObjectiveTerm[];
  /** Unit vectors: kneeling shank from the knee down, and the front sole from heel to toe. */
  readonly shankWay: Vec3;
  /** From heel to toe. */
  readonly soleWay: Vec3;
}

/**
 * How far one person's preferred values lie from the model's, term by term of the objective, in tolerances; the same in every
 * phase. Drawn from a standard normal distribution and solved, they sample the stance's own doubt.
 */
export type Strays = readonly number[];

/**
 * Gathers what does not change during a solve: 5 to 20 evaluations follow, and a drag needs sixty solves a second. Without
 * `strays` those learnt of the seat's athlete hold, if there are any.
 */
export function stanceProblem(
  body: BodyEstimate,
  seat: Seat,
  { phase, strays = ownStrays(seat) }: { phase: Phase; strays?: Strays | undefined },
): StanceProblem {
  const lengths = lengthsOf(body);
  const contacts = contactsOf(seat, lengths, body.stature);
  const masses = massesBetweenJoints(body, seat);
  const limits = jointLimits(seat);
  const terms = stanceTerms(lengths, contacts, { limits, size: body.stature / NEUTRAL_STATURE });
  return {
    lengths,
    contacts,
    hold: armsHold(lengths, seat, phase),
    paddling: paddlingSign(seat),
    seat,
    phase,
    masses,
    weighing: { weights: centreWeights(masses, contacts), headNeck: lengths.headNeck },
    terms: strays ? terms.map((term, t) => ({ ...term, at: targetOf(term, strays[t] ?? 0) })) : terms,
    shankWay: wayBetween(contacts.knee, contacts.rearAnkle),
    soleWay: soleOf(contacts),
  };
}

/** The same problem in another phase: only the hold of the paddle differs. */
export function inPhase(problem: StanceProblem, phase: Phase): StanceProblem {
  return { ...problem, phase, hold: armsHold(problem.lengths, problem.seat, phase) };
}

/** Unit vector from one point to another. */
function wayBetween(from: Vec3, to: Vec3): Vec3 {
  const line = subtract(to, from);
  return scale(line, 1 / Math.max(norm(line), 1e-9));
}

/** Unit vector along the front sole, heel to toe. */
export function soleOf({ frontHeel, frontToe }: Contacts): Vec3 {
  return wayBetween(frontHeel, frontToe);
}
