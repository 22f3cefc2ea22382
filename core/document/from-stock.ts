import type { KneePad, RearRest } from './seat-schema.ts';
import type { StockPad, StockRest } from './stock-schema.ts';

/** A seat's knee pad made of a piece of the stock: its size, recess and foam; where it stands and how it turns stay. */
export function padFromStock(pad: KneePad, piece: StockPad): KneePad {
  const { lengthM, widthM, heightM, recessDepthM, foamGiveM } = piece;
  return { ...pad, lengthM, widthM, heightM, recessDepthM, foamGiveM };
}

/** A seat's rear rest made of a piece of the stock, likewise. */
export function restFromStock(rest: RearRest, piece: StockRest): RearRest {
  const { widthM, heightM, tiltDeg } = piece;
  return { ...rest, widthM, heightM, tiltDeg };
}

/** Lengths nearer than this are one, metres: a tenth of a millimetre, far below what is cut. */
const SAME_M = 1e-4;

const sameAs = <T extends object>(now: T, piece: T) =>
  Object.entries(piece).every(
    ([key, value]) => Math.abs((now as Record<string, number>)[key]! - value) < SAME_M,
  );

/** Place in the stock of the piece that a seat's pad is made like; -1 if it is like none. */
export function padInStock(pad: KneePad, pieces: readonly StockPad[]): number {
  return pieces.findIndex(({ lengthM, widthM, heightM, recessDepthM, foamGiveM }) =>
    sameAs(pad, { lengthM, widthM, heightM, recessDepthM, foamGiveM } as KneePad),
  );
}

/** Place in the stock of the piece that a seat's rest is made like; -1 if it is like none. */
export function restInStock(rest: RearRest, pieces: readonly StockRest[]): number {
  return pieces.findIndex(({ widthM, heightM, tiltDeg }) =>
    sameAs(rest, { widthM, heightM, tiltDeg } as RearRest),
  );
}
