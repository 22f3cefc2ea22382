import type { KneePad, RearRest } from './seat-schema.ts';
import type { StockPad, StockRest } from './stock-schema.ts';

/** A seat's knee pad made of a piece of the stock: its size, recess and foam with its thickness; where it stands and how it turns stay. */
export function padFromStock(pad: KneePad, piece: StockPad): KneePad {
  const { lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM } = piece;
  return { ...pad, lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM };
}

/** A seat's rear rest made of a piece of the stock, likewise. */
export function restFromStock(rest: RearRest, piece: StockRest): RearRest {
  const { widthM, heightM, tiltDeg } = piece;
  return { ...rest, widthM, heightM, tiltDeg };
}

/** Lengths nearer than this are one, metres: a tenth of a millimetre, far below what is cut. */
const SAME_M = 1e-4;

/** Whether a fitting has a piece's sizes, to what can be sawn. */
const sameAs = (now: object, piece: object) =>
  Object.entries(piece).every(
    ([key, value]) => Math.abs((now as Record<string, number>)[key]! - value) < SAME_M,
  );

/** Place in the stock of the piece that a seat's pad is made like; -1 if it is like none. Foam that is not said fits any. */
export function padInStock(pad: KneePad, pieces: readonly StockPad[]): number {
  return pieces.findIndex(({ lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM }) =>
    sameAs(
      { ...pad, foamM: pad.foamM ?? foamM },
      { lengthM, widthM, heightM, recessDepthM, foamGiveM, foamM },
    ),
  );
}

/** Place in the stock of the piece that a seat's rest is made like; -1 if it is like none. */
export function restInStock(rest: RearRest, pieces: readonly StockRest[]): number {
  return pieces.findIndex(({ widthM, heightM, tiltDeg }) =>
    sameAs(rest, { widthM, heightM, tiltDeg } as RearRest),
  );
}
