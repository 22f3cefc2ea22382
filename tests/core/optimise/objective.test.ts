import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/evaluation/finding.ts';
import { DECIDED_SIGMAS, severityOf } from '../../../core/evaluation/probability.ts';
import {
  aimOf,
  placeable,
  seriousCount,
  totalViolation,
  violation,
} from '../../../core/optimise/objective.ts';

/** A pad 15 to 20 cm aft, known to a millimetre and a half either way. */
function pad(value: number, more: Partial<Finding> = {}, stops: { stopMin?: number; stopMax?: number } = {}) {
  const sd = 0.0015;
  const band = {
    min: 0.15,
    max: 0.2,
    ...stops,
    source: 'common practice',
    sourceKey: '',
    reason: '',
  } as const;
  const rule = { ...band, quantity: 'padAft', part: 'kneePad' } as const;
  const finding: Finding = {
    id: 'padAft@0',
    seat: 0,
    quantity: 'padAft',
    value,
    sd,
    unit: 'm',
    band,
    distance: 0,
    probability: 0,
    severity: severityOf({ value, sd }, rule),
    part: 'kneePad',
    ...more,
  };
  return finding;
}

const doubt = DECIDED_SIGMAS * 0.0015;
const reportOf = (...findings: Finding[]) =>
  ({ findings }) as unknown as Parameters<typeof totalViolation>[0];

describe('the aim of a finding', () => {
  it('aims inside a band by the value’s doubt and a twentieth of it, so that the finding will read good', () => {
    const [aimed] = aimOf(pad(0.17)).edges;
    expect(aimed.low).toBeCloseTo(0.15 + 1.05 * doubt, 12);
    expect(aimed.high).toBeCloseTo(0.2 - 1.05 * doubt, 12);
    expect(pad(aimed.low!).severity).toBe('good');
  });

  it('aims no farther inside than three tenths of the band, however doubtful the value', () => {
    const [aimed] = aimOf(pad(0.17, { sd: 1 })).edges;
    expect(aimed.low).toBeCloseTo(0.165, 12);
    expect(aimed.high).toBeCloseTo(0.185, 12);
  });

  it('leaves an open side open', () => {
    const [aimed, serious] = aimOf(pad(0.17, { band: { ...pad(0).band, max: null } })).edges;
    expect([aimed.high, serious.high]).toEqual([null, null]);
    expect(aimed.low).toBeCloseTo(0.15 + 1.05 * doubt, 12);
  });

  it('turns serious where the finding does: what stands just within those edges still says check', () => {
    const [, { low, high }] = aimOf(pad(0.17)).edges;
    expect(pad(low!).severity).toBe('check');
    expect(pad(high!).severity).toBe('check');
    expect(pad(low! - 0.3 * doubt).severity).toBe('change');
    expect(pad(high! + 0.3 * doubt).severity).toBe('change');
  });

  it('turns serious no later than at a stop', () => {
    const [, serious] = aimOf(pad(0.17, {}, { stopMin: 0.1495, stopMax: 0.2005 })).edges;
    expect([serious.low, serious.high]).toEqual([0.1495, 0.2005]);
  });
});

describe('violation', () => {
  it('is nothing well inside the band', () => {
    expect(violation(pad(0.175))).toBe(0);
  });

  it('counts a millimetre past the aim as a fifth, while the finding says check', () => {
    const checked = pad(0.2 + 0.5 * doubt);
    expect(checked.severity).toBe('check');
    expect(violation(checked)).toBeCloseTo((1.55 * doubt) / 0.005, 9);
  });

  it('counts eight times more, besides, for what makes the finding serious', () => {
    const past = pad(0.2 + doubt + 0.005);
    expect(past.severity).toBe('change');
    expect(violation(past)).toBeCloseTo(
      Math.hypot((2.05 * doubt + 0.005) / 0.005, (8 * (0.2 * doubt + 0.005)) / 0.005),
      9,
    );
  });

  it('never falls while a value goes farther out', () => {
    const values = Array.from({ length: 60 }, (_, i) => violation(pad(0.19 + 0.001 * i)));
    expect(values).toEqual(values.toSorted((a, b) => a - b));
  });
});

describe('of a whole report', () => {
  const settled = pad(0.175);
  const off = pad(0.25);
  const strap = pad(0, { id: 'strapReleases@0', quantity: 'strapReleases' });

  it('violations add by their squares', () => {
    expect(totalViolation(reportOf(settled, off, off))).toBeCloseTo(2 * violation(off) ** 2, 9);
  });

  it('what placing cannot change is left out', () => {
    expect(strap.severity).toBe('change');
    expect(placeable([strap, off])).toEqual([off]);
    expect(totalViolation(reportOf(strap))).toBe(0);
    expect(seriousCount(reportOf(strap, off, settled))).toBe(1);
  });
});
