import { describe, expect, it } from 'vitest';
import { padFromStock, padInStock, restFromStock, restInStock } from '../../../core/document/from-stock.ts';
import { stockSchema } from '../../../core/document/stock-schema.ts';
import { exampleSeat } from '../example/example-fit.ts';

const stock = stockSchema.parse({
  pads: [
    { name: 'Low', lengthM: 0.24, widthM: 0.15, heightM: 0.08, recessDepthM: 0.02, foamGiveM: 0.006 },
    { name: 'High', lengthM: 0.26, widthM: 0.16, heightM: 0.13, recessDepthM: 0.025, foamGiveM: 0.01 },
  ],
  rests: [{ name: 'Steep', widthM: 0.15, heightM: 0.11, tiltDeg: 70 }],
});
const { kneePad, rearRest } = exampleSeat();

describe('a seat’s pad from the stock', () => {
  it('takes the piece’s size, recess and foam, and stays where it stands', () => {
    const made = padFromStock(kneePad, stock.pads[1]!);
    expect(made).toEqual({
      ...kneePad,
      lengthM: 0.26,
      foamM: 0.01,
      widthM: 0.16,
      heightM: 0.13,
      recessDepthM: 0.025,
      foamGiveM: 0.01,
    });
  });

  it('is known again, until it is made otherwise', () => {
    const made = padFromStock(kneePad, stock.pads[1]!);
    expect(padInStock(made, stock.pads)).toBe(1);
    expect(padInStock({ ...made, aftM: 0.3, recessTurnDeg: 3 }, stock.pads)).toBe(1);
    expect(padInStock({ ...made, heightM: 0.131 }, stock.pads)).toBe(-1);
    expect(padInStock(kneePad, [])).toBe(-1);
  });
});

describe('a seat’s rest from the stock', () => {
  it('takes width, height and tilt', () => {
    const made = restFromStock(rearRest, stock.rests[0]!);
    expect(made).toEqual({ ...rearRest, widthM: 0.15, heightM: 0.11, tiltDeg: 70 });
    expect(restInStock(made, stock.rests)).toBe(0);
    expect(restInStock({ ...made, tiltDeg: 60 }, stock.rests)).toBe(-1);
  });
});

describe('the stock', () => {
  it('counts one of each and a centimetre of foam where nobody says otherwise', () => {
    expect(stock.pads[0]).toMatchObject({ count: 1, foamM: 0.01 });
  });

  it('allows no pad that a seat would not', () => {
    const pad = { ...stock.pads[0], lengthM: 2 };
    expect(stockSchema.safeParse({ pads: [pad] }).success).toBe(false);
  });
});
