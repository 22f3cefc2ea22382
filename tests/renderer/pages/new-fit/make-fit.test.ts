import { describe, expect, it } from 'vitest';
import {
  chooseSeat,
  chosen,
  forgetChosen,
  returnAfterMaking,
} from '../../../../renderer/pages/new-fit/chosen.ts';
import { makeFit } from '../../../../renderer/pages/new-fit/make-fit.ts';
import { exampleAthlete, exampleBoat } from '../../../core/example/example-fit.ts';

describe('a new fit', () => {
  it('puts each athlete on the chosen side, every fitting set, and leaves seats empty that nobody takes', () => {
    const fit = makeFit({
      name: 'Pair',
      boat: exampleBoat(2),
      starters: [
        { athlete: exampleAthlete({ name: 'Bow' }), side: 'right' },
        { athlete: null, side: 'left' },
      ],
    });
    expect(fit.seats.map(({ athlete, side }) => [athlete?.name ?? null, side])).toEqual([
      ['Bow', 'right'],
      [null, 'left'],
    ]);
    for (const seat of fit.seats) expect(seat.kneePad.aftM).toBeGreaterThan(0);
  });

  it('sets a longer body’s rear rest farther from its pad', () => {
    const restFromPad = (statureM: number) => {
      const [seat] = makeFit({
        name: 'Single',
        boat: exampleBoat(1),
        starters: [{ athlete: exampleAthlete({ statureM }), side: 'left' }],
      }).seats;
      return seat!.rearRest.aftM - seat!.kneePad.aftM;
    };
    expect(restFromPad(1.9)).toBeGreaterThan(restFromPad(1.6) + 0.02);
  });

  it('takes up what was made for it elsewhere, and only that', () => {
    forgetChosen();
    expect(returnAfterMaking('athlete', 'a')).toBeNull();
    chosen.setState({ awaited: { what: 'athlete', seat: 1 } });
    chooseSeat(0, { athleteId: 'first' });
    expect(returnAfterMaking('athlete', 'second')).toEqual({ page: 'new-fit' });
    expect(chosen.getState().seats.map(({ athleteId }) => athleteId)).toEqual(['first', 'second']);
    expect(returnAfterMaking('athlete', 'third')).toBeNull();
    forgetChosen();
  });

  it('brings an athlete’s own bands into the seat, and leaves a guardian’s consents in the roster', () => {
    const band = { quantity: 'frontKnee', min: 110, max: 130, reason: 'short hamstrings' };
    const athlete = exampleAthlete({
      bands: [band],
      consent: { bodyData: { by: 'A guardian', on: '2026-01-09' } },
    });
    const made = makeFit({ name: 'Made', boat: exampleBoat(), starters: [{ athlete, side: 'left' }] });
    expect(made.seats[0]?.bands).toEqual([band]);
    expect(JSON.stringify(made)).not.toContain('A guardian');
  });
});
