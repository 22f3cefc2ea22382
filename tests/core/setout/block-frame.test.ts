import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BlockFrame, bowInBlock, toBlock, toFloor } from '../../../core/setout/block-frame.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { distance } from './read-shapes.ts';

const SEED = 20260504;
/** What doubles lose over a few metres in millimetres. */
const DUST_MM = 1e-9;

const coordinate = fc.double({ min: -3000, max: 3000, noNaN: true });
const point = fc.tuple(coordinate, coordinate);
const frame = fc
  .record({ origin: point, turn: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }) })
  .map((made): BlockFrame => made);

describe('a block’s own frame on the floorboard', () => {
  it('turned by a right angle carries forward to port and port to aft', () => {
    const place: BlockFrame = { origin: [100, 20], turn: Math.PI / 2 };
    expect(toFloor(place, [10, 0])[0]).toBeCloseTo(100, 9);
    expect(toFloor(place, [10, 0])[1]).toBeCloseTo(30, 9);
    expect(toFloor(place, [0, 10])[0]).toBeCloseTo(90, 9);
    expect(toFloor(place, [0, 10])[1]).toBeCloseTo(20, 9);
  });

  it('turned by 30° puts a point 200 ahead where a set square puts it: 173.2 along, 100 across', () => {
    const [x, y] = toFloor({ origin: [0, 0], turn: Math.PI / 6 }, [200, 0]);
    expect(x).toBeCloseTo(100 * Math.sqrt(3), 9);
    expect(y).toBeCloseTo(100, 9);
  });

  it('is found back again', () => {
    fc.assert(
      fc.property(frame, point, (place, at) => {
        const back = toBlock(place, toFloor(place, at as MillimetrePoint));
        expect(distance(back, at as MillimetrePoint)).toBeLessThan(1e-6);
      }),
      { seed: SEED },
    );
  });

  it('keeps every distance', () => {
    fc.assert(
      fc.property(frame, point, point, (place, a, b) => {
        const there = distance(toFloor(place, a as MillimetrePoint), toFloor(place, b as MillimetrePoint));
        expect(Math.abs(there - distance(a as MillimetrePoint, b as MillimetrePoint))).toBeLessThan(1e-8);
      }),
      { seed: SEED },
    );
  });

  it('sees the bow as the direction that the floor calls forward', () => {
    fc.assert(
      fc.property(frame, (place) => {
        const bow = bowInBlock(place);
        const [x, y] = toFloor({ ...place, origin: [0, 0] }, bow);
        expect(Math.abs(x - 1)).toBeLessThan(DUST_MM);
        expect(Math.abs(y)).toBeLessThan(DUST_MM);
      }),
      { seed: SEED },
    );
  });
});
