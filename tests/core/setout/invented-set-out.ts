import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import type { Side } from '../../../core/frame/mirror.ts';
import { type SeatSetOut, setOutSeat } from '../../../core/setout/set-out.ts';
import type { SetOutOptions } from '../../../core/setout/set-out-options.ts';
import type { Words } from '../../../core/text/words.ts';
import { english } from '../../english.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

type Hardware = Fit['boat']['hardware'];

/** A made-up seat to be built: its fittings, side, hardware and the builder's choices. */
export interface Wanted {
  readonly side?: Side;
  readonly seat?: Partial<Seat>;
  readonly hardware?: Partial<Hardware>;
  readonly options?: Partial<SetOutOptions>;
  readonly floorWidthM?: number;
  readonly words?: Words;
}

/** A made-up fit in a boat with the wanted hardware. */
export function inventedFit({ side = 'left', seat = {}, hardware = {}, floorWidthM }: Wanted = {}): Fit {
  const fit = exampleFit([
    exampleSeat({ side, athlete: exampleAthlete({ side, name: 'Žofie Łuczak' }), ...seat }),
  ]);
  return {
    ...fit,
    boat: {
      ...fit.boat,
      hardware: { ...fit.boat.hardware, ...hardware },
      floorboard: withWidth(fit.boat.floorboard, floorWidthM),
    },
  };
}

/** A board of one width all along, where a width is wanted. */
function withWidth({ outline, ...board }: Fit['boat']['floorboard'], widthM?: number) {
  return widthM === undefined ? { ...board, outline } : { ...board, widthM };
}

/** The set-out of a made-up seat. */
export function inventedSetOut(wanted: Wanted = {}): SeatSetOut {
  const fit = madeWith(inventedFit(wanted), wanted.options ?? {});
  const { units = 'mm' } = wanted.options ?? {};
  const { words = english } = wanted;
  const out = setOutSeat({ fit, report: valuesOf(fit), index: 0, options: { units }, words });
  if (!out) throw new Error('the made-up seat is empty');
  return out;
}

/** A fit whose documents say how its first seat is made: foam, bolts, the knee across its knuckles. */
function madeWith(fit: Fit, { foamM, boltM, kneeBreadthM }: Partial<SetOutOptions>): Fit {
  const [first, ...others] = fit.seats;
  if (!first?.athlete) throw new Error('the made-up seat is empty');
  const athlete = kneeBreadthM ? { ...first.athlete, kneeBreadthM } : first.athlete;
  const kneePad = foamM === undefined ? first.kneePad : { ...first.kneePad, foamM };
  const hardware = boltM === undefined ? fit.boat.hardware : { ...fit.boat.hardware, boltM };
  return { ...fit, boat: { ...fit.boat, hardware }, seats: [{ ...first, athlete, kneePad }, ...others] };
}

/** Hardware with rows of holes. */
export const ROWS_OF_HOLES = { padHolePitchM: 0.025, restHolePitchM: 0.02 } as const;

/** A front foot on a wedge, toes out. */
export const ON_A_WEDGE = {
  forwardM: 0.4,
  outM: -0.06,
  heightM: 0.01,
  toeOutDeg: 6,
  wedgeDeg: 5,
  nonSlip: true,
} as const;
