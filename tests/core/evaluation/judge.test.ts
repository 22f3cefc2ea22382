import { describe, expect, it } from 'vitest';
import { BANDS } from '../../../core/evaluation/bands.ts';
import type { Quantity } from '../../../core/evaluation/finding.ts';
import { judge } from '../../../core/evaluation/judge.ts';
import {
  DECIDED_SIGMAS,
  distanceToBand,
  probabilityOutside,
  severityOf,
} from '../../../core/evaluation/probability.ts';
import { QUANTITIES, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { findingSentence } from '../../../core/text/finding-sentence.ts';
import { entriesOf } from '../../../core/units/entries.ts';
import { english } from '../../english.ts';
import { exampleFit } from '../example/example-fit.ts';

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
    [deg(112), 0, 'good'],
  ] as const)('front knee %f rad, sd %f → %s', (value, sd, severity) => {
    expect(severityOf({ value, sd }, rule)).toBe(severity);
  });

  it('turns from good to check where one in ten such athletes would be outside, and to change at nine', () => {
    const sd = deg(2);
    const away = DECIDED_SIGMAS * sd;
    expect(severityOf({ value: rule.min! + away + 1e-5, sd }, rule)).toBe('good');
    expect(severityOf({ value: rule.min! + away - 1e-5, sd }, rule)).toBe('check');
    expect(severityOf({ value: rule.min! - away + 1e-5, sd }, rule)).toBe('check');
    expect(severityOf({ value: rule.min! - away - 1e-5, sd }, rule)).toBe('change');
  });

  it('says stop past a stop limit however uncertain the value is', () => {
    const margin = BANDS.find((b) => b.quantity === 'supportMargin')!;
    expect(severityOf({ value: -0.005, sd: 1 }, margin)).toBe('stop');
  });

  it('takes a value set exactly on an edge as inside', () => {
    expect(severityOf({ value: 0.15, sd: 0 }, { ...rule, min: 0.15, max: 0.2 })).toBe('good');
  });
});

/** What the judge says of values without doubt in a single, unless they have one. */
function judged(values: Partial<Record<QuantityId, number>>, more: Partial<Quantity> = {}) {
  const fit = exampleFit();
  return (id: QuantityId) =>
    judge(
      fit,
      entriesOf(values).map(([name, value]) => ({
        id: name,
        seat: QUANTITIES[name].scope === 'boat' ? null : 0,
        value: value!,
        sd: 0,
        unit: QUANTITIES[name].unit,
        ...more,
      })),
    ).find(({ quantity }) => quantity === id)!;
}

describe('an unusual place', () => {
  // The issue: the knee stands 15 to 20 cm behind the boat's centre for the sake of its trim.
  it.each([
    ['good', 0.01, 'check'],
    ['change', 0.05, 'change'],
    ['change', -0.01, 'change'],
  ] as const)(
    'is no more than a check while the trim it serves is good: trim %s at %f m',
    (trim, at, place) => {
      const said = judged({ padAft: 0.22, trimRest: at });
      expect(said('trimRest').severity).toBe(trim);
      expect(said('padAft').severity).toBe(place);
    },
  );

  it('stays a change where its outcome is past a stop', () => {
    expect(judged({ padOut: 0.08, supportMargin: -0.01 })('padOut').severity).toBe('change');
    expect(judged({ padOut: 0.08, supportMargin: 0.03 })('padOut').severity).toBe('check');
  });
});

describe('a doubt of the boat’s lines', () => {
  it('asks for a float check where the value lies in its band, and not where it lies outside', () => {
    const trim = (value: number) => judged({ trimRest: value }, { sd: 0.01, byHull: true })('trimRest');
    expect(trim(0.003)).toMatchObject({ severity: 'check', settledBy: 'floatCheck' });
    expect(trim(-0.003).severity).toBe('check');
    expect(trim(-0.003).settledBy).toBeUndefined();
  });
});

// Standard normal table: Φ(1) = 0.8413, Φ(2) = 0.9772 (any textbook of statistics).
describe('probabilityOutside', () => {
  it('is that of the normal spread, both tails together', () => {
    const band = { min: 1, max: 3 };
    expect(probabilityOutside({ value: 2, sd: 1 }, band)).toBeCloseTo(2 * (1 - 0.8413), 3);
    expect(probabilityOutside({ value: 3, sd: 1 }, band)).toBeCloseTo(0.5 + (1 - 0.9772), 3);
    expect(probabilityOutside({ value: 5, sd: 1 }, { min: null, max: 3 })).toBeCloseTo(0.9772, 3);
  });

  it('is 0 or 1 without doubt, and 0 for a band open on both sides', () => {
    expect(probabilityOutside({ value: 3.1, sd: 0 }, { min: 1, max: 3 })).toBe(1);
    expect(probabilityOutside({ value: 3, sd: 0 }, { min: 1, max: 3 })).toBe(0);
    expect(probabilityOutside({ value: 3, sd: 5 }, { min: null, max: null })).toBe(0);
  });
});

/** A finding of a band, inside it or surely outside. */
function foundAt(band: (typeof BANDS)[number], { distance, value }: { distance: number; value: number }) {
  const { quantity, part } = band;
  const severity = distance > 0 ? ('change' as const) : ('good' as const);
  const found = { quantity, part, band: { ...band, reason: '' }, severity, distance, value };
  return { ...found, id: quantity, seat: 0, sd: null, unit: 'm' as const, probability: distance > 0 ? 1 : 0 };
}

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

  it('holds the published ranges of motion and postures that it names (from memory, as it says of each)', () => {
    const of = (quantity: string) => {
      const row = BANDS.find((b) => b.quantity === quantity)!;
      expect(row.source).toBe('published');
      const [min, max, stopMin, stopMax] = [row.min, row.max, row.stopMin, row.stopMax].map((edge) =>
        Math.round(((edge ?? Number.NaN) * 180) / Math.PI),
      );
      return { min, max, stopMin, stopMax };
    };
    // Neutral-zero method: a straight limb is 180° between its bones, an ankle 90°.
    // ISO 11226 and EN 1005-4, trunk held still: to 20° acceptable, past 60° not.
    expect(of('trunkPitch')).toMatchObject({ max: 20, stopMax: 60 });
    // Soucie et al. 2011: knees flex to 142°, hips to 135°, toes are drawn up by 17°.
    expect(of('kneelingKnee').stopMin).toBe(180 - 142);
    expect(of('frontHip').stopMin).toBe(180 - 135);
    expect(of('frontAnkle').min).toBe(90 - 17);
    // AAOS handbook: hips extend by 20 to 30°, ankles move 20° up and 50° down.
    const hip = of('kneelingHip');
    expect(hip.stopMax).toBeGreaterThanOrEqual(180 + 20);
    expect(hip.stopMax).toBeLessThanOrEqual(180 + 30);
    expect(of('rearAnkle')).toMatchObject({ min: 90 - 20, max: 90 + 50 });
    expect(of('frontAnkle').max).toBe(90 + 50);
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
      expect(english.has(`band-source.${band.sourceKey}`), band.sourceKey).toBe(true);
      for (const reader of ['coach', 'athlete'] as const) {
        const said = (distance: number, value: number) =>
          findingSentence(foundAt(band, { distance, value }), english, reader);
        expect(said(-1, 0), band.quantity).not.toBe('');
        if (band.min !== null) expect(said(1, band.min - 1), band.quantity).not.toBe('');
        if (band.max !== null) expect(said(1, band.max + 1), band.quantity).not.toBe('');
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
