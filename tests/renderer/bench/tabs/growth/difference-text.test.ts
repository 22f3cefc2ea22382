import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../../app/language/format.ts';
import { type BodyDifference, bodyDifference } from '../../../../../core/growth/body-difference.ts';
import { bannerText, differenceLines } from '../../../../../renderer/bench/tabs/growth/difference-text.ts';
import { exampleAthlete } from '../../../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const copy = exampleAthlete({ statureM: 1.52, massKg: 44 });
const plain = (text: string) => text.replaceAll('\u{202f}', ' ');
const banner = (difference: BodyDifference) => bannerText({ name: 'Liv', difference, due: null }, format);
const told = (newest: ReturnType<typeof exampleAthlete>) =>
  differenceLines(bodyDifference(copy, newest)!, newest, format).map(plain);

describe('a difference of bodies, in words', () => {
  it('names what is taller, heavier, measured otherwise, limited', () => {
    const newest = exampleAthlete({
      statureM: 1.56,
      massKg: 48.5,
      tape: { footLength: { valueM: 0.24 } },
      limits: [{ joint: 'trunkForward', maxDeg: 20, reason: 'back' }],
    });
    expect(told(newest)).toEqual([
      '4.0 cm taller: 152.0 cm to 156.0 cm',
      '4.5 kg heavier',
      'Other measurements: Foot length',
      'Other personal limits',
    ]);
  });

  it('says shorter and lighter of a slip that was put right', () => {
    expect(told(exampleAthlete({ statureM: 1.5, massKg: 42 }))).toEqual([
      '2.0 cm shorter: 152.0 cm to 150.0 cm',
      '2.0 kg lighter',
    ]);
  });

  it('speaks of growth at the head of the bench only where there is some, and never of mass', () => {
    const grown = bodyDifference(copy, exampleAthlete({ statureM: 1.56, massKg: 52 }))!;
    expect(plain(banner(grown))).toBe('Liv has grown 4.0 cm since this fit.');
    const limits = exampleAthlete({
      statureM: 1.52,
      massKg: 44,
      limits: [{ joint: 'trunkForward', maxDeg: 20, reason: 'back' }],
    });
    expect(banner(bodyDifference(copy, limits)!)).toMatch(/other limits/);
    const heavier = bodyDifference(copy, exampleAthlete({ statureM: 1.52, massKg: 52 }))!;
    expect(plain(banner(heavier))).not.toMatch(/kg|heav/);
  });
});
