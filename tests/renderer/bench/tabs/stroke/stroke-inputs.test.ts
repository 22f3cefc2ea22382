import { describe, expect, it } from 'vitest';
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
