import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS, BODY_SEGMENTS, type BodyEstimate, type BodyLength } from '../../../core/body/body.ts';
import type { BodyInput, TapeValue } from '../../../core/body/body-input.ts';
import { squareRootOf } from '../../../core/body/covariance-root.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { SEGMENT_COUNT } from '../../../core/body/segment-table.ts';
import { tapePercentile } from '../../../core/body/tape-percentile.ts';
import { TAPE_MEASURES, type TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { cases } from '../../cases.ts';

const MAN = { stature: 1.8, mass: 80, sex: 'male' } as const;
const codes = (body: BodyEstimate) => body.notes.map((note) => note.code);
const expected = (measure: TapeMeasure) => tapePercentile(measure, 1, MAN).expected;

/** The same man with one tape read `by` metres off what his stature leads one to expect. */
const withTape = (measure: TapeMeasure, by = 0, sd?: number) =>
  estimateBody({ ...MAN, tape: { [measure]: { value: expected(measure) + by, sd } } });

describe('a body by stature and mass alone', () => {
  const body = estimateBody(MAN);

  it('has sensible lengths with honest spreads', () => {
    expect(body.lengths.thigh.value).toBeCloseTo(0.442, 3);
    expect(body.lengths.thigh.sd).toBeCloseTo(0.021, 3);
    expect(body.lengths.shank.value).toBeCloseTo(0.433, 3);
    expect(body.lengths.kneeRadius.value).toBeCloseTo(0.0563, 4);
    expect(body.notes).toEqual([]);
  });

  it('says which come from the survey and which are estimates', () => {
    const estimates = BODY_LENGTHS.filter((name) => body.lengths[name].kind === 'estimate');
    expect(estimates).toEqual(['heelToAnkle', 'hipSeparation', 'kneeRadius']);
    for (const name of BODY_LENGTHS) {
      if (!estimates.includes(name)) expect(body.lengths[name].kind).toBe('survey');
    }
  });

  it('carries the second opinion of the ratio table', () => {
    expect(body.ratioLengths.thigh).toBeCloseTo(0.245 * 1.8, 9);
    expect(Math.abs(body.ratioLengths.thigh! - body.lengths.thigh.value)).toBeLessThan(body.lengths.thigh.sd);
  });

  it('gives the covariance whose diagonal are the squared spreads', () => {
    BODY_LENGTHS.forEach((name, i) => {
      expect(Math.sqrt(body.covariance[i]![i]!)).toBeCloseTo(body.lengths[name].sd, 12);
    });
  });

  it('keeps the usual doubt of stature and mass, or the one it is told', () => {
    expect(body.statureSd).toBe(0.006);
    expect(body.massSd).toBe(0.7);
    const told = estimateBody({ ...MAN, statureSd: 0.02, massSd: 3 });
    expect([told.statureSd, told.massSd]).toEqual([0.02, 3]);
    expect(told.lengths.thigh.sd).toBeGreaterThan(body.lengths.thigh.sd);
  });
});

describe('tape measures', () => {
  const alone = estimateBody(MAN);

  it('a foot that is measured is measured, and narrows ball and ankle', () => {
    const body = withTape('footLength', 0.012);
    expect(body.lengths.footLength.kind).toBe('measured');
    expect(body.lengths.footLength.value).toBeCloseTo(expected('footLength') + 0.0112, 3);
    expect(body.lengths.heelToBall.kind).toBe('combined');
    expect(body.lengths.heelToBall.sd).toBeLessThan(0.6 * alone.lengths.heelToBall.sd);
    expect(body.lengths.heelToBall.value).toBeGreaterThan(alone.lengths.heelToBall.value);
  });

  it.each([
    ['kneeHeightSitting', ['shank', 'thigh']],
    ['buttockKneeLength', ['thigh', 'trunk', 'shank']],
    ['shoulderHeight', ['headNeck', 'trunk']],
    ['armSpan', ['upperArm', 'forearm']],
    ['footLength', ['footLength', 'heelToBall', 'heelToAnkle']],
    ['kneelingHeight', ['shank', 'kneeRadius', 'trunk']],
    ['crotchHeight', ['thigh', 'shank', 'trunk']],
    ['tibialHeight', ['shank']],
    ['poplitealHeight', ['shank']],
    ['sittingHeight', ['trunk', 'thigh', 'shank']],
    ['biacromialBreadth', ['shoulderSeparation']],
    ['kneeToHipLength', ['thigh', 'trunk']],
  ] as const)('%s narrows %s', (measure, lengths) => {
    const body = withTape(measure);
    for (const name of lengths) expect(body.lengths[name].sd).toBeLessThan(0.995 * alone.lengths[name].sd);
  });

  it.each([
    ['kneeHeightSitting', 'shank', 1],
    ['sittingHeight', 'trunk', 1],
    ['sittingHeight', 'thigh', -1],
    ['crotchHeight', 'thigh', 1],
    ['kneelingHeight', 'shank', -1],
    ['kneeToHipLength', 'thigh', 1],
    ['kneeToHipLength', 'trunk', -1],
    ['armSpan', 'upperArm', 1],
    ['shoulderHeight', 'headNeck', -1],
  ] as const)('a longer %s means a %s changed by sign %d', (measure, length, sign) => {
    const change = withTape(measure, 0.015).lengths[length].value - alone.lengths[length].value;
    expect(sign * change).toBeGreaterThan(0.0005);
  });

  it('a careless tape changes less than a careful one', () => {
    const move = (sd: number) =>
      withTape('kneeHeightSitting', 0.02, sd).lengths.shank.value - alone.lengths.shank.value;
    expect(move(0.03)).toBeLessThan(0.5 * move(0.003));
    expect(move(0.03)).toBeGreaterThan(0);
  });

  it('a tape that reads what was expected moves nothing', () => {
    const body = withTape('sittingHeight');
    for (const name of BODY_LENGTHS) {
      expect(body.lengths[name].value).toBeCloseTo(alone.lengths[name].value, 12);
    }
  });

  it('keeps sole to vertex at the stature, to within the doubt of the stature', () => {
    const body = estimateBody({
      ...MAN,
      tape: {
        kneeHeightSitting: { value: 0.6 },
        sittingHeight: { value: 0.9 },
        crotchHeight: { value: 0.93 },
      },
    });
    const chain = ['ankleHeight', 'shank', 'thigh', 'trunk', 'headNeck'] as const;
    const sum = chain.reduce((total, name) => total + body.lengths[name].value, 0);
    expect(Math.abs(sum - 1.8)).toBeLessThan(2 * body.statureSd);
  });

  it('questions a reading far from what the stature leads one to expect, and computes on', () => {
    const slip = withTape('kneeHeightSitting', 0.1);
    expect(codes(slip)).toEqual(['tape-disagrees']);
    expect(slip.notes[0]).toMatchObject({ measure: 'kneeHeightSitting' });
    expect(slip.notes[0]).toHaveProperty('sigmas', expect.closeTo(0.1 / 0.0136, 0));
    expect(slip.lengths.shank.value).toBeGreaterThan(alone.lengths.shank.value);
    expect(codes(withTape('kneeHeightSitting', 0.035))).toEqual([]);
  });
});

describe('what is said of an estimate', () => {
  it.each([
    [{ stature: 1.29, mass: 40 }, ['extrapolates-stature']],
    [{ stature: 1.3, mass: 40 }, []],
    [{ stature: 2.15, mass: 100 }, []],
    [{ stature: 2.16, mass: 100 }, ['extrapolates-stature']],
    [{ stature: 1.5, mass: 29 }, ['extrapolates-mass']],
    [{ stature: 1.9, mass: 141 }, ['extrapolates-mass']],
    [{ stature: 1.2, mass: 25 }, ['extrapolates-stature', 'extrapolates-mass']],
    [{ stature: 1.7, mass: 60, ageYears: 17 }, ['junior']],
    [{ stature: 1.7, mass: 60, ageYears: 18 }, []],
    [{ stature: 1.7, mass: 60, ageYears: null }, []],
  ])('%o: %o', (person, said) => {
    expect(codes(estimateBody({ sex: 'female', ...person }))).toEqual(said);
  });

  it('is vaguer of a junior, and a tape counts for more', () => {
    const adult = estimateBody({ ...MAN, ageYears: 25 });
    const junior = estimateBody({ ...MAN, ageYears: 14 });
    expect(junior.notes).toEqual([{ code: 'junior', ageYears: 14 }]);
    for (const name of ['thigh', 'shank', 'trunk', 'footLength'] as const) {
      expect(junior.lengths[name].sd).toBeGreaterThan(1.1 * adult.lengths[name].sd);
    }
  });

  it('has longer legs and a shorter trunk as a junior, and still adds up to the stature', () => {
    const at = (ageYears: number) => estimateBody({ stature: 1.57, mass: 45, sex: 'male', ageYears }).lengths;
    const [adult, junior] = [at(25), at(13)];
    for (const name of ['thigh', 'shank'] as const) {
      expect(junior[name].value).toBeGreaterThan(adult[name].value + 0.01);
    }
    expect(junior.trunk.value).toBeLessThan(adult.trunk.value - 0.02);
    const chain = ['ankleHeight', 'shank', 'thigh', 'trunk', 'headNeck'] as const;
    expect(chain.reduce((sum, name) => sum + junior[name].value, 0)).toBeCloseTo(1.57, 9);
  });
});

describe('scale', () => {
  const lengthsAt = (stature: number) => estimateBody({ ...MAN, stature }).lengths;

  it('every length grows with stature', () => {
    for (let s = 0.8; s < 2.6; s += 0.1) {
      const [small, tall] = [lengthsAt(s), lengthsAt(s + 0.1)];
      for (const name of BODY_LENGTHS) expect(tall[name].value).toBeGreaterThan(small[name].value);
    }
  });

  it('legs grow faster than stature within the survey, the head slower', () => {
    const ratio = (s: number, name: BodyLength) => lengthsAt(s)[name].value / s;
    for (const name of ['thigh', 'shank'] as const) expect(ratio(2, name)).toBeGreaterThan(ratio(1.5, name));
    expect(ratio(2, 'headNeck')).toBeLessThan(ratio(1.5, 'headNeck'));
  });

  it('beyond the survey a body only scales', () => {
    const [low, lower] = [lengthsAt(1.2), lengthsAt(0.9)];
    for (const name of BODY_LENGTHS) {
      expect(low[name].value / 1.2).toBeCloseTo(lower[name].value / 0.9, 12);
    }
  });

  it('mass scales the segments, thickens the knee and leaves stature alone', () => {
    const [light, heavy] = [estimateBody(MAN), estimateBody({ ...MAN, mass: 120 })];
    for (const segment of BODY_SEGMENTS) {
      expect(heavy.segments[segment].massKg).toBeCloseTo(1.5 * light.segments[segment].massKg, 9);
    }
    // Half of 0.467 mm of knee depth with every kilogram.
    expect(heavy.lengths.kneeRadius.value - light.lengths.kneeRadius.value).toBeCloseTo(0.0093, 4);
    const height = ({ lengths: l }: BodyEstimate) =>
      l.ankleHeight.value + l.shank.value + l.thigh.value + l.trunk.value + l.headNeck.value;
    expect(height(heavy)).toBeCloseTo(height(light), 9);
  });

  it('a mass that is badly known widens what depends on it', () => {
    const [sure, vague] = [0.5, 15].map((massSd) => estimateBody({ ...MAN, massSd }).lengths);
    expect(vague!.kneeRadius.sd).toBeGreaterThan(1.05 * sure!.kneeRadius.sd);
  });
});

describe('any body', () => {
  const reading = fc.record({
    value: fc.double({ min: 0.02, max: 3, noNaN: true }),
    sd: fc.option(fc.double({ min: 0.0005, max: 0.1, noNaN: true }), { nil: undefined }),
  });
  const tape = fc.dictionary(fc.constantFrom(...TAPE_MEASURES), reading, { maxKeys: 12 });
  const person: fc.Arbitrary<BodyInput> = fc.record({
    stature: fc.double({ min: 0.8, max: 2.6, noNaN: true }),
    mass: fc.double({ min: 15, max: 250, noNaN: true }),
    sex: fc.constantFrom('female' as const, 'male' as const, 'unspecified' as const),
    tape: tape as fc.Arbitrary<Partial<Record<TapeMeasure, TapeValue>>>,
    ageYears: fc.option(fc.integer({ min: 4, max: 90 })),
  });

  it('has finite positive lengths and masses that add up, whatever the tape says', () => {
    fc.assert(
      fc.property(person, (input) => {
        const body = estimateBody(input);
        for (const name of BODY_LENGTHS) {
          const { value, sd } = body.lengths[name];
          expect(value).toBeGreaterThan(0);
          expect(Number.isFinite(value)).toBe(true);
          expect(sd).toBeGreaterThanOrEqual(0);
          expect(sd).toBeLessThan(0.2);
        }
        const mass = BODY_SEGMENTS.reduce((sum, s) => sum + SEGMENT_COUNT[s] * body.segments[s].massKg, 0);
        expect(mass).toBeCloseTo(input.mass, 9);
        for (const segment of BODY_SEGMENTS) {
          expect(body.segments[segment].massKg).toBeGreaterThan(0);
          expect(Number.isFinite(body.segments[segment].centreFraction)).toBe(true);
        }
      }),
      { seed: 304, numRuns: cases(40, 200) },
    );
  });

  it('is never made vaguer by a tape', () => {
    fc.assert(
      fc.property(person, (input) => {
        const [prior, posterior] = [estimateBody({ ...input, tape: {} }), estimateBody(input)];
        for (const name of BODY_LENGTHS) {
          expect(posterior.lengths[name].sd).toBeLessThanOrEqual(prior.lengths[name].sd + 1e-12);
        }
      }),
      { seed: 305, numRuns: cases(30, 150) },
    );
  });

  it('has a covariance that can be taken apart again: symmetric, positive semidefinite', () => {
    fc.assert(
      fc.property(person, ({ ...input }) => {
        const { covariance } = estimateBody(input);
        const columns = squareRootOf(covariance);
        const largest = Math.max(...covariance.map((row, i) => row[i]!));
        covariance.forEach((row, i) => {
          row.forEach((value, j) => {
            expect(Math.abs(value - covariance[j]![i]!)).toBeLessThan(1e-12);
            const rebuilt = columns.reduce((sum, column) => sum + column[i]! * column[j]!, 0);
            expect(Math.abs(rebuilt - value)).toBeLessThan(1e-6 * largest);
          });
        });
      }),
      { seed: 306, numRuns: cases(20, 100) },
    );
  });

  it('is the same body every time', () => {
    expect(estimateBody({ ...MAN, tape: { armSpan: { value: 1.85 } } })).toEqual(
      estimateBody({ ...MAN, tape: { armSpan: { value: 1.85 } } }),
    );
  });

  it('computes for absurd but finite persons too', () => {
    for (const stature of [0.05, 0.3, 5, 40]) {
      const body = estimateBody({ stature, mass: 0.5, sex: 'unspecified' });
      for (const name of BODY_LENGTHS) {
        expect(body.lengths[name].value, `${name} at ${stature} m`).toBeGreaterThan(0);
        expect(Number.isFinite(body.lengths[name].value)).toBe(true);
      }
    }
  });
});
