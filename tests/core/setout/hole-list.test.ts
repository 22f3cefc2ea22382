import { describe, expect, it } from 'vitest';
import type { HoleList, HoleRow } from '../../../core/setout/hole-list.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ROWS_OF_HOLES, type Wanted } from './invented-set-out.ts';

const padOf = (wanted: Wanted): HoleList => inventedSetOut(wanted).holes[0]!;
const restOf = (wanted: Wanted): HoleList => inventedSetOut(wanted).holes[1]!;
const rows = { hardware: ROWS_OF_HOLES };

describe('rows of holes at the hardware’s pitch', () => {
  it('stand a whole number of pitches apart, each setting the knee its number of pitches aft', () => {
    const pad = padOf(rows);
    const [first] = pad.rows;
    expect(pad.pitchMm).toBe(25);
    first!.holes.forEach((hole, k) => {
      expect(hole.number).toBe(first!.holes[0]!.number! + k);
      // The bolt lies straight under the knee: hole n at n pitches aft.
      expect(hole.at[0]).toBeCloseTo(-25 * hole.number!, 9);
    });
  });

  it('lie within the travel and leave none of it out', () => {
    const travel = [0.1, 0.26] as const;
    const { rows: made } = padOf({ hardware: { ...ROWS_OF_HOLES, padTravelM: [...travel] } });
    expect(made[0]!.holes.map(({ number }) => number)).toEqual([4, 5, 6, 7, 8, 9, 10]);
  });

  it('end with the board: no hole is listed where there is no wood to drill', () => {
    const { boat, frame } = inventedSetOut(rows).work;
    const short = { ...boat.floorboard, aftEndXM: frame.stationX - 0.8 };
    const listed = (board: Partial<typeof short>) => {
      const { fit, report, options } = inventedSetOut(rows).work;
      const cut = { ...fit, boat: { ...boat, floorboard: { ...boat.floorboard, ...board } } };
      return setOutSeat({ fit: cut, report, index: 0, options, words: english })!.holes[1]!.rows;
    };
    const aftmost = (given: readonly HoleRow[]) =>
      Math.min(...given.flatMap(({ holes }) => holes.map(({ at }) => at[0])));
    // Of 20 mm steps the last that leaves 4 mm of wood beside a hole of 6.5 mm.
    expect(aftmost(listed({}))).toBeLessThan(-800);
    expect(aftmost(listed(short))).toBeGreaterThanOrEqual(-800 + 3.25 + 4);
    expect(aftmost(listed(short))).toBeLessThan(-800 + 3.25 + 4 + 20);
    // Wherever the board ends within a step.
    for (let end = 0.78; end < 0.8; end += 0.002) {
      const room = aftmost(listed({ aftEndXM: frame.stationX - end })) + 1000 * end;
      expect(room).toBeGreaterThanOrEqual(3.25 + 4 - 1e-6);
      expect(room).toBeLessThan(3.25 + 4 + 20);
    }
    // The present place is listed even off the board, where a caution names it.
    expect(listed({ aftEndXM: frame.stationX - 0.5 })[0]!.holes.map(({ now }) => now)).toContain(true);
  });

  it('mark the hole in use, in both rows: 175 aft is the seventh at 25', () => {
    const pad = padOf(rows);
    expect(pad.numberNow).toBe(7);
    for (const { holes } of pad.rows) {
      expect(holes.filter(({ now }) => now).map(({ number }) => number)).toEqual([7]);
    }
  });

  it('use none between two holes, and name the nearest', () => {
    const { seat } = inventedSetOut().work;
    const pad = padOf({ ...rows, seat: { kneePad: { ...seat.kneePad, aftM: 0.185 } } });
    expect(pad.numberNow).toBeNull();
    expect(pad.nearest).toEqual({ number: 7, aftMm: 175 });
    expect(pad.rows.flatMap(({ holes }) => holes).some(({ now }) => now)).toBe(false);
    // The bolts stand where the setting is all the same.
    expect(pad.bolts[0]![0]).toBeCloseTo(-185, 9);
  });

  it('are two rows straight across from each other, left and right of the fitting', () => {
    for (const list of [padOf(rows), restOf(rows)]) {
      const [left, right] = list.rows;
      expect([left!.row, right!.row]).toEqual(['left', 'right']);
      notEmpty(left!.holes).forEach(({ at }, k) => {
        expect(at[0]).toBeCloseTo(right!.holes[k]!.at[0], 9);
        expect(at[1]).toBeGreaterThan(right!.holes[k]!.at[1]);
      });
    }
  });

  it('number the rest’s holes by its bearing edge: hole 31 of 20 stands 620 aft, its bolt further aft', () => {
    const rest = restOf(rows);
    expect(rest.numberNow).toBe(31);
    expect(rest.nearest!.aftMm).toBe(620);
    const { footAhead, depthBehind } = inventedSetOut(rows).fittings.rest;
    const middle = (footAhead - depthBehind) / 2;
    const bolt = rest.rows[0]!.holes.find(({ now }) => now)!.at;
    expect(bolt[0]).toBeCloseTo(-620 + middle * Math.cos((20 * Math.PI) / 180), 9);
  });

  it('have clearance over the bolt: 6.5 for a bolt of 6', () => {
    expect(padOf(rows).diameterMm).toBeCloseTo(6.5, 9);
    expect(padOf({ ...rows, options: { boltM: 0.008 } }).diameterMm).toBeCloseTo(8.5, 9);
  });

  it('are none at all where the travel holds none', () => {
    const pad = padOf({ hardware: { ...ROWS_OF_HOLES, padTravelM: [0.176, 0.19] } });
    expect(pad.nearest).toBeNull();
    expect(pad.rows.every(({ holes }) => holes.length === 0)).toBe(true);
  });
});

describe('hardware without rows', () => {
  it('has screws in pilot holes, all in use', () => {
    const pad = padOf({ hardware: { padHolePitchM: null } });
    expect(pad).toMatchObject({ pitchMm: null, tooFine: false, numberNow: null, diameterMm: 3 });
    expect(pad.rows.flatMap(({ holes }) => holes)).toHaveLength(4);
    expect(pad.rows.every(({ holes }) => holes.every(({ now, number }) => now && number === null))).toBe(
      true,
    );
  });

  it('with a pitch finer than holes can be has only the present bolts, and says so', () => {
    const pad = padOf({ hardware: { padHolePitchM: 0.008 } });
    expect(pad).toMatchObject({ tooFine: true, pitchMm: null, diameterMm: 6.5 });
    expect(pad.rows.flatMap(({ holes }) => holes)).toHaveLength(2);
    expect(padOf({ hardware: { padHolePitchM: 0.011 } }).tooFine).toBe(false);
  });
});

describe('holes for the other side', () => {
  it('are the mirror image', () => {
    const [left, right] = [padOf(rows), padOf({ ...rows, side: 'right' })];
    const places = (list: HoleList, hand: 1 | -1) =>
      list.rows
        .flatMap(({ holes }) => holes.map(({ at }) => `${at[0].toFixed(3)} ${(hand * at[1]).toFixed(3)}`))
        .sort();
    expect(places(right, -1)).toEqual(places(left, 1));
  });
});
