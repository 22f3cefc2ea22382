import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { propose } from '../../../core/optimise/propose.ts';
import { type Uncleared, whyUncleared } from '../../../core/optimise/why-uncleared.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();

/** What a proposal leaves of the named quantities, and why; of all without names. */
function unclearedOf(fit: Fit, quantities?: readonly string[]): Uncleared[] {
  const proposal = propose(evaluator, fit);
  const asked = proposal.uncleared.filter((f) => quantities?.includes(f.quantity) ?? true);
  return whyUncleared(evaluator, proposal, asked);
}

const whyOf = (fit: Fit, quantity: string) => unclearedOf(fit, [quantity])[0]?.why;

const ALL: Seat['locks'] = ['kneePad', 'rearRest', 'frontFoot', 'paddle'];

describe('why a proposal leaves a finding', () => {
  it('a fixed strap is a choice, whatever may be moved', () => {
    const { rearRest } = exampleSeat();
    const fit = exampleFit([exampleSeat({ rearRest: { ...rearRest, strap: 'fixed' } })]);
    expect(whyOf(fit, 'strapReleases')).toEqual({ kind: 'choice', choice: 'strapReleases' });
  });

  it('a heavy boat is given', () => {
    const fit = exampleFit();
    const heavy = { ...fit, boat: { ...fit.boat, boatClass: 'C1' as const, massKg: 10 } };
    const why = whyOf(heavy, 'boatMass');
    expect(why).toEqual({ kind: 'given' });
  });

  it('a locked fitting is named, with the move that would clear it', () => {
    const { frontFoot } = exampleSeat();
    const fit = exampleFit([exampleSeat({ frontFoot: { ...frontFoot, forwardM: 0.1 }, locks: ALL })]);
    const locked = unclearedOf(fit).filter(({ why }) => why.kind === 'locked');
    expect(locked.length).toBeGreaterThan(0);
    for (const { finding, why } of locked) {
      if (why.kind !== 'locked') continue;
      const moved = evaluator.evaluate(withCoordinate(fit, why.move, why.move.to));
      const after = moved.findings.find((f) => f.id === finding.id)!;
      expect(['good', 'check'], finding.id).toContain(after.severity);
      expect(why.move.coordinate.startsWith(why.fitting)).toBe(true);
    }
  });

  it('with every fitting locked and nothing that would help, it is out of reach', () => {
    const tiny = { quantity: 'kneelingKnee', min: Math.PI - 0.01, max: Math.PI, reason: 'never' };
    const fit = exampleFit([exampleSeat({ bands: [tiny], locks: ALL })]);
    expect(whyOf(fit, 'kneelingKnee')).toEqual({ kind: 'out of reach' });
  });

  it('two wishes that fight: the one left says what its move would spoil', () => {
    // A front knee that only a high pad opens so far, against the pad's own height and the rear ankle.
    const bands = [
      { quantity: 'frontKnee', min: 134, max: 175, reason: 'test' },
      { quantity: 'padHeight', min: 0.119, max: 0.123, reason: 'test' },
    ];
    const fit = exampleFit([exampleSeat({ bands, locks: ['rearRest', 'frontFoot', 'paddle'] })]);
    const kinds = unclearedOf(fit, ['frontKnee', 'padHeight']);
    expect(kinds.length).toBeGreaterThan(0);
    const against = kinds.find(({ why }) => why.kind === 'against');
    expect(against).toBeDefined();
    if (against?.why.kind !== 'against') return;
    expect(against.why.spoils.length).toBeGreaterThan(0);
    for (const { severityTo } of against.why.spoils) expect(['change', 'stop']).toContain(severityTo);
  });

  it('is the same every time, and leaves nothing out', () => {
    const fit = exampleFit([
      exampleSeat({ locks: ALL, rearRest: { ...exampleSeat().rearRest, turnDeg: 45 } }),
    ]);
    const proposal = propose(evaluator, fit);
    const once = whyUncleared(evaluator, proposal, proposal.uncleared);
    expect(once.map(({ finding }) => finding)).toEqual(proposal.uncleared);
    expect(whyUncleared(createEvaluator(), proposal, proposal.uncleared)).toEqual(once);
  });
});
