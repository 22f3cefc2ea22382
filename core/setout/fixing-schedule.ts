import type { Boat } from '../document/boat-schema.ts';
import { findQuantity } from '../evaluation/quantities.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import { innerSkin } from '../hull/inner-skin.ts';
import { boardTopAt, insideBoard } from '../parts/board.ts';
import type { FixingHole, Part } from '../parts/part.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { BlockName } from './block-bed.ts';
import { railsUnder } from './block-bed.ts';
import { floorPoint, type SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { workParts } from './work-parts.ts';

/** Lengths that bolts and screws are sold in, millimetres (ISO 888's nominal lengths; from memory). */
const LENGTHS = [10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100] as const;
/** Thickness of a washer under a head, millimetres (ISO 7089 for M6: 1.6; from memory). */
const WASHER = 1.6;

/** One fixing of a block. Millimetres; the place as a floor point. */
export interface Fixing {
  /** The block that it holds. */
  readonly block: BlockName;
  /** Bolts for rows of holes, bolts that suit the rails where it stands on such, else screws. */
  readonly kind: 'bolt' | 'rails' | 'screw';
  /** Millimetres forward of the seat's mark and to port of the centreline. */
  readonly at: MillimetrePoint;
  /** Diameter of bolt or screw's hole in the board or the rail, and how deep the hole goes into the block. */
  readonly holeMm: number;
  /** Into the block, from its underside. */
  readonly depthMm: number;
  /** The longest that is sold and ends inside its hole; null where even the shortest is too long, and in rails of any make. */
  readonly lengthMm: number | null;
  /** From its lower end to the hull's inner face. */
  readonly skinMm: number;
  /** From the hole's middle to the board's edge, in plan; null where the board has no hole. */
  readonly edgeMm: number | null;
}

/** Every fixing of a seat's pad and rest. */
export function fixingsOf(work: SeatWork): Fixing[] {
  const { kneePad, rearRest } = workParts(work);
  const distance = innerSkin(hullOfBoat(work.boat), work.boat.skinM);
  const of = (block: BlockName, part: Part) =>
    part.holes.map((hole): Fixing => {
      const { floorboard } = work.boat;
      const kind = kindOf(work, block);
      const depthMm = depthIn(work, block, hole);
      return {
        block,
        kind,
        at: floorPoint(hole.to, work.frame),
        holeMm: millimetres(hole.diameterM),
        depthMm,
        lengthMm:
          kind === 'rails'
            ? null
            : lengthFor({ kind, depthMm, throughMm: millimetres(floorboard.thicknessM) }),
        skinMm: millimetres(distance(hole.from)),
        edgeMm: hole.throughBoard ? millimetres(insideBoard(floorboard, hole.from)) : null,
      };
    });
  return [...of('kneePad', kneePad), ...of('rearRest', rearRest)];
}

/** How a block is held: by bolts for rows of holes, by bolts in its rails, else by screws. */
function kindOf({ boat: { hardware } }: Pick<SeatWork, 'boat'>, block: BlockName): Fixing['kind'] {
  const pitch = block === 'kneePad' ? hardware.padHolePitchM : hardware.restHolePitchM;
  if (hardware.rails?.some(({ fitting }) => fitting === block)) return 'rails';
  return pitch === null ? 'screw' : 'bolt';
}

/** Whether a boat's pads or rests are bolted; else both are screwed from below. */
export function isBolted(boat: Boat): boolean {
  return (['kneePad', 'rearRest'] as const).some((block) => kindOf({ boat }, block) !== 'screw');
}

/** How deep a hole goes into its block, which stands on its rails, millimetres. */
function depthIn(work: SeatWork, block: BlockName, { to }: FixingHole): number {
  const over = millimetres(to.z - boardTopAt(work.boat.floorboard, to.x)) - railsUnder(work, block);
  return Math.max(0, over);
}

/**
 * The longest length sold that does not pass the end of its hole: what it goes through, the washer under a bolt's head, and the
 * hole's depth. Null where none does. Through 8 mm of board and 30 mm into the wood a screw is 35, not 40.
 */
export function lengthFor(given: {
  kind: 'bolt' | 'screw';
  depthMm: number;
  throughMm: number;
}): number | null {
  const { kind, depthMm, throughMm } = given;
  const most = throughMm + depthMm + (kind === 'bolt' ? WASHER : 0) + 1e-9;
  return LENGTHS.findLast((length) => length <= most && length > throughMm) ?? null;
}

/** Density that light marine plywood has, kg/m³ (okoume, about 430 to 500; common practice, no source). */
const PLY_DENSITY = 450;
/**
 * From the characteristic to the design value: short loads in the wet (k_mod 0.70) and plywood's partial factor (γ_M 1.2), EN
 * 1995-1-1:2004, tables 3.1 and 2.3, from memory.
 */
const DESIGN = 0.7 / 1.2;

/** What the pad's fixings bear and what the board holds. Newtons; `margin` is the second over the first, null without a load. */
export interface FixingForce {
  /** What each must hold, and what one holds in this board by the tables. */
  readonly eachN: number;
  /** By the tables, for one fixing. */
  readonly holdsN: number;
  /** The second over the first; null where nothing pulls. */
  readonly margin: number | null;
}

/**
 * The load that one fixing of the pad carries at the stroke's peak, by this athlete's own drive, and what the hole's wall in a
 * plywood board holds: f_h = 0.11 (1 − 0.01 d) ρ N/mm² over d × t (EN 1995-1-1:2004, 8.36, from memory). Bearing of the wall only: a
 * screw's pull and the block's own wood are not judged. 6 mm in 8 mm of board hold 1300 N each.
 */
export function padForce({ report, index, boat, options }: SeatWork, count: number): FixingForce {
  const forceOf = (id: 'padFixing' | 'padFixingSide') =>
    findQuantity(report.quantities, id, index)?.value ?? 0;
  const eachN = Math.hypot(forceOf('padFixing'), forceOf('padFixingSide')) / Math.max(1, count);
  const d = kindOf({ boat }, 'kneePad') === 'screw' ? 4 : millimetres(options.boltM);
  const wall = 0.11 * (1 - 0.01 * d) * PLY_DENSITY;
  const holdsN = DESIGN * wall * d * millimetres(boat.floorboard.thicknessM);
  return { eachN, holdsN, margin: eachN > 0 ? holdsN / eachN : null };
}
