import { describe, expect, it } from 'vitest';
import type { SetOutCaution } from '../../../core/setout/set-out-caution.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES, type Wanted } from './invented-set-out.ts';

const { seat } = inventedSetOut().work;
const cautions = (wanted: Wanted = {}) => inventedSetOut(wanted).cautions;
const find = <C extends SetOutCaution['code']>(code: C, wanted: Wanted = {}) =>
  cautions(wanted).find((caution) => caution.code === code) as
    | Extract<SetOutCaution, { code: C }>
    | undefined;

describe('what a builder is told before cutting', () => {
  it('is that nobody measured the knee, first of all, until somebody has', () => {
    expect(cautions()[0]!.code).toBe('knee-estimated');
    expect(find('knee-estimated', { options: { kneeBreadthM: 0.104 } })).toBeUndefined();
  });

  it('is which hole is nearest when the setting stands between two', () => {
    const wanted = { hardware: ROWS_OF_HOLES, seat: { kneePad: { ...seat.kneePad, aftM: 0.183 } } };
    expect(find('between-holes', wanted)).toEqual({
      code: 'between-holes',
      fitting: 'kneePad',
      aftMm: 183,
      nearestMm: 175,
      number: 7,
    });
    expect(find('between-holes', { hardware: ROWS_OF_HOLES })).toBeUndefined();
  });

  it('is how far beyond its travel a fitting stands', () => {
    const wanted = { hardware: { padTravelM: [0.1, 0.16] as [number, number] } };
    expect(find('outside-travel', wanted)!.byMm).toBeCloseTo(15, 6);
    expect(find('outside-travel')).toBeUndefined();
  });

  it('is that no hole falls within the travel, or that holes would run into one another', () => {
    const none = { hardware: { ...ROWS_OF_HOLES, padTravelM: [0.176, 0.19] as [number, number] } };
    expect(find('no-hole-in-travel', none)!.fitting).toBe('kneePad');
    expect(find('pitch-too-fine', { hardware: { restHolePitchM: 0.006 } })!.fitting).toBe('rearRest');
  });

  it('is that one bolt alone would let a narrow block turn', () => {
    const narrow = { ...seat.kneePad, widthM: 0.06 };
    expect(find('one-bolt', { hardware: ROWS_OF_HOLES, seat: { kneePad: narrow } })!.fitting).toBe('kneePad');
  });

  it('is that a hole misses the floorboard', () => {
    expect(find('hole-off-board', { hardware: ROWS_OF_HOLES, floorWidthM: 0.06 })).toBeDefined();
    expect(find('hole-off-board', { hardware: ROWS_OF_HOLES, floorWidthM: 0.6 })).toBeUndefined();
  });

  it('is how much wood is left beside and under the recess', () => {
    const slim = { ...seat.kneePad, widthM: 0.12 };
    const { wallMm } = find('thin-wall', { seat: { kneePad: slim } })!;
    const { pad } = inventedSetOut({ seat: { kneePad: slim } }).fittings;
    const foam = 10;
    // Half of the block less half of the cut at its top: an ellipse widened by the foam.
    const { kneeDepth, halfBreadth, depth } = pad.recess;
    const half = (halfBreadth + foam) * Math.sqrt(1 - ((kneeDepth - depth) / (kneeDepth + foam)) ** 2);
    expect(wallMm).toBeCloseTo(60 - half, 6);
    const low = { ...seat.kneePad, heightM: 0.02 };
    expect(find('thin-floor', { seat: { kneePad: low } })!.woodMm).toBeCloseTo(10, 9);
    expect(find('thin-floor', { seat: { kneePad: low }, options: { foamM: 0 } })).toBeUndefined();
  });

  it('is that the shank does not lie along the recess', () => {
    const off = find('shank-off-axis', { seat: { kneePad: { ...seat.kneePad, recessTurnDeg: 25 } } })!;
    const { shankOffAxis } = inventedSetOut({
      seat: { kneePad: { ...seat.kneePad, recessTurnDeg: 25 } },
    }).fittings.pad;
    expect(off.offDeg).toBeCloseTo((Math.abs(shankOffAxis) * 180) / Math.PI, 9);
    expect(off.offDeg).toBeGreaterThan(5);
  });

  it('is what the plan leaves out: a strap that lets go, a brace, a floor with grip', () => {
    const bare: Wanted = {
      seat: {
        rearRest: { ...seat.rearRest, strap: 'fixed' },
        kneePad: { ...seat.kneePad, braced: false },
        frontFoot: { ...seat.frontFoot, nonSlip: false },
      },
    };
    expect(find('strap', bare)).toEqual({ code: 'strap', strap: 'fixed' });
    expect(find('not-braced', bare)).toBeDefined();
    expect(find('not-non-slip', bare)).toBeDefined();
    for (const code of ['strap', 'not-braced', 'not-non-slip'] as const) expect(find(code)).toBeUndefined();
  });

  it('is that toes cannot stand under the floor', () => {
    const under = { ...ON_A_WEDGE, heightM: 0, wedgeDeg: -6 };
    expect(find('wedge-below-floor', { seat: { frontFoot: under } })).toBeDefined();
    expect(find('wedge-below-floor', { seat: { frontFoot: ON_A_WEDGE } })).toBeUndefined();
  });

  it('is how far the leg is short of a rest set out of its reach', () => {
    const far = { ...seat.rearRest, aftM: 0.95 };
    expect(find('no-reach', { seat: { rearRest: far } })!.byMm).toBeGreaterThan(50);
  });
});
