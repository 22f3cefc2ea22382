import { describe, expect, it } from 'vitest';
import { bodyInputOf } from '../../core/body/body-of-athlete.ts';
import { tapeIndex } from '../../core/body/body-prior.ts';
import { bodySpread } from '../../core/body/estimate-body.ts';
import { TAPE_MEASURES } from '../../core/document/athlete-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { QUANTITIES } from '../../core/evaluation/quantities.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { STANCE_UNKNOWNS } from '../../core/posture/stance.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { cases } from '../cases.ts';
import { boatOf, crewFit, randomAthletes } from './proposal-random.ts';

const SEED = 41;
const BOATS = ['single', 'training', 'pair', 'four'] as const;
const COUNT = cases(1, 60);
const ATHLETES = Math.max(60, COUNT);

/** Fits in which a fold at its kink (11) and the difference of a waterplane's area (41) once widened; taken in the quick run too. */
const ONCE_WIDENED = [11, 41];

/** Rounding. */
const SAME = 1e-6;

/**
 * A folded value's spread is a sum over points of quadrature, and a tape turns the directions in which they lie: they meet a
 * kink now on this side, now on that.
 */
const STEP_FOLDED = 0.002;
const FOLDED = [
  'hipFlexorStretch',
  'supportMargin',
  'rearReach',
  'frontReach',
  // Where a contact would have to pull.
  'kneeShare',
  'rearShare',
  'frontShare',
  'kneeLoad',
  'rearLoad',
  'frontLoad',
  'driveKneeLoad',
  'driveRearLoad',
  'driveFrontLoad',
];

const evaluator = createEvaluator();

function withSeat(fit: Fit, index: number, more: Partial<Seat>): Fit {
  return { ...fit, seats: fit.seats.map((seat, i) => (i === index ? { ...seat, ...more } : seat)) };
}

/** Quantities known less surely after a pin or a tape than before. */
function widened(before: Report, after: Report, by: 'pin' | 'tape'): string[] {
  return before.quantities.flatMap(({ id, seat, sd }, i) => {
    const now = after.quantities[i]!;
    expect([now.id, now.seat]).toEqual([id, seat]);
    const more = (now.sd ?? 0) - (sd ?? 0) * (1 + SAME) - 1e-12;
    const steps = more / QUANTITIES[id as keyof typeof QUANTITIES].step;
    const allowed = by === 'tape' && FOLDED.includes(id) ? STEP_FOLDED : 0;
    return more > 0 && !(steps <= allowed) ? [`${id}@${seat} ${sd} to ${now.sd}`] : [];
  });
}

const athletes = randomAthletes(SEED, ATHLETES);
const fitAt = (i: number) => [i, crewFit(boatOf(BOATS[i % 4]!), athletes, i)] as const;
const fits = Array.from({ length: COUNT }, (_, i) => fitAt(i));
const more = ONCE_WIDENED.filter((i) => i >= COUNT).map(fitAt);

describe('nothing measured widens anything', () => {
  it.each([...fits, ...more])('angle by angle, held where the model has it (%i)', (_, fit) => {
    let now = evaluator.evaluate(fit);
    const angles = now.seats[0]!.stances.ready.angles;
    let pinned = fit;
    for (const name of STANCE_UNKNOWNS) {
      const pins = { ...pinned.seats[0]!.pins, [`${name}Deg`]: toDegrees(angles[name]) };
      pinned = withSeat(pinned, 0, { pins });
      const then = evaluator.evaluate(pinned);
      expect(widened(now, then, 'pin'), name).toEqual([]);
      now = then;
    }
  });

  it.each(fits)('tape by tape, read where the body is taken to be (%i)', (_, fit) => {
    let now = evaluator.evaluate(fit);
    let taped = fit;
    for (const measure of TAPE_MEASURES) {
      const athlete = taped.seats[0]!.athlete!;
      const valueM = bodySpread(bodyInputOf(athlete)).mean[tapeIndex(measure)]!;
      taped = withSeat(taped, 0, {
        athlete: { ...athlete, tape: { ...athlete.tape, [measure]: { valueM } } },
      });
      const then = evaluator.evaluate(taped);
      expect(widened(now, then, 'tape'), measure).toEqual([]);
      now = then;
    }
  });
});
