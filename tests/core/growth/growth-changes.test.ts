import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { worsening } from '../../../core/evaluation/side-effects.ts';
import { growthChanges } from '../../../core/growth/growth-changes.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const fit = exampleFit();

describe('growthChanges', () => {
  const newest = exampleAthlete({ statureM: 1.86, massKg: 86, measuredOn: '2026-09-01' });
  const { fit: grown, changes, unmoved } = growthChanges(evaluator, { fit, seat: 0, newest });

  it('leaves every fitting where it is and takes the body as measured now', () => {
    expect(grown.seats[0]).toMatchObject({ athlete: { statureM: 1.86, massKg: 86 } });
    expect({ ...grown.seats[0], athlete: null }).toEqual({ ...fit.seats[0], athlete: null });
  });

  it('says of every finding that moves what the whole evaluation says', () => {
    const value = (report: ReturnType<typeof evaluator.evaluate>, id: string, seat: number | null) =>
      report.findings.find((f) => f.quantity === id && f.seat === seat)!;
    const [before, after] = [evaluator.evaluate(fit), evaluator.evaluate(grown)];
    expect(changes.length).toBeGreaterThan(2);
    for (const { id, seat, from, to, severityTo } of changes) {
      expect(value(before, id, seat).value).toBe(from);
      expect(value(after, id, seat)).toMatchObject({ value: to, severity: severityTo });
    }
    expect(changes.length + unmoved).toBe(after.findings.length);
  });

  it('makes the front knee of a longer leg on the same rests more bent', () => {
    const knee = changes.find(({ id }) => id === 'frontKnee')!;
    expect(knee.to).toBeLessThan(knee.from);
  });

  it('puts first what turns for the worse', () => {
    const steps = changes.map(worsening);
    expect(steps).toEqual([...steps].sort((a, b) => b - a));
  });

  it('moves nothing for a body that is the same, and leaves an empty seat empty', () => {
    const same = growthChanges(evaluator, { fit, seat: 0, newest: fit.seats[0]!.athlete! });
    expect(same.changes).toEqual([]);
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(growthChanges(evaluator, { fit: empty, seat: 0, newest }).fit.seats[0]!.athlete).toBe(null);
  });
});

it('worse is later in the order of severities: from good to stop by four steps', () => {
  const effect = { id: 'frontKnee', seat: 0, unit: 'rad', from: 2, to: 1 } as const;
  expect(worsening({ ...effect, severityFrom: 'good', severityTo: 'stop' })).toBe(4);
  expect(worsening({ ...effect, severityFrom: 'change', severityTo: 'check' })).toBe(-1);
});
