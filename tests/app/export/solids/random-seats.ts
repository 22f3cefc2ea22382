import fc from 'fast-check';
import type { Seat } from '../../../../core/document/seat-schema.ts';
import type { SeatSetOut } from '../../../../core/setout/set-out.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../../../core/setout/invented-set-out.ts';

const { seat } = inventedSetOut().work;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Seats at random, within what blocks are made for: either side, screwed or bolted, with and without foam. */
export const randomSeats = fc.record({
  side: fc.constantFrom('left' as const, 'right' as const),
  hardware: fc.constantFrom({}, ROWS_OF_HOLES),
  foamM: between(0, 0.015),
  kneePad: fc
    .record({
      aftM: between(0.05, 0.3),
      outM: between(-0.02, 0.1),
      heightM: between(0.05, 0.18),
      recessTurnDeg: between(-10, 30),
      recessDepthM: between(0.005, 0.035),
      lengthM: between(0.2, 0.32),
      widthM: between(0.14, 0.22),
    })
    .map((pad): Seat['kneePad'] => ({ ...seat.kneePad, ...pad })),
  rearRest: fc
    .record({ heightM: between(0.03, 0.1), tiltDeg: between(30, 90), widthM: between(0.08, 0.2) })
    .map((rest): Seat['rearRest'] => ({ ...seat.rearRest, ...rest })),
});

/** The set-out of a random seat, its front foot on a wedge. */
export function randomSetOut({
  side,
  hardware,
  foamM,
  ...fittings
}: typeof randomSeats extends fc.Arbitrary<infer T> ? T : never): SeatSetOut {
  return inventedSetOut({ side, hardware, options: { foamM }, seat: { ...fittings, frontFoot: ON_A_WEDGE } });
}
