import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../../../core/evaluation/evaluator.ts';
import { strokeCycle } from '../../../../../core/stroke/stroke-cycle.ts';
import { strokeOfFit } from '../../../../../core/stroke/stroke-of-fit.ts';
import { pitchingOf } from '../../../../../renderer/bench/tabs/stroke/pitching.tsx';
import { withStroke } from '../../../../../renderer/bench/tabs/stroke/stroke-inputs.tsx';
import { exampleFit, exampleSeat } from '../../../../core/example/example-fit.ts';

describe('withStroke', () => {
  const pair = exampleFit([exampleSeat(), exampleSeat({ side: 'right', stroke: { driveForceN: 150 } })]);

  it('sets the rate for the whole crew, all else for one paddler', () => {
    const faster = withStroke(pair, { seat: 0, entry: 'ratePerMin' }, 72);
    expect(faster.seats.map(({ stroke }) => stroke.ratePerMin)).toEqual([72, 72]);
    expect(faster.seats[1]!.stroke.driveForceN).toBe(150);
    const harder = withStroke(pair, { seat: 0, entry: 'driveForceN' }, 240);
    expect(harder.seats.map(({ stroke }) => stroke.driveForceN)).toEqual([240, 150]);
    expect(harder.seats[1]).toBe(pair.seats[1]);
  });

  it('leaves an entry to the usual again, taking it out of the document', () => {
    const usual = withStroke(pair, { seat: 1, entry: 'driveForceN' }, null);
    expect(usual.seats[1]!.stroke).toEqual({});
  });
});

describe('pitchingOf', () => {
  const fit = exampleFit();
  const crew = strokeOfFit(fit, evaluateFit(fit));
  const rows = strokeCycle(crew, 4);

  it('gives a range of amplification and natural periods about the stroke’s own', () => {
    const slow = pitchingOf({ crew, rows }, 40)!;
    const fast = pitchingOf({ crew, rows }, 90)!;
    expect(slow.strokePeriod).toBeCloseTo(1.5, 12);
    expect(slow.amplification.least).toBeLessThan(slow.amplification.most);
    expect(slow.naturalPeriods).toEqual(fast.naturalPeriods);
    expect(fast.amplification.most).toBeGreaterThan(slow.amplification.most);
  });

  it('is null where the boat does not float', () => {
    const sunk = rows.map((row) => ({ ...row, afloat: { kind: 'swamped' } as never }));
    expect(pitchingOf({ crew, rows: sunk }, 60)).toBeNull();
  });
});
