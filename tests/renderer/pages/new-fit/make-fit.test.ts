import { describe, expect, it } from 'vitest';
import type { KneltFit } from '../../../../app/contract/records.ts';
import {
  chooseSeat,
  forgetChosen,
  newFitStore,
  returnAfterMaking,
} from '../../../../renderer/pages/new-fit/chosen.ts';
import { makeFit } from '../../../../renderer/pages/new-fit/make-fit.ts';
import { ownSingle } from '../../../../renderer/pages/new-fit/own-singles.ts';
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

  it('begins a crew seat from the athlete’s own single, and a single from nothing but the body', () => {
    const athlete = exampleAthlete();
    const own = makeFit({ name: 'Own', boat: exampleBoat(1), starters: [{ athlete, side: 'left' }] });
    const [seat] = own.seats;
    const single = {
      ...own,
      seats: [{ ...seat!, rearRest: { ...seat!.rearRest, turnDeg: 25, widthM: 0.15 } }],
    };
    const begun = (places: 1 | 2, from: typeof single | null) =>
      makeFit({
        name: 'Begun',
        boat: exampleBoat(places),
        starters: [{ athlete, side: 'left', single: from }],
      }).seats[0]!;
    expect(begun(2, single).rearRest.widthM).toBe(0.15);
    expect(begun(2, null).rearRest.widthM).not.toBe(0.15);
    expect(begun(2, single).athlete?.name).toBe(athlete.name);
    expect(begun(1, single)).toEqual(begun(1, null));
  });

  it('takes the single that was changed last, none that is archived, no crew', () => {
    const made = makeFit({ name: 'Single', boat: exampleBoat(1), starters: [] });
    const knelt = (name: string, places: number, archived: boolean): KneltFit => ({
      id: '00000000-0000-4000-8000-000000000000',
      seat: 0,
      fit: { ...made, name, seats: Array(places).fill(made.seats[0]) },
      archived,
      changedAt: '2026-01-01T00:00:00.000Z',
    });
    const fits = [
      knelt('Crew', 2, false),
      knelt('Old', 1, true),
      knelt('Last', 1, false),
      knelt('First', 1, false),
    ];
    expect(ownSingle(fits)?.name).toBe('Last');
    expect(ownSingle(fits.slice(0, 2))).toBeNull();
  });

  it('takes up what was made for it elsewhere, and only that', () => {
    forgetChosen();
    expect(returnAfterMaking('athlete', 'a')).toBeNull();
    newFitStore.setState({ awaited: { what: 'athlete', seat: 1 } });
    chooseSeat(0, { athleteId: 'first' });
    expect(returnAfterMaking('athlete', 'second')).toEqual({ page: 'new-fit' });
    expect(newFitStore.getState().seats.map(({ athleteId }) => athleteId)).toEqual(['first', 'second']);
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
