import { describe, expect, it } from 'vitest';
import { SEXES } from '../../core/body/sex.ts';
import {
  measureCorrelations,
  PERSON_MEASURES,
  type PersonMeasure,
  sampledCorrelation,
  tiedCorrelation,
} from '../../core/body/survey-correlations.ts';
import { squareRootOf } from '../../core/fit/covariance-root.ts';
import { sampleMen } from './body-men-sample.ts';

const FITTED = sampleMen().filter((man) => man.group !== 'held-out');

/** Departures of one measure from its line on stature, each post's mean and a common slope taken out. */
function departures(measure: PersonMeasure): number[] {
  const posts = ['post-1', 'post-2'];
  const meanOf = (post: string, of: (m: (typeof FITTED)[number]) => number) => {
    const men = FITTED.filter((man) => man.group === post);
    return men.reduce((sum, man) => sum + of(man), 0) / men.length;
  };
  const centred = (of: (m: (typeof FITTED)[number]) => number) => {
    const means = Object.fromEntries(posts.map((post) => [post, meanOf(post, of)]));
    return FITTED.map((man) => of(man) - (means[man.group] ?? 0));
  };
  const s = centred((man) => man.stature);
  const v = centred((man) => man.measures[measure]);
  const slope = dot(s, v) / dot(s, s);
  return v.map((value, i) => value - slope * s[i]!);
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);

const DEPARTURES = new Map(PERSON_MEASURES.map((measure) => [measure, departures(measure)]));

function correlationOfMen(a: PersonMeasure, b: PersonMeasure): number {
  const [x, y] = [DEPARTURES.get(a)!, DEPARTURES.get(b)!];
  return dot(x, y) / Math.sqrt(dot(x, x) * dot(y, y));
}

const PAIRS = PERSON_MEASURES.flatMap((a, i) => PERSON_MEASURES.slice(0, i).map((b) => [a, b] as const));

/** The table is the sample's, shrunk by a tenth and rounded to two decimals. */
const SHRINKING = 0.9;
const ROUNDING = 0.0051;

/** Three standard errors of a correlation near 0.3 from 61 men. */
const SAMPLING = 3 * 0.118;

describe('correlations among people of one stature (ANSUR II, 61 men of the public release)', () => {
  it('has 61 men of two posts', () => {
    expect(FITTED.filter((man) => man.group === 'post-1')).toHaveLength(29);
    expect(FITTED.filter((man) => man.group === 'post-2')).toHaveLength(32);
  });

  it.each(PAIRS)('%s with %s is the men’s, shrunk', (a, b) => {
    expect(Math.abs(sampledCorrelation(a, b) - SHRINKING * correlationOfMen(a, b))).toBeLessThan(ROUNDING);
    expect(sampledCorrelation(a, b)).toBe(sampledCorrelation(b, a));
  });

  // The survey's own table of 4082 men gives ten of the pairs independently of the sample.
  const tied = PAIRS.filter(([a, b]) => tiedCorrelation(a, b, 'male') !== null);

  it('knows ten pairs from the survey’s table itself', () => {
    expect(tied).toHaveLength(10);
  });

  it.each(tied)('%s with %s: 4082 men say what 61 say', (a, b) => {
    expect(Math.abs(tiedCorrelation(a, b, 'male')! - correlationOfMen(a, b))).toBeLessThan(SAMPLING);
  });

  it.each(tied)('%s with %s: women are much like men', (a, b) => {
    const difference = tiedCorrelation(a, b, 'male')! - tiedCorrelation(a, b, 'female')!;
    expect(Math.abs(difference)).toBeLessThan(0.15);
  });

  it.each(SEXES)('the table of each sex is positive definite (%s)', (sex) => {
    const table = measureCorrelations(sex);
    const pivots = squareRootOf(table).map((column, k) => column[k]!);
    // The smallest pivot squared is what the measures before it leave unexplained of the last: never nothing.
    expect(Math.min(...pivots)).toBeGreaterThan(0.3);
    for (const [i, row] of table.entries()) {
      expect(row[i]).toBe(1);
      for (const [j, value] of row.entries()) {
        expect(value).toBe(table[j]![i]);
        expect(Math.abs(value)).toBeLessThanOrEqual(1);
      }
    }
  });
});
