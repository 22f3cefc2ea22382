import { FOOT_BREADTH_OVER_LENGTH } from '../fit/fitting-outlines.ts';
import { otherSide, type Side, sideSign } from '../frame/mirror.ts';
import { toRadians } from '../units/angle.ts';
import type { BlockFrame } from './block-frame.ts';
import { floorPointOf, type SeatWork } from './seat-work.ts';
import { millimetres } from './sheet-length.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** Wood left ahead of the toes and behind the heel of a wedge, millimetres (this project's choice). */
const WEDGE_MARGIN_MM = 10;
/** A wedge thinner than this at its thin end is planed away to nothing, millimetres. */
const THINNEST_MM = 1;

/**
 * Where the front foot stands. The frame lies on the sole: x from the back of the heel to the toes, y to port.
 * Millimetres.
 */
export interface FrontFootPlace {
  readonly place: BlockFrame;
  /** Which foot it is: the one not knelt on. */
  readonly foot: Side;
  readonly length: number;
  readonly breadth: number;
  readonly heelToBall: number;
  /** Height of heel and toes over the floorboard. */
  readonly heelHeight: number;
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
export function frontFootPlace({ seat, body, frame }: SeatWork): FrontFootPlace {
  const { frontFoot } = seat;
  const wedge = toRadians(frontFoot.wedgeDeg);
  const length = millimetres(body.lengths.footLength.value);
  const heelHeight = millimetres(frontFoot.heightM);
  return {
    place: {
      origin: floorPointOf(frontFoot.forwardM, frontFoot.outM, frame.side),
      turn: -toRadians(frontFoot.toeOutDeg) * sideSign(frame.side),
    },
    foot: otherSide(frame.side),
    length,
    breadth: length * FOOT_BREADTH_OVER_LENGTH,
    heelToBall: millimetres(body.lengths.heelToBall.value),
    heelHeight,
    toeHeight: heelHeight + length * Math.sin(wedge),
    run: length * Math.cos(wedge),
  };
}

/** The wedge that holds a front foot at its height and slope. */
export function frontWedge({ heelHeight, toeHeight, run, breadth }: FrontFootPlace): FrontWedge {
  if (toeHeight < -THINNEST_MM) return { kind: 'below-floor', toeHeight };
  if (Math.max(heelHeight, toeHeight) < THINNEST_MM) return { kind: 'none' };
  const rise = (toeHeight - heelHeight) / run;
  const height = (x: number) => Math.max(0, heelHeight + rise * x);
  const fore = run + WEDGE_MARGIN_MM;
  const aft = heelHeight > THINNEST_MM ? -WEDGE_MARGIN_MM : 0;
  const end = rise < 0 && height(fore) === 0 ? -heelHeight / rise : fore;
  const corners: MillimetrePoint[] = [
    [aft, 0],
    [end, 0],
    [end, height(end)],
    [aft, height(aft)],
  ];
  return {
    kind: 'wedge',
    profile: corners.filter(distinct),
    halfWidth: breadth / 2 + WEDGE_MARGIN_MM,
    length: end - aft,
  };
}

/** Whether a corner differs from the one before it. */
function distinct(corner: MillimetrePoint, index: number, all: readonly MillimetrePoint[]): boolean {
  const before = all[(index + all.length - 1) % all.length]!;
  return Math.hypot(corner[0] - before[0], corner[1] - before[1]) > 1e-6;
}
