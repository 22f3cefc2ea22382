import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attractedTo, nearestHole, rounded, snapped } from '../../../../renderer/drawing/interaction/snap.ts';
import type { DragLimits } from '../../../../renderer/drawing/view/limits.ts';

const SEED = 17;
const limits: DragLimits = {
  least: 0,
  most: 0.4,
  utmost: [-0.6, 1.2],
  bandLeast: 0.15,
  bandMost: 0.2,
  pitch: null,
};
const how = { magnet: 0.03, snapStep: 0.001, still: 0.0001, free: false, start: 0.175 };
const pull = fc.double({ min: -3, max: 3, noNaN: true });

describe('a pulled value comes to rest', () => {
  it('inside the hardware’s travel, on a whole millimetre', () => {
    fc.assert(
      fc.property(pull, (asked) => {
        const rest = snapped(asked, limits, how);
        expect(rest).toBeGreaterThanOrEqual(0);
        expect(rest).toBeLessThanOrEqual(0.4);
        expect(Math.abs(rest * 1000 - Math.round(rest * 1000))).toBeLessThan(1e-6);
      }),
      { seed: SEED },
    );
  });

  it('with Alt held beyond the travel, but inside what can be', () => {
    expect(snapped(0.7, limits, { ...how, free: true })).toBe(0.7);
    expect(snapped(9, limits, { ...how, free: true })).toBe(1.2);
  });

  it('is not thrown back into a travel that it stood outside of', () => {
    expect(snapped(0.55, limits, { ...how, start: 0.55 })).toBe(0.55);
    expect(snapped(0.6, limits, { ...how, start: 0.55 })).toBe(0.55);
  });

  it('on a hole where there are holes, and off them with Alt', () => {
    const drilled = { ...limits, pitch: 0.02 };
    fc.assert(
      fc.property(pull, (asked) => {
        const rest = snapped(asked, drilled, how);
        expect(Math.abs(rest / 0.02 - Math.round(rest / 0.02))).toBeLessThan(1e-6);
      }),
      { seed: SEED },
    );
    expect(snapped(0.187, drilled, { ...how, free: true })).toBe(0.187);
  });

  it('where it was taken up when it is not pulled that way, on a millimetre or not', () => {
    expect(snapped(0.15203, limits, { ...how, start: 0.152 })).toBe(0.152);
    expect(snapped(0.16774, limits, { ...how, start: 0.1677 })).toBe(0.1677);
  });

  it('where it was taken up when the pull is no number', () => {
    expect(snapped(Number.NaN, limits, how)).toBe(0.175);
  });
});

describe('soft edges', () => {
  it('hold what comes near, and never push it back: the fitting follows the hand', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 0.25, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (a, d) => {
          expect(attractedTo(a + d, limits, 0.02)).toBeGreaterThanOrEqual(
            attractedTo(a, limits, 0.02) - 1e-12,
          );
        },
      ),
      { seed: SEED },
    );
    expect(Math.abs(attractedTo(0.153, limits, 0.03) - 0.15)).toBeLessThan(0.001);
    expect(attractedTo(0.175, limits, 1)).toBe(0.175);
  });

  it('are felt only near, and leave no jump where they end', () => {
    expect(attractedTo(0.3, limits, 0.03)).toBe(0.3);
    expect(attractedTo(0.2 + 0.005 - 1e-9, limits, 0.005)).toBeCloseTo(0.205, 6);
  });
});

describe('holes', () => {
  it('are counted from the datum and stay inside the travel', () => {
    expect(nearestHole(0.187, 0.025, { least: 0, most: 0.4 })).toBeCloseTo(0.175, 9);
    expect(nearestHole(0.5, 0.025, { least: 0, most: 0.41 })).toBeCloseTo(0.4, 9);
    expect(nearestHole(-1, 0.025, { least: 0.01, most: 0.4 })).toBeCloseTo(0.025, 9);
  });

  it('a travel too short for any hole leaves the value on a millimetre', () => {
    expect(nearestHole(0.0123, 0.1, { least: 0.01, most: 0.02 })).toBe(0.012);
  });
});

it('rounding leaves no dust of binary fractions', () => {
  expect(rounded(0.17500000000000002, 0.001)).toBe(0.175);
  expect(rounded(12.3, 0.5)).toBe(12.5);
});
