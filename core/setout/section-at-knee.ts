import type { Hull } from '../hull/hull.ts';
import { inPart } from '../parts/part.ts';
import { sectionOfPart } from '../parts/part-section.ts';
import { millimetres } from '../text/sheet-length.ts';
import { bedHeight, skinUnder } from './block-bed.ts';
import { hollowLevel } from './recess-floor.ts';
import type { SeatSetOut } from './set-out.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { workParts } from './work-parts.ts';

/** Places across the boat at which block and hollow are read. */
const READINGS = 64;

/** The pad block cut straight across the boat at K. Points are [to port, over the hull's lowest point], millimetres. */
export interface SectionAtKnee {
  /** The block as it is made: its base scribed to the hull, standing on its rails. */
  readonly block: readonly MillimetrePoint[];
  /** Surface of the finished hollow, and of the wood under its foam, from starboard to port. */
  readonly finished: readonly MillimetrePoint[];
  /** The hollow as it is cut, deeper by the foam. */
  readonly wood: readonly MillimetrePoint[];
}

/**
 * The true section at K. The block is turned, so that the cut runs aslant through block and hollow: a block 16 cm wide turned by
 * 12° is 164 mm wide there, and its hollow wider than square to its axis.
 */
export function sectionAtKnee(out: SeatSetOut, hull: Hull): SectionAtKnee {
  const { work, fittings } = out;
  const { pad } = fittings;
  const part = workParts(work).kneePad;
  const floor = millimetres(work.frame.floorZ);
  const { x } = part.place;
  const ys = sectionOfPart(part, x).map(({ y }) => y);
  const [starboard, port] = [Math.min(...ys), Math.max(...ys)];
  const skin = skinUnder(work, part, hull);
  const places = Array.from({ length: READINGS + 1 }, (_, k) => {
    const y = starboard + ((port - starboard) * k) / READINGS;
    const { along, across } = inPart(part.place, { x, y });
    return { y: millimetres(y), along: millimetres(along), across: millimetres(across) };
  });
  const surface = (foam: number) =>
    places.map(({ y, along, across }): MillimetrePoint => {
      const level = hollowLevel(pad.recess, [along, across], foam);
      return [y, floor + pad.bearingHeight + level];
    });
  const base = places.map(({ y, along, across }): MillimetrePoint => {
    const cut = Math.max(bedHeight(work, part, along), skin(along, across, pad.topHeight));
    return [y, floor + cut];
  });
  const top = floor + pad.topHeight;
  return {
    block: [...base, [millimetres(port), top], [millimetres(starboard), top]],
    finished: surface(0),
    wood: surface(millimetres(work.options.foamM)),
  };
}
