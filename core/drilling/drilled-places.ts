import type { Fit } from '../document/fit-schema.ts';
import { ANY_FOOT, partsOfSeat } from '../evaluation/parts-of.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import { sideSign } from '../frame/mirror.ts';
import { type PlanPoint, planMiddle } from '../parts/part.ts';
import { type DrilledFitting, onRows } from './drilling-wish.ts';

/** A fitting's place on existing holes, in its own coordinates, metres. */
export interface DrilledPlace {
  /** Aft of the seat's datum. */
  readonly aftM: number;
  /** Toward the kneeling side from the seat's centreline. */
  readonly outM: number;
}

/**
 * Bolts may lie this far off the block's usual ones, metres, because its own holes are drilled to suit: half a step of a plan's
 * grid.
 */
const SPACING_M = 0.0011;
/** Two holes straight across from each other differ along the boat by at most this, metres. */
const LEVEL_M = 0.0006;

/**
 * Places at which pad or rest of a seat has all its bolts in drilled holes of the floorboard: the bench snaps to them. Turn and
 * sizes stay. Empty without drilled holes, or where the fitting stands on rails.
 */
export function drilledPlaces(fit: Fit, seat: number, fitting: DrilledFitting): DrilledPlace[] {
  const { boat } = fit;
  const at = fit.seats[seat];
  const drilled = (boat.holes ?? []).filter(({ state }) => state === 'drilled');
  const onRails = boat.hardware.rails?.some((rails) => rails.fitting === fitting) ?? false;
  if (!at || drilled.length === 0 || onRails) return [];
  const sign = sideSign(seatFrame(boat, at, seat).side);
  const boltsAt = (place: DrilledPlace): PlanPoint[] => {
    const moved = { ...at, [fitting]: { ...at[fitting], ...place } };
    const parts = partsOfSeat(onRows(boat), moved, { index: seat, footLength: ANY_FOOT });
    return parts[fitting].holes.map(({ from: { x, y } }) => ({ x, y }));
  };
  const now = { aftM: at[fitting].aftM, outM: at[fitting].outM };
  const bolts = boltsAt(now);
  const middle = planMiddle(bolts);
  const holes = drilled.map(({ xM, yM }) => ({ x: xM, y: yM }));
  return targets(bolts, holes).flatMap((target) => {
    const place = {
      aftM: tidy(now.aftM - (target.x - middle.x)),
      outM: tidy(now.outM + sign * (target.y - middle.y)),
    };
    // Near the board's side a block's bolts move: only places whose bolts really meet the holes count.
    return boltsAt(place).every((bolt) => holes.some((hole) => near(hole, bolt))) ? [place] : [];
  });
}

/** Middles of the holes, or pairs of holes, that match a fitting's bolts. */
function targets(bolts: readonly PlanPoint[], holes: readonly PlanPoint[]): PlanPoint[] {
  if (bolts.length === 1) return [...holes];
  const apart = Math.abs(bolts[0]!.y - bolts[1]!.y);
  return holes.flatMap((a, k) =>
    holes
      .slice(k + 1)
      .filter((b) => Math.abs(a.x - b.x) <= LEVEL_M && Math.abs(Math.abs(a.y - b.y) - apart) <= SPACING_M)
      .map((b) => planMiddle([a, b])),
  );
}

/** Whether a hole will take a bolt. */
const near = (hole: PlanPoint, bolt: PlanPoint) =>
  Math.abs(hole.x - bolt.x) <= LEVEL_M && Math.abs(hole.y - bolt.y) <= SPACING_M;

/** Tenths of a millimetre: as fine as the document's coordinates are kept by hand. */
const tidy = (lengthM: number) => Number(lengthM.toFixed(4));
