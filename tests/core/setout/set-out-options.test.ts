import { describe, expect, it } from 'vitest';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { padFromStock } from '../../../core/document/from-stock.ts';
import { kneePadSchema } from '../../../core/document/seat-schema.ts';
import { stockSchema } from '../../../core/document/stock-schema.ts';
import { makingOf, shelfPieces } from '../../../core/setout/set-out-options.ts';
import { inventedFit } from './invented-set-out.ts';

const [LOW] = stockSchema.parse({
  pads: [
    {
      name: 'Low',
      lengthM: 0.24,
      widthM: 0.15,
      heightM: 0.09,
      recessDepthM: 0.015,
      foamM: 0.015,
      foamGiveM: 0.01,
    },
  ],
}).pads;

function withPad(change: Partial<Fit['seats'][number]['kneePad']>, count = 1): Fit {
  const fit = inventedFit();
  const [seat] = fit.seats;
  return {
    ...fit,
    boat: { ...fit.boat, stock: { pads: [{ ...LOW!, count }], rests: [] } },
    seats: [{ ...seat!, kneePad: { ...seat!.kneePad, ...change } }],
  };
}

describe('how a seat is made', () => {
  it('is 10 mm foam, 6 mm bolts and an estimated knee where no document says otherwise', () => {
    expect(makingOf(inventedFit(), 0)).toEqual({ foamM: 0.01, boltM: 0.006, kneeBreadthM: null });
  });

  it('rests on athlete, pad and boat, so that two papers of one revision agree', () => {
    const fit = inventedFit();
    const [seat] = fit.seats;
    const athlete = athleteSchema.parse({ ...seat!.athlete!, kneeBreadthM: 0.112 });
    const made: Fit = {
      ...fit,
      boat: { ...fit.boat, hardware: { ...fit.boat.hardware, boltM: 0.008 } },
      seats: [{ ...seat!, athlete, kneePad: kneePadSchema.parse({ ...seat!.kneePad, foamM: 0.006 }) }],
    };
    expect(makingOf(made, 0)).toEqual({ foamM: 0.006, boltM: 0.008, kneeBreadthM: 0.112 });
  });

  it('takes 15 mm foam, not 10, from a pad of the stock that has 15', () => {
    const taken = padFromStock(inventedFit().seats[0]!.kneePad, LOW!);
    expect(makingOf(withPad(taken), 0).foamM).toBe(0.015);
  });

  it('finds that foam also for a fit that was made when pads did not keep it', () => {
    const { foamM: _, ...taken } = padFromStock(inventedFit().seats[0]!.kneePad, LOW!);
    const fit = withPad(taken);
    expect(shelfPieces(fit, 0).pad?.name).toBe('Low');
    expect(makingOf(fit, 0).foamM).toBe(0.015);
  });
});

describe('a pad on the shelf', () => {
  const taken = padFromStock(inventedFit().seats[0]!.kneePad, LOW!);

  it('is the piece that the seat’s pad is like in every size, foam too', () => {
    expect(shelfPieces(withPad(taken), 0).pad).toMatchObject({ name: 'Low' });
    expect(shelfPieces(withPad({ ...taken, heightM: 0.1 }), 0).pad).toBeNull();
    expect(shelfPieces(withPad({ ...taken, foamM: 0.01 }), 0).pad).toBeNull();
  });

  it('is none where the stock has none of it left', () => {
    expect(shelfPieces(withPad(taken, 0), 0).pad).toBeNull();
  });
});
