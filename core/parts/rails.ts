import { inPart, onPart, type PartPlace, type PartShape, type PlanPoint } from './part.ts';

/** Wood left between a bolt's middle and the edge of a block on rails, metres: two diameters of a 6 mm bolt (common practice). */
const EDGE = 0.012;

/** A pair of rails under a fitting, each as far from the centreline. Metres, boat frame. */
export interface RailPair {
  readonly fitting: 'kneePad' | 'rearRest';
  /** Middle to middle. */
  readonly apartM: number;
  /** Top of the rails over the floorboard's top. */
  readonly heightM: number;
  /** Diameter of the holes along a rail. */
  readonly holeM: number;
  /** Where the rails end; left out, they run as far as the board. */
  readonly aftEndXM?: number | undefined;
  /** As `aftEndXM`, at the fore end. */
  readonly foreEndXM?: number | undefined;
}

/** The stretch of boat along which a bolt may stand in the rails: stations of their ends, metres. */
export function railStretch(
  { aftEndXM, foreEndXM }: RailPair,
  board: { readonly aftEndXM: number; readonly foreEndXM: number },
): readonly [aft: number, fore: number] {
  const ends = [aftEndXM ?? board.aftEndXM, foreEndXM ?? board.foreEndXM];
  return [Math.min(...ends), Math.max(...ends)];
}

/**
 * Bolts of a block through its rails: straight across the boat about a place on the block's axis, one in each rail that runs under
 * the block with wood round it; port first. None where no rail runs under it. Metres, boat frame.
 */
export function boltsOnRails(
  { place, shape }: { readonly place: PartPlace; readonly shape: PartShape },
  { apartM }: Pick<RailPair, 'apartM'>,
  along: number,
): PlanPoint[] {
  const { x } = onPart(place, along, 0);
  return [apartM / 2, -apartM / 2]
    .map((y) => ({ x, y }))
    .filter((at) => {
      const own = inPart(place, at);
      return (
        own.along <= shape.baseFore - EDGE &&
        own.along >= shape.baseAft + EDGE &&
        Math.abs(own.across) <= shape.half - EDGE
      );
    });
}
