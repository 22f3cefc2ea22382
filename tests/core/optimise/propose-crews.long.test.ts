import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { SEVERITIES } from '../../../core/evaluation/finding.ts';
import { propose } from '../../../core/optimise/propose.ts';
import type { ProposedMove } from '../../../core/optimise/proposed-move.ts';
import { crewFit, randomAthletes, sampleBoat } from '../../reference/proposal-random.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();

const withMoves = (fit: Fit, moves: readonly ProposedMove[]) =>
  moves.reduce((now, move) => withCoordinate(now, move, move.to), fit);

describe('offers in a crew', () => {
  const crew = crewFit(sampleBoat('pair'), randomAthletes(41, 2));
  const fit = crew.seats.reduce((now, seat, index) => {
    const at = { seat: index, coordinate: 'frontFoot.forwardM' as const };
    return withCoordinate(now, at, seat.frontFoot.forwardM - 0.05 - 0.02 * index);
  }, crew);
  const { fit: proposed, report, offers } = propose(evaluator, fit);

  it('clear a check of one seat by moves of that seat, and let nothing of the other or the boat read worse', () => {
    const ofSeats = offers.filter(({ finding }) => finding.seat !== null);
    expect(new Set(ofSeats.map(({ finding }) => finding.seat)).size).toBe(2);
    for (const { finding, moves } of ofSeats) {
      expect(
        moves.every(({ seat }) => seat === finding.seat),
        finding.id,
      ).toBe(true);
      const after = evaluator.evaluateHolding(withMoves(proposed, moves), report);
      expect(after.findings.find(({ id }) => id === finding.id)!.severity, finding.id).toBe('good');
      const before = new Map(report.findings.map(({ id, severity }) => [id, SEVERITIES.indexOf(severity)]));
      for (const { id, severity } of after.findings)
        expect(SEVERITIES.indexOf(severity), `${finding.id}: ${id}`).toBeLessThanOrEqual(before.get(id)!);
    }
  });

  it('move the named seats alone', () => {
    const own = propose(evaluator, fit, [1]);
    for (const { moves } of [own, ...own.offers]) expect(moves.every(({ seat }) => seat === 1)).toBe(true);
  });
});

describe('in a crew', () => {
  const crew = () =>
    exampleFit([exampleSeat(), exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]);

  it('moves every seat at once, or the named ones alone', () => {
    const seatsOf = (seats?: readonly number[]) =>
      new Set(propose(evaluator, crew(), seats).moves.map(({ seat }) => seat));
    expect([...seatsOf()].toSorted()).toEqual([0, 1]);
    expect([...seatsOf([1])]).toEqual([1]);
  });

  it('leaves an empty seat as it is', () => {
    const fit = crew();
    const half = { ...fit, seats: fit.seats.map((seat, i) => (i === 1 ? { ...seat, athlete: null } : seat)) };
    const { fit: after, moves } = propose(evaluator, half);
    expect(moves.every(({ seat }) => seat === 0)).toBe(true);
    expect(after.seats[1]).toBe(half.seats[1]);
  });
});
