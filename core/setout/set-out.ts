import type { Fit } from '../document/fit-schema.ts';
import type { Report } from '../evaluation/report.ts';
import type { Side } from '../frame/mirror.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import { wholeMillimetres } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import { type BlockBase, blockBase } from './block-base.ts';
import type { BlockName } from './block-bed.ts';
import { type AngleRow, anglesOf, type HeightRow, heightsOf } from './heights-and-angles.ts';
import { type HoleList, padHoles, restHoles } from './hole-list.ts';
import { type KneeBreadth, kneeBreadth } from './knee-recess.ts';
import { type CheckDimension, checksOf, type Fittings, fittingsOf, type Mark, marksOf } from './marks.ts';
import { type SeatWork, seatWork } from './seat-work.ts';
import { cautionsOf, type SetOutCaution } from './set-out-caution.ts';
import type { PaperOptions } from './set-out-options.ts';
import { workParts } from './work-parts.ts';

/** Everything a builder needs to set out one seat, from datums that a tape reaches. Millimetres and degrees. */
export interface SeatSetOut {
  /** What it was made from. */
  readonly work: SeatWork;
  /** The blocks and the foot. */
  readonly fittings: Fittings;
  /** The bases that pad and rest are cut to. */
  readonly bases: Readonly<Record<BlockName, BlockBase>>;
  /** The kneeling knee. */
  readonly kneels: Side;
  /** Where the seat's mark lies from the boat's centre mark: positive toward the bow; 0 in a single boat. */
  readonly seatMarkForwardMm: number;
  /** Marks to strike on the board, in the order of work. */
  readonly marks: readonly Mark[];
  /** Lengths between them that prove the marks. */
  readonly checks: readonly CheckDimension[];
  /** Heights to make, with what proves each. */
  readonly heights: readonly HeightRow[];
  /** Angles to make, with the same by tape. */
  readonly angles: readonly AngleRow[];
  /** Holes to drill. */
  readonly holes: readonly HoleList[];
  /** What the builder must know first. */
  readonly cautions: readonly SetOutCaution[];
  /** The knee that the recess is drawn for. */
  readonly knee: KneeBreadth;
}

/**
 * Sets out the seat `index` (bow first) of a fit with its report. Null when the seat does not exist or is empty. A knee
 * set 0.175 m aft and 0.035 m out of a left-side paddler gives mark K at forward −175, port 35.
 */
export function setOutSeat(given: {
  fit: Fit;
  report: Report;
  index: number;
  options: PaperOptions;
  words: Words;
}): SeatSetOut | null {
  const work = seatWork(given);
  if (!work) return null;
  const fittings = fittingsOf(work);
  const marks = marksOf(fittings, work.options.units);
  const { kneePad, rearRest } = workParts(work);
  const hull = hullOfBoat(work.boat);
  const holes = [padHoles(work), restHoles(work)];
  return {
    work,
    fittings,
    bases: {
      kneePad: blockBase(work, { ...kneePad, part: 'kneePad' }, hull),
      rearRest: blockBase(work, { ...rearRest, part: 'rearRest' }, hull),
    },
    kneels: work.frame.side,
    seatMarkForwardMm: wholeMillimetres(work.frame.stationX),
    marks,
    checks: checksOf(marks, work.options.units),
    heights: heightsOf(fittings, work),
    angles: anglesOf(fittings, work),
    holes,
    cautions: cautionsOf(work, fittings, holes),
    knee: kneeBreadth(work),
  };
}
