import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldShares, sharesOf, supportTriangle } from '../../../core/support/support-triangle.ts';
import { notEmpty } from '../../not-empty.ts';

const at = (x: number, y: number) => ({ x, y });
const triangle = (k: [number, number], r: [number, number], f: [number, number]) =>
  supportTriangle({ knee: at(...k), rearFoot: at(...r), frontFoot: at(...f) });
const sumOf = (shares: object) => Object.values(shares).reduce((sum: number, share) => sum + share, 0);

/** Right-angled: base 0.8 along x, height 0.6; its third side is 1.0 long. */
const rightAngled = triangle([0, 0], [0.8, 0], [0, 0.6]);

describe('the triangle of contacts', () => {
  it('has the area of half base by height', () => {
    expect(rightAngled.area).toBeCloseTo(0.24, 12);
    expect(rightAngled.inLine).toBe(false);
  });

  it('is a line when it is lower than a centimetre over its longest side', () => {
    expect(triangle([0, 0.009], [-0.5, 0], [0.5, 0]).inLine).toBe(true);
    expect(triangle([0, 0.011], [-0.5, 0], [0.5, 0]).inLine).toBe(false);
    expect(triangle([0.1, 0.1], [0.1, 0.1], [0.1, 0.1]).inLine).toBe(true);
  });
});

describe('shares that contacts can hold', () => {
  it('never pull: what would is 0, the others keep their proportion', () => {
    const held = heldShares({ knee: -0.1, rearFoot: 0.5, frontFoot: 0.6 });
    expect(held.knee).toBe(0);
    expect(held.rearFoot).toBeCloseTo(5 / 11, 12);
    expect(held.frontFoot).toBeCloseTo(6 / 11, 12);
  });
});

describe('shares over contacts in one line', () => {
  it('balance the moments along it: as a beam on three supports that share it as evenly as they can', () => {
    // Supports at −0.6, 0 and 0.6, weight at 0.1: a third each, and 0.1·x ÷ 0.72 on top.
    const shares = sharesOf(triangle([0, 0], [-0.6, 0], [0.6, 0]), at(0.1, 0.05));
    expect(shares.knee).toBeCloseTo(1 / 3, 12);
    expect(shares.rearFoot).toBeCloseTo(1 / 3 - 0.06 / 0.72, 12);
    expect(shares.frontFoot).toBeCloseTo(1 / 3 + 0.06 / 0.72, 12);
  });

  it('are told along the longest side, also where the third contact lies a little off it', () => {
    // The knee lies 9 mm off the line of the feet; places along that line alone count: 0, −0.5 and 0.5, the weight at 0.1.
    const shares = sharesOf(triangle([0, 0.009], [-0.5, 0], [0.5, 0]), at(0.1, 0.05));
    expect(shares.knee).toBeCloseTo(1 / 3, 12);
    expect(shares.rearFoot).toBeCloseTo(1 / 3 - 0.05 / 0.5, 12);
    expect(shares.frontFoot).toBeCloseTo(1 / 3 + 0.05 / 0.5, 12);
  });

  it('stay of the size of shares whatever the line, and sum to 1, seed 29', () => {
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    const nearly = fc.double({ min: -0.004, max: 0.004, noNaN: true });
    fc.assert(
      fc.property(place, place, place, fc.tuple(nearly, nearly, nearly), place, (a, b, c, offs, g) => {
        const line = triangle([a, offs[0]], [b, offs[1]], [c, offs[2]]);
        fc.pre(line.inLine);
        const shares = sharesOf(line, at(g, 0.3));
        expect(sumOf(shares)).toBeCloseTo(1, 9);
        const spread = Math.max(a, b, c) - Math.min(a, b, c);
        fc.pre(spread > 0.1);
        const moment = shares.knee * a + shares.rearFoot * b + shares.frontFoot * c;
        // Along the line itself, which lies at most 0.008 in 0.1 askew.
        expect(Math.abs(moment - g)).toBeLessThan(0.1);
        for (const share of Object.values(shares)) expect(Math.abs(share)).toBeLessThan(1 + 4 / spread);
      }),
      { seed: 29 },
    );
  });

  it('in one point: a third each', () => {
    const shares = sharesOf(triangle([0.1, 0], [0.1, 0], [0.1, 0]), at(0.5, 0));
    for (const share of notEmpty(Object.values(shares))) expect(share).toBeCloseTo(1 / 3, 12);
  });
});
