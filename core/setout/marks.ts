import type { SheetUnits } from '../text/sheet-length.ts';
import { tapeReading } from '../text/sheet-length.ts';
import { toFloor } from './block-frame.ts';
import { type FrontFootPlace, frontFootPlace } from './front-foot.ts';
import { type PadBlock, padBlock, padCorners } from './pad-block.ts';
import { type RestBlock, restBlock } from './rest-block.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { CHECK_TOLERANCE_MM, PLACE_TOLERANCE_MM } from './tolerances.ts';

/** Marks on the floorboard. M is where the seat's mark crosses the centreline; corners are named left first, going round. */
export const MARKS = ['M', 'K', 'P1', 'P2', 'P3', 'P4', 'R1', 'R2', 'F', 'T'] as const;
/** A mark's name as it is written on the floorboard: `P3` is the aft right corner of the pad block. */
export type MarkName = (typeof MARKS)[number];

/** A mark as the sheet's tape finds it (whole millimetres, or whole 1/32 in): millimetres forward of the seat's mark (negative aft) and to port of the centreline. */
export interface Mark {
  /** The letter on sheet and wood. */
  readonly name: MarkName;
  /** What it belongs to. */
  readonly fitting: 'datum' | 'kneePad' | 'rearRest' | 'frontFoot';
  /** From the seat's mark toward the bow, rounded as a tape is read. */
  readonly forwardMm: number;
  /** From the centreline to port. */
  readonly portMm: number;
  /** Either way, on both. */
  readonly toleranceMm: number;
}

/** A length between two marks that proves them. Worked out from the rounded marks, so it is what the tape must read. */
export interface CheckDimension {
  /** Between these two marks. */
  readonly from: MarkName;
  readonly to: MarkName;
  /** Straight from one to the other. */
  readonly lengthMm: number;
  /** Either way. */
  readonly toleranceMm: number;
}

/** The three things that stand on the floorboard, each in its own frame. */
export interface Fittings {
  /** The knee's block. */
  readonly pad: PadBlock;
  /** The block that the rear foot bears on. */
  readonly rest: RestBlock;
  /** Where the front foot stands. */
  readonly foot: FrontFootPlace;
}

/** Pad, rest and front foot of a seat. */
export function fittingsOf(work: SeatWork): Fittings {
  return { pad: padBlock(work), rest: restBlock(work), foot: frontFootPlace(work) };
}

/**
 * Pairs that are measured against each other. Every mark but M is in at least three; feet and rest are tied to both fore
 * or both aft corners of the pad, because a length along the boat hardly feels a mark that is off across it.
 */
const CHECKS: readonly (readonly [MarkName, MarkName])[] = [
  ['M', 'K'],
  ['M', 'P1'],
  ['M', 'P2'],
  ['P1', 'P3'],
  ['P2', 'P4'],
  ['K', 'P3'],
  ['K', 'P4'],
  ['R1', 'R2'],
  ['P3', 'R1'],
  ['P3', 'R2'],
  ['P4', 'R1'],
  ['P4', 'R2'],
  ['M', 'F'],
  ['K', 'F'],
  ['P1', 'F'],
  ['P2', 'F'],
  ['F', 'T'],
  ['M', 'T'],
  ['P1', 'T'],
  ['P2', 'T'],
];

/**
 * Every mark of a seat, rounded to the sheet's tape, as a tape laid from the seat's mark and the centreline finds it. Never
 * −0, so that no sheet prints a minus before nothing. A knee 0.175 m aft and 0.035 m out on the left: K at −175, 35.
 */
export function marksOf({ pad, rest, foot }: Fittings, units: SheetUnits = 'mm'): Mark[] {
  const mark = marker(units);
  const [p1, p2, p3, p4] = padCorners(pad).map((corner) => toFloor(pad.place, corner)) as [
    MillimetrePoint,
    MillimetrePoint,
    MillimetrePoint,
    MillimetrePoint,
  ];
  const restEnd = (side: 1 | -1) => toFloor(rest.place, [0, side * rest.halfWidth]);
  return [
    { name: 'M', fitting: 'datum', forwardMm: 0, portMm: 0, toleranceMm: 0 },
    mark('K', 'kneePad', pad.place.origin),
    mark('P1', 'kneePad', p1),
    mark('P2', 'kneePad', p2),
    mark('P3', 'kneePad', p3),
    mark('P4', 'kneePad', p4),
    mark('R1', 'rearRest', restEnd(1)),
    mark('R2', 'rearRest', restEnd(-1)),
    mark('F', 'frontFoot', foot.place.origin),
    mark('T', 'frontFoot', toFloor(foot.place, [foot.run, 0])),
  ];
}

/** Makes marks out of exact places, rounded to what a tape in these units reads. */
function marker(units: SheetUnits) {
  return (name: MarkName, fitting: Mark['fitting'], [x, y]: MillimetrePoint): Mark => ({
    name,
    fitting,
    forwardMm: tapeReading(x, units),
    portMm: tapeReading(y, units),
    toleranceMm: PLACE_TOLERANCE_MM,
  });
}

/**
 * The check dimensions between rounded marks, rounded to the same tape: Pythagoras over the two differences. They are worked out
 * from what is marked, not from the exact places, so that a tape reads just this where both marks are right.
 */
export function checksOf(marks: readonly Mark[], units: SheetUnits = 'mm'): CheckDimension[] {
  const at = (name: MarkName) => marks.find((m) => m.name === name)!;
  return CHECKS.map(([from, to]) => {
    const [a, b] = [at(from), at(to)];
    const lengthMm = tapeReading(Math.hypot(a.forwardMm - b.forwardMm, a.portMm - b.portMm), units);
    return { from, to, lengthMm, toleranceMm: CHECK_TOLERANCE_MM };
  });
}
