import fc from 'fast-check';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { STANCE_UNKNOWNS, type Stance } from '../../../core/posture/stance.ts';
import { exampleSeat } from '../example/example-fit.ts';

export const degrees = (r: number) => (r * 180) / Math.PI;
export const frame = { stationX: 0, floorZ: 0.03, side: 'left' as const };

export function place(seat: Seat, more: { pad?: object; rest?: object; foot?: object }): Seat {
  return {
    ...seat,
    kneePad: { ...seat.kneePad, ...more.pad },
    rearRest: { ...seat.rearRest, ...more.rest },
    frontFoot: { ...seat.frontFoot, ...more.foot },
  };
}

export const unknownsOf = (s: Stance) => STANCE_UNKNOWNS.map((name) => s.angles[name]);

/** Bodies and fittings over the whole plausible range and somewhat past it. */
export const plausible = fc
  .record({
    stature: fc.double({ min: 1.3, max: 2.1, noNaN: true }),
    sex: fc.constantFrom('male' as const, 'female' as const, 'unspecified' as const),
    aft: fc.double({ min: 0.1, max: 0.26, noNaN: true }),
    out: fc.double({ min: 0, max: 0.1, noNaN: true }),
    height: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
    restBehind: fc.double({ min: 0.2, max: 0.3, noNaN: true }),
    restOut: fc.double({ min: -0.2, max: 0, noNaN: true }),
    footAhead: fc.double({ min: 0.22, max: 0.36, noNaN: true }),
    footOut: fc.double({ min: -0.14, max: 0.02, noNaN: true }),
    toeOut: fc.double({ min: -10, max: 25, noNaN: true }),
  })
  .map((p) => ({
    body: estimateBody({ stature: p.stature, mass: 22 * p.stature ** 2, sex: p.sex }),
    seat: place(exampleSeat(), {
      pad: { aftM: p.aft, outM: p.out, heightM: p.height },
      rest: { aftM: p.aft + p.restBehind * p.stature, outM: p.restOut },
      foot: { forwardM: p.footAhead * p.stature - p.aft, outM: p.footOut, toeOutDeg: p.toeOut },
    }),
  }));
