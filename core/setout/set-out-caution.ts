import { findQuantity, type QuantityId } from '../evaluation/quantities.ts';
import { boardHalfWidthAt } from '../parts/board.ts';
import { floorHeightAt } from '../parts/floor-height.ts';
import { PART_LIMITS } from '../parts/limits.ts';
import type { PartName } from '../parts/part.ts';
import { railStretch } from '../parts/rails.ts';
import { millimetres } from '../text/sheet-length.ts';
import { toDegrees } from '../units/angle.ts';
import { FITTED_MM } from './block-base.ts';
import { frontWedge } from './front-foot.ts';
import type { HoleList } from './hole-list.ts';
import { aftReach, halfWidthAt, kneeBreadth } from './knee-recess.ts';
import type { Fittings } from './marks.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** The shank may lie off the recess's axis by this before it twists in it, degrees (our estimate). */
const SHANK_OFF_AXIS_DEG = 5;
/** Least wood beside and under a recess, millimetres (common practice, no source). */
const LEAST_WALL_MM = 12;
/** Wood left under the recess. */
const LEAST_FLOOR_MM = 15;

/** What the builder of this very seat must be told before cutting. Lengths in millimetres, angles in degrees. */
export type SetOutCaution =
  | {
      readonly code: 'between-holes';
      readonly fitting: HoleList['fitting'];
      readonly aftMm: number;
      readonly nearestMm: number;
      readonly number: number;
    }
  | { readonly code: 'no-hole-in-travel'; readonly fitting: HoleList['fitting'] }
  | { readonly code: 'outside-travel'; readonly fitting: HoleList['fitting']; readonly byMm: number }
  | { readonly code: 'pitch-too-fine'; readonly fitting: HoleList['fitting'] }
  | { readonly code: 'one-bolt'; readonly fitting: HoleList['fitting'] }
  | { readonly code: 'hole-off-board'; readonly fitting: HoleList['fitting'] }
  /** The fitting is bolted to rails. */
  | {
      readonly code: 'on-rails';
      readonly fitting: HoleList['fitting'];
      readonly apartMm: number;
      readonly heightMm: number;
      readonly holeMm: number;
    }
  /** Its rails do not run under it, or end before its bolts. */
  | { readonly code: 'off-rails'; readonly fitting: HoleList['fitting'] }
  /** The floorboard under a part lies higher (positive) than at the seat's mark, from which all heights count. */
  | {
      readonly code: 'floor-not-level';
      readonly part: 'kneePad' | 'rearRest' | 'frontFoot';
      readonly byMm: number;
    }
  /** The hull's inner face cuts into a block by so much, square to the skin; a foot has nothing to be cut. */
  | { readonly code: 'bevel'; readonly fitting: HoleList['fitting']; readonly byMm: number }
  | { readonly code: 'foot-in-hull'; readonly byMm: number }
  /** A bolt or screw, over its whole length, comes so near to the skin (negative: into it). */
  | { readonly code: 'hole-at-skin'; readonly fitting: HoleList['fitting']; readonly roomMm: number }
  /** A part's base reaches over the board's edge. */
  | { readonly code: 'overhang'; readonly part: PartName; readonly byMm: number }
  /** The floorboard as measured does not fit the hull as measured. */
  | { readonly code: 'board-in-hull'; readonly byMm: number }
  | { readonly code: 'knee-estimated'; readonly breadthMm: number; readonly doubtMm: number }
  | { readonly code: 'thin-wall'; readonly wallMm: number }
  | { readonly code: 'thin-floor'; readonly woodMm: number }
  | { readonly code: 'shank-off-axis'; readonly offDeg: number }
  | { readonly code: 'recess-open-aft' }
  | { readonly code: 'no-reach'; readonly part: 'rearRest' | 'frontFoot'; readonly byMm: number }
  | { readonly code: 'wedge-below-floor' }
  | { readonly code: 'strap'; readonly strap: 'none' | 'fixed' }
  | { readonly code: 'not-braced' }
  | { readonly code: 'not-non-slip' };

/** Everything this seat's builder must be told, in the order of the work. */
export function cautionsOf(work: SeatWork, fittings: Fittings, holes: readonly HoleList[]): SetOutCaution[] {
  const { seat } = work;
  const { strap } = seat.rearRest;
  return [
    ...kneeCautions(work),
    ...holes.flatMap((list) => holeCautions(work, list)),
    ...railCautions(work, holes),
    ...floorCautions(work),
    ...clearanceCautions(work),
    ...recessCautions(work, fittings),
    ...reachCautions(work),
    ...(frontWedge(fittings.foot).kind === 'below-floor' ? [{ code: 'wedge-below-floor' } as const] : []),
    ...(strap === 'releases' ? [] : [{ code: 'strap', strap } as const]),
    ...(seat.kneePad.braced ? [] : [{ code: 'not-braced' } as const]),
    ...(seat.frontFoot.nonSlip ? [] : [{ code: 'not-non-slip' } as const]),
  ];
}

/** A knee that nobody has measured. */
function kneeCautions(work: SeatWork): SetOutCaution[] {
  if (work.shelf.pad) return [];
  const { measured, breadthMm, doubtMm } = kneeBreadth(work);
  return measured ? [] : [{ code: 'knee-estimated', breadthMm, doubtMm }];
}

/** What is wrong with the rows of holes: travel, pitch, a setting between two holes. */
function holeCautions({ seat, boat, frame }: SeatWork, list: HoleList): SetOutCaution[] {
  const { fitting } = list;
  const aftMm = millimetres(seat[fitting].aftM);
  const travel = fitting === 'kneePad' ? boat.hardware.padTravelM : boat.hardware.restTravelM;
  const [low, high] = [millimetres(Math.min(...travel)), millimetres(Math.max(...travel))];
  const byMm = Math.max(low - aftMm, aftMm - high);
  const cautions: SetOutCaution[] = [];
  if (byMm > 0.5) cautions.push({ code: 'outside-travel', fitting, byMm });
  if (list.tooFine) cautions.push({ code: 'pitch-too-fine', fitting });
  if (list.pitchMm !== null && !list.nearest) cautions.push({ code: 'no-hole-in-travel', fitting });
  if (list.nearest && list.numberNow === null) {
    const { number, aftMm: nearestMm } = list.nearest;
    cautions.push({ code: 'between-holes', fitting, aftMm, nearestMm, number });
  }
  if (list.bolts.length === 1) cautions.push({ code: 'one-bolt', fitting });
  const toSide = ([x, y]: MillimetrePoint) =>
    millimetres(boardHalfWidthAt(boat.floorboard, frame.stationX + x / 1000)) - Math.abs(y);
  const off = list.rows.some(({ holes }) => holes.some(({ at }) => toSide(at) < list.diameterMm));
  if (off && !list.onRails) cautions.push({ code: 'hole-off-board', fitting });
  return cautions;
}

/** Rails that do not reach the bolts, or do not fit what stands on them. */
function railCautions({ boat, frame }: SeatWork, holes: readonly HoleList[]): SetOutCaution[] {
  return (boat.hardware.rails ?? []).flatMap((pair): SetOutCaution[] => {
    const { fitting, apartM, heightM, holeM } = pair;
    const [apartMm, heightMm, holeMm] = [apartM, heightM, holeM].map(millimetres) as [number, number, number];
    const [aft, fore] = railStretch(pair, boat.floorboard);
    const bolts = holes.find((list) => list.fitting === fitting)?.bolts ?? [];
    const reached = ([x]: MillimetrePoint) => {
      const at = frame.stationX + x / 1000;
      return at >= aft && at <= fore;
    };
    const off = bolts.length === 0 || !bolts.every(reached);
    return [
      { code: 'on-rails', fitting, apartMm, heightMm, holeMm },
      ...(off ? [{ code: 'off-rails', fitting } as const] : []),
    ];
  });
}

/** A floorboard that is nearer to level than this needs no word, millimetres: what a pad's foam takes up. */
const LEVEL_MM = 2;

/** A floorboard that is not level under a fitting: heights are then not what a tape there reads. */
function floorCautions({ boat, seat, frame }: SeatWork): SetOutCaution[] {
  const aft = {
    kneePad: seat.kneePad.aftM,
    rearRest: seat.rearRest.aftM,
    frontFoot: -seat.frontFoot.forwardM,
  };
  return (['kneePad', 'rearRest', 'frontFoot'] as const).flatMap((part) => {
    const byMm = millimetres(floorHeightAt(boat.floorboard, frame.stationX - aft[part]) - frame.floorZ);
    return Math.abs(byMm) > LEVEL_MM ? [{ code: 'floor-not-level', part, byMm } as const] : [];
  });
}

/** What meets the hull: board, blocks, holes. */
function clearanceCautions({ report, index }: SeatWork): SetOutCaution[] {
  const valueMm = (id: QuantityId, seat: number | null = index) =>
    millimetres(findQuantity(report.quantities, id, seat)?.value ?? 0);
  const cautions: SetOutCaution[] = [];
  const boardMm = valueMm('boardInsideHull', null);
  if (boardMm < -FITTED_MM) cautions.push({ code: 'board-in-hull', byMm: -boardMm });
  for (const [fitting, bevel, holes] of BLOCKS) {
    const byMm = valueMm(bevel);
    const room = findQuantity(report.quantities, holes, index);
    const roomMm = room ? millimetres(room.value) : Number.POSITIVE_INFINITY;
    if (roomMm < millimetres(PART_LIMITS.holeToSkin))
      cautions.push({ code: 'hole-at-skin', fitting, roomMm });
    if (byMm > FITTED_MM) cautions.push({ code: 'bevel', fitting, byMm });
  }
  const footMm = valueMm('footInsideHull');
  if (footMm < -FITTED_MM) cautions.push({ code: 'foot-in-hull', byMm: -footMm });
  for (const [part, overhang] of OVERHANGS) {
    const byMm = valueMm(overhang);
    if (byMm > FITTED_MM) cautions.push({ code: 'overhang', part, byMm });
  }
  return cautions;
}

/** Each block with the quantities of its bevel and its holes. */
const BLOCKS = [
  ['kneePad', 'padBevel', 'padHolesToSkin'],
  ['rearRest', 'restBevel', 'restHolesToSkin'],
] as const;

/** Each fitting with the quantity of how far it stands over the board's edge. */
const OVERHANGS = [
  ['kneePad', 'padOverhang'],
  ['rearRest', 'restOverhang'],
  ['frontFoot', 'footOverhang'],
] as const;

/** Wood left too thin beside or under the recess, or a shin that leaves its axis. */
function recessCautions({ options }: SeatWork, { pad }: Fittings): SetOutCaution[] {
  const { recess } = pad;
  const foam = millimetres(options.foamM);
  const rim = { level: recess.depth, foam };
  const wallMm = pad.halfWidth - (halfWidthAt(recess, 0, rim) ?? 0);
  const woodMm = pad.bearingHeight - foam;
  const offDeg = Math.abs(toDegrees(pad.shankOffAxis));
  const cautions: SetOutCaution[] = [];
  if (wallMm < LEAST_WALL_MM) cautions.push({ code: 'thin-wall', wallMm });
  if (woodMm < LEAST_FLOOR_MM) cautions.push({ code: 'thin-floor', woodMm });
  if (offDeg > SHANK_OFF_AXIS_DEG) cautions.push({ code: 'shank-off-axis', offDeg });
  if (aftReach(recess, { ...rim, foam: 0 }).open) cautions.push({ code: 'recess-open-aft' });
  return cautions;
}

/** A foot that does not reach its place. */
function reachCautions({ solved }: SeatWork): SetOutCaution[] {
  return solved.stances.ready.shortfalls.flatMap(({ part, shortfall }) =>
    (part === 'rearRest' || part === 'frontFoot') && shortfall > 0.001
      ? [{ code: 'no-reach', part, byMm: millimetres(shortfall) } as const]
      : [],
  );
}
