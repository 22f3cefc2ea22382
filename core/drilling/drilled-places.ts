import type { Fit } from '../document/fit-schema.ts';
import { partsOfSeat } from '../evaluation/parts-of.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import { sideSign } from '../frame/mirror.ts';
import type { PlanPoint } from '../parts/part.ts';
import { ANY_FOOT, type DrilledFitting, onRows } from './drilling-wish.ts';

/** Where a fitting stands on holes that are there, in its own coordinates, metres. */
export interface DrilledPlace {
  /** Aft of the seat's datum. */
  readonly aftM: number;
  /** Toward the kneeling side from the seat's centreline. */
  readonly outM: number;
}

/** Bolts of a block are drilled to suit; they may lie this far off its usual ones, metres: half a step of a plan's grid. */
const SPACING_M = 0.0011;
/** Two holes straight across from each other lie no farther along from each other, metres. */
const LEVEL_M = 0.0006;

/**
 * Places at which pad or rest of a seat has all its bolts in holes of the floorboard that are drilled: where the bench lets it snap
 * to. Turn and sizes are the fitting's own. None without drilled holes, or where the fitting stands on rails.
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
  const middle = middleOf(bolts);
  const holes = drilled.map(({ xM, yM }) => ({ x: xM, y: yM }));
  return targets(bolts, holes).flatMap((target) => {
    const place = {
      aftM: tidy(now.aftM - (target.x - middle.x)),
      outM: tidy(now.outM + sign * (target.y - middle.y)),
    };
    // Near the board's side a block's bolts are set otherwise: only what comes out on the holes counts.
    return boltsAt(place).every((bolt) => holes.some((hole) => near(hole, bolt))) ? [place] : [];
  });
}

/** Middles of the holes, or pairs of holes, that lie as a fitting's bolts do. */
function targets(bolts: readonly PlanPoint[], holes: readonly PlanPoint[]): PlanPoint[] {
  if (bolts.length === 1) return [...holes];
  const apart = Math.abs(bolts[0]!.y - bolts[1]!.y);
  return holes.flatMap((a, k) =>
    holes
      .slice(k + 1)
      .filter((b) => Math.abs(a.x - b.x) <= LEVEL_M && Math.abs(Math.abs(a.y - b.y) - apart) <= SPACING_M)
      .map((b) => middleOf([a, b])),
  );
}

/** Mean of some places. */
function middleOf(points: readonly PlanPoint[]): PlanPoint {
  const mean = (of: (point: PlanPoint) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}

/** Whether a hole will take a bolt. */
const near = (hole: PlanPoint, bolt: PlanPoint) =>
  Math.abs(hole.x - bolt.x) <= LEVEL_M && Math.abs(hole.y - bolt.y) <= SPACING_M;

/** Tenths of a millimetre: as fine as the document's coordinates are kept by hand. */
const tidy = (lengthM: number) => Number(lengthM.toFixed(4));
