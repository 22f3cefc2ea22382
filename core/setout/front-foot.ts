import { otherSide, type Side } from '../frame/mirror.ts';
import { millimetres } from '../text/sheet-length.ts';
import { toRadians } from '../units/angle.ts';
import type { BlockFrame } from './block-frame.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { blockFrame, workParts } from './work-parts.ts';

/** A wedge thinner than this at its thin end is planed away to nothing, millimetres. */
const THINNEST_MM = 1;

/**
 * Where the front foot stands. The frame lies on the sole: x from the back of the heel to the toes, y to port.
 * Millimetres.
 */
export interface FrontFootPlace {
  /** The foot's own frame on the floor, turned as its toes point. */
  readonly place: BlockFrame;
  /** Which foot it is: that of the leg that does not kneel. */
  readonly foot: Side;
  /** Sizes of the foot itself, millimetres. */
  readonly length: number;
  /** Across the ball. */
  readonly breadth: number;
  /** Along the sole. */
  readonly heelToBall: number;
  /** Height of heel and toes over the floorboard. */
  readonly heelHeight: number;
  /** As `heelHeight`, at the toes. */
  readonly toeHeight: number;
  /** Length of the foot's shadow on the floorboard. */
  readonly run: number;
}

/** The wedge under a front foot, or why there is none. Side profile in millimetres, x from the heel's back forward. */
export type FrontWedge =
  | { readonly kind: 'none' }
  | { readonly kind: 'below-floor'; readonly toeHeight: number }
  | {
      readonly kind: 'wedge';
      readonly profile: readonly MillimetrePoint[];
      readonly halfWidth: number;
      readonly length: number;
    };

/** Place and size of a seat's front foot. */
export function frontFootPlace(work: SeatWork): FrontFootPlace {
  const { seat, body, frame } = work;
  const part = workParts(work).frontFoot;
  const length = millimetres(body.lengths.footLength.value);
  const heelHeight = millimetres(seat.frontFoot.heightM);
  return {
    place: blockFrame(part, work),
    foot: otherSide(frame.side),
    length,
    breadth: millimetres(2 * part.shape.half),
    heelToBall: millimetres(body.lengths.heelToBall.value),
    heelHeight,
    toeHeight: heelHeight + length * Math.sin(toRadians(seat.frontFoot.wedgeDeg)),
    run: millimetres(part.shape.baseFore),
  };
}

/** The wedge that holds a front foot at its height and slope. */
export function frontWedge({ heelHeight, toeHeight, run, breadth }: FrontFootPlace): FrontWedge {
  if (toeHeight < -THINNEST_MM) return { kind: 'below-floor', toeHeight };
  if (Math.max(heelHeight, toeHeight) < THINNEST_MM) return { kind: 'none' };
  const rise = (toeHeight - heelHeight) / run;
  const height = (x: number) => Math.max(0, heelHeight + rise * x);
  const end = rise < 0 && height(run) === 0 ? -heelHeight / rise : run;
  const corners: MillimetrePoint[] = [
    [0, 0],
    [end, 0],
    [end, height(end)],
    [0, height(0)],
  ];
  return {
    kind: 'wedge',
    profile: corners.filter(distinct),
    halfWidth: breadth / 2,
    length: end,
  };
}

/** Whether a corner differs from the one before it. */
function distinct(corner: MillimetrePoint, index: number, all: readonly MillimetrePoint[]): boolean {
  const before = all[(index + all.length - 1) % all.length]!;
  return Math.hypot(corner[0] - before[0], corner[1] - before[1]) > 1e-6;
}
