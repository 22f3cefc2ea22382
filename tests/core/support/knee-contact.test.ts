import { describe, expect, it } from 'vitest';
import { kneeContactArea } from '../../../core/support/knee-contact.ts';
import { exampleSeat } from '../example/example-fit.ts';

const pad = exampleSeat().kneePad;
const wide = { ...pad, widthM: 0.5, foamGiveM: 0.008 };
const squareCentimetres = (area: number) => area * 1e4;

describe('area under the knee', () => {
  it('of a 60 mm knee: 38 cm² on a flat pad, 101 cm² in a recess of 30 mm', () => {
    // π(2·6·1.1 − 1.1²) = 37.7 and π(2·6·4.1 − 4.1²) = 101.8.
    expect(squareCentimetres(kneeContactArea({ ...wide, recessDepthM: 0 }, 0.06))).toBeCloseTo(37.67, 1);
    expect(squareCentimetres(kneeContactArea({ ...wide, recessDepthM: 0.03 }, 0.06))).toBeCloseTo(101.76, 1);
  });

  it('is never more than the whole of the knee, however deep the recess', () => {
    const whole = Math.PI * 0.05 ** 2;
    expect(kneeContactArea({ ...wide, recessDepthM: 0.06 }, 0.05)).toBeCloseTo(whole, 12);
  });

  it('is no wider than the pad', () => {
    const narrow = { ...wide, recessDepthM: 0.03, widthM: 0.08 };
    expect(kneeContactArea(narrow, 0.06)).toBeCloseTo(Math.PI * 0.04 ** 2, 12);
  });

  it('grows with the recess, the foam and the knee', () => {
    const area = (more: Partial<typeof pad>, radius = 0.06) => kneeContactArea({ ...wide, ...more }, radius);
    expect(area({ recessDepthM: 0.02 })).toBeGreaterThan(area({ recessDepthM: 0.01 }));
    expect(area({ foamGiveM: 0.02 })).toBeGreaterThan(area({ foamGiveM: 0.008 }));
    expect(area({}, 0.07)).toBeGreaterThan(area({}, 0.06));
  });
});
