import type { KneePad, RearRest } from './seat-schema.ts';
import type { StockPad, StockRest } from './stock-schema.ts';

/** A seat's knee pad with the size, recess and foam of a piece of the stock. Its place and turn stay. */
export function padFromStock(pad: KneePad, piece: StockPad): KneePad {
  const { lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM } = piece;
  return { ...pad, lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM };
}

/** A seat's rear rest with the size of a piece of the stock. Its place and turn stay. */
export function restFromStock(rest: RearRest, piece: StockRest): RearRest {
  const { widthM, heightM, tiltDeg } = piece;
  return { ...rest, widthM, heightM, tiltDeg };
}

/** Lengths that differ by less than this are the same, metres: a tenth of a millimetre, finer than any cut. */
const SAME_M = 1e-4;

/** Whether a fitting has the sizes of a piece, within `SAME_M`. */
const sameAs = (now: object, piece: object) =>
  Object.entries(piece).every(
    ([key, value]) => Math.abs((now as Record<string, number>)[key]! - value) < SAME_M,
  );

/** Index of the piece of stock that has a seat's pad's sizes; −1 if none has. A pad without a foam thickness matches any. */
export function padInStock(pad: KneePad, pieces: readonly StockPad[]): number {
  return pieces.findIndex(({ lengthM, widthM, heightM, recessDepthM, foamM, foamGiveM }) =>
    sameAs(
      { ...pad, foamM: pad.foamM ?? foamM },
      { lengthM, widthM, heightM, recessDepthM, foamGiveM, foamM },
    ),
  );
}

/** Index of the piece of stock that has a seat's rest's sizes; −1 if none has. */
export function restInStock(rest: RearRest, pieces: readonly StockRest[]): number {
  return pieces.findIndex(({ widthM, heightM, tiltDeg }) =>
    sameAs(rest, { widthM, heightM, tiltDeg } as RearRest),
  );
}
