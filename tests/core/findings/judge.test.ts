import { describe, expect, it } from 'vitest';
import { BANDS } from '../../../core/findings/bands.ts';
import { distanceToBand, SIGMAS_95, severityOf } from '../../../core/findings/judge.ts';
import { QUANTITIES } from '../../../core/findings/quantities.ts';
import { WORDING } from '../../../core/findings/quantity-wording.ts';

const rule = BANDS.find((b) => b.quantity === 'frontKnee')!;
const deg = (angle: number) => (angle * Math.PI) / 180;

describe('distanceToBand', () => {
  it('is negative inside, positive outside, measured to the nearer edge', () => {
    expect(distanceToBand(0.17, { min: 0.15, max: 0.2 })).toBeCloseTo(-0.02, 12);
    expect(distanceToBand(0.14, { min: 0.15, max: 0.2 })).toBeCloseTo(0.01, 12);
    expect(distanceToBand(0.23, { min: 0.15, max: 0.2 })).toBeCloseTo(0.03, 12);
  });

  it('is minus infinity for a band open on both sides', () => {
    expect(distanceToBand(3, { min: null, max: null })).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe('severityOf', () => {
  it.each([
    [deg(118), deg(2), 'good'],
    [deg(112), deg(2), 'check'],
    [deg(108), deg(2), 'check'],
    [deg(104), deg(2), 'change'],
    [deg(112), null, 'good'],
  ] as const)('front knee %f rad, sd %f → %s', (value, sd, severity) => {
    expect(severityOf(value, sd, rule)).toBe(severity);
  });

  it('turns from good to check exactly where the edge enters the 95 % interval', () => {
    const sd = deg(2);
    const edge = rule.min! + SIGMAS_95 * sd;
    expect(severityOf(edge + 1e-6, sd, rule)).toBe('good');
    expect(severityOf(edge - 1e-6, sd, rule)).toBe('check');
  });

  it('says stop past a stop limit however uncertain the value is', () => {
    const margin = BANDS.find((b) => b.quantity === 'supportMargin')!;
    expect(severityOf(-0.005, 1, margin)).toBe('stop');
  });

  it('takes a value set exactly on an edge as inside', () => {
    expect(severityOf(0.15, null, { ...rule, min: 0.15, max: 0.2 })).toBe('good');
  });
});

describe('the band table', () => {
  it('holds the common coaching practice of the sprint high kneel (common practice, no source)', () => {
    const of = (quantity: string, crew = 1) => {
      const row = BANDS.find((b) => b.quantity === quantity && (b.crews?.includes(crew) ?? true))!;
      expect(row.source).toBe('common practice');
      return [row.min, row.max];
    };
    expect(of('padAft')).toEqual([0.15, 0.2]);
    expect(of('padOut')).toEqual([0.02, 0.05]);
    expect(of('restTurn')).toEqual([deg(15), deg(25)]);
    expect(of('frontKnee')[0]).toBe(deg(110));
    expect(of('trunkRoll')).toEqual([0, deg(6)]);
    expect(of('paddleUnderStature')).toEqual([0.08, 0.12]);
    expect(of('bladeShare')[0]).toBeCloseTo(1 / 3, 12);
    expect(of('trimRest')[0]).toBe(0);
  });

  it('asks for a higher recess in a pair than in a single, and higher still in a four', () => {
    const height = (crew: number) =>
      BANDS.find((b) => b.quantity === 'padHeight' && b.crews?.includes(crew))!;
    expect(height(2).min!).toBeGreaterThan(height(1).min!);
    expect(height(4).min!).toBeGreaterThan(height(2).min!);
  });

  it('names a known quantity, a source and words for each side of every band', () => {
    for (const band of BANDS) {
      expect(Object.keys(QUANTITIES)).toContain(band.quantity);
      expect(band.sourceText.length).toBeGreaterThan(10);
      const words = WORDING[band.quantity]!;
      for (const reader of [words.coach, words.athlete]) {
        expect(reader.good).not.toBe('');
        if (band.min !== null) expect(reader.low, band.quantity).not.toBe('');
        if (band.max !== null) expect(reader.high, band.quantity).not.toBe('');
      }
    }
  });

  it('has no band whose lower edge is above its upper, nor a stop inside the band', () => {
    for (const { quantity, min, max, stopMin, stopMax } of BANDS) {
      expect((min ?? Number.NEGATIVE_INFINITY) < (max ?? Number.POSITIVE_INFINITY), quantity).toBe(true);
      expect(stopMin ?? Number.NEGATIVE_INFINITY, quantity).toBeLessThanOrEqual(
        min ?? Number.POSITIVE_INFINITY,
      );
      expect(stopMax ?? Number.POSITIVE_INFINITY, quantity).toBeGreaterThanOrEqual(
        max ?? Number.NEGATIVE_INFINITY,
      );
    }
  });
});
