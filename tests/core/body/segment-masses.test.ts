import { describe, expect, it } from 'vitest';
import { BODY_SEGMENTS } from '../../../core/body/body.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { massShare, SEGMENT_ENDPOINTS } from '../../../core/body/segment-masses.ts';
import { SEGMENT_COUNT, SEGMENT_TABLE, TABLE_THIGH } from '../../../core/body/segment-table.ts';
import { SEXES, tablesOf } from '../../../core/body/sex.ts';

const of = (sex: 'female' | 'male' | 'unspecified', stature = 1.74, mass = 70) =>
  estimateBody({ stature, mass, sex });

describe('massShare', () => {
  it.each(SEXES)(
    'of a whole %s body adds up to one, though the printed shares of women add to 99.99',
    (sex) => {
      const sum = BODY_SEGMENTS.reduce((s, name) => s + SEGMENT_COUNT[name] * massShare(name, sex), 0);
      expect(sum).toBeCloseTo(1, 12);
    },
  );

  it('is the printed share to a ten-thousandth', () => {
    for (const sex of SEXES) {
      for (const name of BODY_SEGMENTS) {
        expect(massShare(name, sex)).toBeCloseTo(SEGMENT_TABLE[sex][name].massPercent / 100, 4);
      }
    }
  });
});

describe('the segments of a body', () => {
  it.each(['female', 'male', 'unspecified'] as const)('%s: weigh what the body weighs', (sex) => {
    const { segments } = of(sex);
    const sum = BODY_SEGMENTS.reduce((kg, name) => kg + SEGMENT_COUNT[name] * segments[name].massKg, 0);
    expect(sum).toBeCloseTo(70, 9);
  });

  it('have their centres between their two points, each named', () => {
    for (const sex of ['female', 'male', 'unspecified'] as const) {
      for (const name of BODY_SEGMENTS) {
        expect(SEGMENT_ENDPOINTS[name]).toHaveLength(2);
        expect(of(sex).segments[name].centreFraction).toBeGreaterThan(0.25);
        expect(of(sex).segments[name].centreFraction).toBeLessThanOrEqual(1);
      }
    }
  });

  it('are, with the sex unsaid, half-way between the two tables', () => {
    const [female, male, either] = (['female', 'male', 'unspecified'] as const).map(
      (sex) => of(sex).segments,
    );
    for (const name of ['trunk', 'shank', 'foot', 'upperArm'] as const) {
      expect(either![name].massKg).toBeCloseTo((female![name].massKg + male![name].massKg) / 2, 9);
      expect(either![name].centreFraction).toBeCloseTo(
        (female![name].centreFraction + male![name].centreFraction) / 2,
        9,
      );
    }
    expect(tablesOf('unspecified')).toEqual(SEXES);
  });

  it('keep the women’s thigh its table’s distance from the knee, on a thigh that is not its table’s', () => {
    const { segments, lengths } = of('female');
    const fromKnee = (1 - segments.thigh.centreFraction) * lengths.thigh.value;
    const printed = (1 - SEGMENT_TABLE.female.thigh.centrePercent / 100) * TABLE_THIGH.female * 1.74;
    expect(fromKnee).toBeCloseTo(printed, 3);
    expect(segments.thigh.centreFraction).toBeGreaterThan(SEGMENT_TABLE.female.thigh.centrePercent / 100);
  });

  it('take the men’s thigh as printed', () => {
    expect(of('male').segments.thigh.centreFraction).toBeCloseTo(0.4095, 12);
  });
});
