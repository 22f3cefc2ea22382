import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { FIT_FORMAT, fitSchema } from '../../../core/document/fit-schema.ts';
import { boatState, massesAboard } from '../../../core/evaluation/boat-state.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { seatFrame, solveSeat } from '../../../core/evaluation/seat-state.ts';
import { exampleAthlete, exampleSeat } from '../example/example-fit.ts';

const L = 9;
const B = 0.52;
const D = 0.4;

/** A box-shaped four: the one hull whose trim anybody can work out with a pencil. */
const box = {
  name: 'Box four',
  massKg: 30,
  centre: { xM: 0, zM: 0.15 },
  hull: {
    kind: 'offsets' as const,
    stations: Array.from({ length: 19 }, (_, i) => ({
      xM: -L / 2 + (L * i) / 18,
      section: [
        [0, 0],
        [B / 2, 0],
        [B / 2, D],
      ] as [number, number][],
    })),
  },
  floorboard: { heightM: 0.04, widthM: 0.3, aftEndXM: -3.4, foreEndXM: 3.4 },
  seats: [2.1, 0.7, -0.7, -2.1].map((stationM) => ({ stationM })),
};

const seats = (['left', 'right', 'left', 'right'] as const).map((side) =>
  exampleSeat({ athlete: exampleAthlete({ side, massKg: 75 }), side }),
);
const fit = fitSchema.parse({
  format: FIT_FORMAT,
  name: 'Symmetric four',
  boat: box,
  seats,
  water: { densityKgM3: 1000 },
});

describe('a four of identical paddlers in a symmetric hull', () => {
  const report = evaluateFit(fit);

  it('trims to its hand-computed value: x_G = a(BM_L + z_B − KG) for a box, solved for the slope a', () => {
    // Box (any textbook; closed form in the reference values): T = V/LB, z_B = T/2, BM_L = L²/12T, exact to a² order.
    const states = fit.seats.map((seat, i) =>
      solveSeat({ seat, body: bodyOfAthlete(seat.athlete!), frame: seatFrame(fit.boat, seat, i) }),
    );
    const masses = massesAboard(boatState(fit), states, 'ready');
    const mass = masses.reduce((sum, m) => sum + m.mass, 0);
    const xG = masses.reduce((sum, m) => sum + m.mass * m.x, 0) / mass;
    const kG = masses.reduce((sum, m) => sum + m.mass * m.z, 0) / mass;
    const T = mass / (1000 * L * B);
    let a = 0;
    for (let i = 0; i < 20; i++) a = xG / (L ** 2 / (12 * T) + T / 2 + (a ** 2 * L ** 2) / (24 * T) - kG);
    const afloat = report.afloat.ready;
    if (afloat.kind !== 'afloat') throw new Error('the box four does not float');
    expect(Math.tan(afloat.trim)).toBeCloseTo(-a, 6);
    expect(afloat.draft).toBeCloseTo(T, 4);
  });

  it('alternating sides hold no side moment: two and two cancel to the last bit that matters', () => {
    expect(Math.abs(report.balance!.steadyMoment)).toBeLessThan(1e-9);
  });
});
