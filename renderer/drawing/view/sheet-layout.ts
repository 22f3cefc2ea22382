import type { ScreenRect } from './screen-point.ts';
import { type BoatBox, boxSize, type ViewName, type Windows } from './view-geometry.ts';

/** How the drawing's own sheet is divided, CSS pixels. */
export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  /** The whole boat afloat, above everything. */
  readonly strip: ScreenRect;
  /** Beside the strip: what the trim is, in words. */
  readonly stripWords: ScreenRect;
  readonly windows: Windows;
  /** Where the hand's note stands: the quarter right of the plan and above the section; the foot under a whole boat. */
  readonly quarter: ScreenRect;
  /**
   * Heights of the two free lanes that leader lines run along on their way in from the right: above the plan, and
   * between plan and profile. Nothing is ever drawn there, so a leader crosses no other view.
   */
  readonly lanes: { readonly upper: number; readonly middle: number };
  /** Top of the ruler along the bottom. */
  readonly rulerTop: number;
}

const LEFT_RULER = 50;
/** The gutter where leader lines come in from the margin and run up or down to their lane. */
const RIGHT_EDGE = 30;
const TOP_EDGE = 6;
const BOTTOM_RULER = 44;
const UPPER_LANE = 26;
const MIDDLE_LANE = 24;
const COLUMN_GAP = 22;
/** The hand's note needs this much width, and more than this share would starve the profile. */
const LEAST_COLUMN = 204;
const GREATEST_COLUMN_SHARE = 0.4;
/** Height that the hand's note and the view's buttons need beside the plan of however narrow a boat. */
const LEAST_QUARTER = { px: 168, shareOfSheet: 0.25 };
/** Share of height left over that goes to the plan; the rest goes to the profile. */
const PLAN_SHARE_OF_REST = 0.25;

/** Divides a sheet of this size so that a box of the boat is shown as large as all three views allow. */
export function layOutSheet(size: { width: number; height: number }, box: BoatBox): SheetLayout {
  const need = boxSize(box);
  const stripHeight = stripHeightOf(size);
  const planTop = TOP_EDGE + stripHeight + UPPER_LANE;
  const free = {
    width: Math.max(200, size.width - LEFT_RULER - RIGHT_EDGE - COLUMN_GAP),
    height: Math.max(160, size.height - planTop - MIDDLE_LANE - BOTTOM_RULER),
  };
  const scale = Math.min(free.height / (need.y + need.z), free.width / (need.x + need.y));
  const rest = Math.max(0, free.height - scale * (need.y + need.z));
  const leastPlan = Math.min(LEAST_QUARTER.px, LEAST_QUARTER.shareOfSheet * size.height);
  const planHeight = Math.round(Math.max(leastPlan, scale * need.y + rest * PLAN_SHARE_OF_REST));
  const column = Math.round(
    Math.min(free.width * GREATEST_COLUMN_SHARE, Math.max(LEAST_COLUMN, scale * need.y)),
  );
  return place(size, { stripHeight, planTop, planHeight, column, free });
}

/** Under the whole boat: room for the hand's note and the view's buttons. */
const LEAST_FOOT = 168;
/** Share of height left over that goes to the plan, to the profile; the rest goes to the foot. */
const WHOLE_SHARES = { plan: 0.2, profile: 0.3 };

/**
 * Divides a sheet of this size to show a whole boat from above and from the side, as long as the sheet is wide. There is
 * no view from behind; the hand's note stands at the foot.
 */
export function layOutWholeBoat(size: { width: number; height: number }, box: BoatBox): SheetLayout {
  const need = boxSize(box);
  const stripHeight = stripHeightOf(size);
  const planTop = TOP_EDGE + stripHeight + UPPER_LANE;
  const width = Math.max(200, size.width - LEFT_RULER - RIGHT_EDGE);
  const tall = Math.max(160, size.height - planTop - MIDDLE_LANE - BOTTOM_RULER - LEAST_FOOT);
  const scale = Math.min(width / need.x, tall / (need.y + need.z));
  const rest = Math.max(0, tall - scale * (need.y + need.z));
  const planHeight = Math.round(scale * need.y + rest * WHOLE_SHARES.plan);
  const profileHeight = Math.round(scale * need.z + rest * WHOLE_SHARES.profile);
  const profileTop = planTop + planHeight + MIDDLE_LANE;
  const rulerTop = profileTop + profileHeight;
  const foot = rulerTop + BOTTOM_RULER;
  const words = Math.min(LEAST_COLUMN, width / 3);
  const stripWidth = width - words - COLUMN_GAP;
  const left = LEFT_RULER;
  return {
    ...size,
    strip: { left, top: TOP_EDGE, width: stripWidth, height: stripHeight },
    stripWords: { left: left + stripWidth + COLUMN_GAP, top: TOP_EDGE, width: words, height: stripHeight },
    windows: {
      plan: { left, top: planTop, width, height: planHeight },
      profile: { left, top: profileTop, width, height: profileHeight },
      section: { left: left + width, top: profileTop, width: 0, height: profileHeight },
    },
    quarter: { left, top: foot, width, height: Math.max(0, size.height - foot) },
    lanes: { upper: planTop - UPPER_LANE / 2, middle: profileTop - MIDDLE_LANE / 2 },
    rulerTop,
  };
}

/** Whether a view has a place on the sheet. */
export function isShown({ windows }: Pick<SheetLayout, 'windows'>, view: ViewName): boolean {
  return windows[view].width > 0;
}

function stripHeightOf({ height }: { height: number }): number {
  return Math.round(Math.min(104, Math.max(60, height * 0.105)));
}

function place(
  size: { width: number; height: number },
  given: {
    stripHeight: number;
    planTop: number;
    planHeight: number;
    column: number;
    free: { width: number; height: number };
  },
): SheetLayout {
  const { stripHeight, planTop, planHeight, column, free } = given;
  const width = free.width - column;
  const columnLeft = LEFT_RULER + width + COLUMN_GAP;
  const profileTop = planTop + planHeight + MIDDLE_LANE;
  const profileHeight = free.height - planHeight;
  return {
    ...size,
    strip: { left: LEFT_RULER, top: TOP_EDGE, width, height: stripHeight },
    stripWords: { left: columnLeft, top: TOP_EDGE, width: column, height: stripHeight },
    windows: {
      plan: { left: LEFT_RULER, top: planTop, width, height: planHeight },
      profile: { left: LEFT_RULER, top: profileTop, width, height: profileHeight },
      section: { left: columnLeft, top: profileTop, width: column, height: profileHeight },
    },
    quarter: { left: columnLeft, top: planTop, width: column, height: planHeight },
    lanes: { upper: planTop - UPPER_LANE / 2, middle: profileTop - MIDDLE_LANE / 2 },
    rulerTop: profileTop + profileHeight,
  };
}
