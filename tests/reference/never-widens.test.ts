import { describe, expect, it } from 'vitest';
import { bodyInputOf } from '../../core/body/body-of-athlete.ts';
import { tapeIndex } from '../../core/body/body-prior.ts';
import { bodySpread } from '../../core/body/estimate-body.ts';
import { TAPE_MEASURES } from '../../core/document/athlete-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { STANCE_UNKNOWNS } from '../../core/posture/stance.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { cases } from '../cases.ts';
import { boatOf, crewFit, randomAthletes } from './proposal-random.ts';

const SEED = 41;
const BOATS = ['single', 'training', 'pair', 'four'] as const;
const COUNT = cases(4, 60);

/** Rounding. */
const SAME = 1e-6;

/**
 * A pin holds at the catch too, where the angle would be another: slopes are then taken at another stance, and what belongs to the
 * catch may move by so much.
 */
const SAME_AT_CATCH = 5e-3;
const AT_CATCH = ['trimCatch', 'catchReach', 'bladeSpacing'];

/** A folded value's spread is a sum over points of quadrature, which meet a kink now on this side, now on that. */
const SAME_FOLDED = 1e-3;
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

const sameOf = (id: string) =>
  AT_CATCH.includes(id) ? SAME_AT_CATCH : FOLDED.includes(id) ? SAME_FOLDED : SAME;

const evaluator = createEvaluator();

function withSeat(fit: Fit, index: number, more: Partial<Seat>): Fit {
  return { ...fit, seats: fit.seats.map((seat, i) => (i === index ? { ...seat, ...more } : seat)) };
}

/** Quantities known less surely after than before. */
function widened(before: Report, after: Report): string[] {
  return before.quantities.flatMap(({ id, seat, sd }, i) => {
    const now = after.quantities[i]!;
    expect([now.id, now.seat]).toEqual([id, seat]);
    return (now.sd ?? 0) > (sd ?? 0) * (1 + sameOf(id)) + 1e-12 ? [`${id}@${seat} ${sd} to ${now.sd}`] : [];
  });
}

const fits = Array.from({ length: COUNT }, (_, i) =>
  crewFit(boatOf(BOATS[i % 4]!), randomAthletes(SEED, COUNT), i),
);

describe('nothing measured widens anything', () => {
  it.each(fits.map((fit, i) => [i, fit] as const))(
    'angle by angle, held where the model has it (%i)',
    (_, fit) => {
      let now = evaluator.evaluate(fit);
      const angles = now.seats[0]!.stances.ready.angles;
      let pinned = fit;
      for (const name of STANCE_UNKNOWNS) {
        const pins = { ...pinned.seats[0]!.pins, [`${name}Deg`]: toDegrees(angles[name]) };
        pinned = withSeat(pinned, 0, { pins });
        const then = evaluator.evaluate(pinned);
        expect(widened(now, then), name).toEqual([]);
        now = then;
      }
    },
  );

  it.each(fits.map((fit, i) => [i, fit] as const))(
    'tape by tape, read where the body is taken to be (%i)',
    (_, fit) => {
      let now = evaluator.evaluate(fit);
      let taped = fit;
      for (const measure of TAPE_MEASURES) {
        const athlete = taped.seats[0]!.athlete!;
        const valueM = bodySpread(bodyInputOf(athlete)).mean[tapeIndex(measure)]!;
        taped = withSeat(taped, 0, {
          athlete: { ...athlete, tape: { ...athlete.tape, [measure]: { valueM } } },
        });
        const then = evaluator.evaluate(taped);
        expect(widened(now, then), measure).toEqual([]);
        now = then;
      }
    },
  );
}, 240_000);
