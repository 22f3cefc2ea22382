import { describe, expect, it } from 'vitest';
import { halfWidthAt } from '../../../core/setout/knee-recess.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import type { SetOutCaution } from '../../../core/setout/set-out-caution.ts';
import { english } from '../../english.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedFit, inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES, type Wanted } from './invented-set-out.ts';

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

describe('where a caution begins', () => {
  const pad = (more: Partial<typeof seat.kneePad>): Wanted => ({
    seat: { kneePad: { ...seat.kneePad, ...more } },
  });
  /** Cautions of a seat on a board with this profile. */
  const onProfile = (profile: readonly { xM: number; heightM: number }[]) => {
    const fit = inventedFit();
    const floorboard = { ...fit.boat.floorboard, profile: [...profile] };
    const sloped = { ...fit, boat: { ...fit.boat, floorboard } };
    const out = setOutSeat({
      fit: sloped,
      report: valuesOf(sloped),
      index: 0,
      options: { units: 'mm' },
      words: english,
    })!;
    return out.cautions.flatMap((caution) => (caution.code === 'floor-not-level' ? [caution] : []));
  };

  it('about wood: 12 mm beside a recess, 15 mm under it (common practice, no source)', () => {
    const wallOf = (widthM: number) => {
      const { work, fittings } = inventedSetOut(pad({ widthM }));
      const { recess, halfWidth } = fittings.pad;
      const foam = 1000 * work.options.foamM;
      return halfWidth - halfWidthAt(recess, 0, { level: recess.depth, foam })!;
    };
    // Half of any width more is wood.
    const exact = 0.14 + (2 * (12 - wallOf(0.14))) / 1000;
    expect(find('thin-wall', pad({ widthM: exact - 0.0002 }))!.wallMm).toBeCloseTo(11.9, 6);
    expect(find('thin-wall', pad({ widthM: exact + 0.0002 }))).toBeUndefined();
    expect(find('thin-floor', pad({ heightM: 0.0249 }))!.woodMm).toBeCloseTo(14.9, 6);
    expect(find('thin-floor', pad({ heightM: 0.0251 }))).toBeUndefined();
  });

  it('about a shank: 5° off the recess’s axis (our own estimate)', () => {
    const axis = (recessTurnDeg: number) => inventedSetOut(pad({ recessTurnDeg })).fittings.pad.shankOffAxis;
    // The leg stays where it is: the recess turns by what it is set to.
    const straight = 12 + (axis(12) * 180) / Math.PI;
    for (const way of [-1, 1]) {
      expect(find('shank-off-axis', pad({ recessTurnDeg: straight + way * 5.1 }))!.offDeg).toBeCloseTo(
        5.1,
        6,
      );
      expect(find('shank-off-axis', pad({ recessTurnDeg: straight + way * 4.9 }))).toBeUndefined();
    }
  });

  it('about travel: half a millimetre past its end', () => {
    const past = (byM: number) => find('outside-travel', { hardware: { padTravelM: [0, 0.175 - byM] } });
    expect(past(0.0006)!.byMm).toBeCloseTo(0.6, 6);
    expect(past(0.0004)).toBeUndefined();
  });

  it('about a floor that is not level: 2 mm, at each fitting’s own place', () => {
    // Up by 1 cm each metre forward: the pad 17.5 cm aft lies 1.75 mm low, the rest 62 cm aft 6.2 mm, the heel 40 cm
    // forward 4 mm high.
    const slope = (rise: number) => onProfile([-1, 1].map((xM) => ({ xM, heightM: 0.06 + rise * xM })));
    expect(slope(0.01)).toEqual([
      { code: 'floor-not-level', part: 'rearRest', byMm: expect.closeTo(-6.2, 6) },
      { code: 'floor-not-level', part: 'frontFoot', byMm: expect.closeTo(4, 6) },
    ]);
    expect(slope(0.012)[0]).toEqual({
      code: 'floor-not-level',
      part: 'kneePad',
      byMm: expect.closeTo(-2.1, 6),
    });
    expect(slope(0)).toEqual([]);
  });

  it('about a base that is cut to the hull: half a millimetre', () => {
    const { work } = inventedSetOut();
    const bevelled = (byM: number) => {
      const quantities = work.report.quantities.map((q) => (q.id === 'padBevel' ? { ...q, value: byM } : q));
      const report = { ...work.report, quantities };
      return setOutSeat({ ...work, report, options: { units: 'mm' } })!.cautions.find(
        (caution) => caution.code === 'bevel' && caution.fitting === 'kneePad',
      );
    };
    expect(bevelled(0.0006)).toMatchObject({ byMm: 0.6 });
    expect(bevelled(0.0004)).toBeUndefined();
  });
});
