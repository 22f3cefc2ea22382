import type { ScreenRect } from './screen-point.ts';
import {
  type BoatBox,
  boxSize,
  cockpitScale,
  PLAN_SHARE_OF_SPARED,
  type ViewName,
  type Windows,
} from './view-geometry.ts';

/**
 * Where the part's card stands: over the section, right of the plan; on a low sheet beside the views, as tall as the sheet;
 * at the foot under a whole boat; on a small screen after the drawing, in the page.
 */
export type CardPlace = 'over' | 'beside' | 'foot' | 'after';

/** How the drawing's own sheet is divided, CSS pixels. */
export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  /** The whole boat afloat, above everything. */
  readonly strip: ScreenRect;
  /** Beside the strip: what the trim is, in words. */
  readonly stripWords: ScreenRect;
  readonly windows: Windows;
  readonly cardPlace: CardPlace;
  /** Room for the part's card; empty where it stands after the drawing. */
  readonly card: ScreenRect;
  /** Where the view's own buttons end: their right edge, from the sheet's right, and their top. */
  readonly look: { readonly right: number; readonly top: number };
  /**
   * Heights of the free lanes that leader lines run along on their way in from the right: above the plan, and between plan
   * and profile. Nothing is ever drawn there, so a leader crosses no other view. Where the plan's name stands in the upper
   * lane both are the middle one, and leaders reach the plan from below.
   */
  readonly lanes: { readonly upper: number; readonly middle: number };
  /** Top of the ruler along the bottom. */
  readonly rulerTop: number;
}

const LEFT_RULER = 40;
/** The gutter where leader lines come in from the margin and run up or down to their lane. */
const RIGHT_EDGE = 28;
const TOP_EDGE = 5;
const BOTTOM_RULER = 25;
const UPPER_LANE = 16;
const MIDDLE_LANE = 16;
const COLUMN_GAP = 16;
/** Room that the part's card needs, pixels. */
export interface CardSize {
  readonly width: number;
  readonly height: number;
}

/** The part's card: one table with an entry and four figures in a row, and under it stock, choices and lock. */
export const CARD: CardSize = { width: 336, height: 218 };
/** The same for a finger: fields, steppers and choices of 44 px. */
export const TOUCH_CARD: CardSize = { width: 388, height: 352 };
const NO_CARD: CardSize = { width: 0, height: 0 };
/** A sheet narrower than this has no room for the card; one lower than this none beside the plan. */
const LEAST_FOR_CARD = { width: 700, height: 520 } as const;
/** What the view from behind shows of a figure with its elbows, metres; and the least that it makes sense with, pixels. */
const SECTION = { breadth: 0.94, least: 130, share: 0.36 } as const;
/** Height of the row of the view's buttons, with the gap under it. */
const LOOK_ROW = 40;
/** Share of height left over that goes to the plan; the rest goes to the profile. */
const PLAN_SHARE_OF_REST = 0.25;
/** Words beside the strip: as much as their longest line, but no more than this share of its width. */
const STRIP_WORDS = { px: 172, share: 0.42 } as const;

/** Divides a sheet of this size so that a box of the boat is shown as large as all three views allow. No card: it has a place elsewhere. */
export function layOutSheet(
  size: { width: number; height: number },
  box: BoatBox,
  asked: CardSize | null = CARD,
): SheetLayout {
  const cardPlace = asked ? cardPlaceOn(size) : 'after';
  const card = asked ?? NO_CARD;
  const aside = cardPlace === 'beside' ? card.width + COLUMN_GAP : 0;
  const sheet = { width: size.width - aside, height: size.height };
  const need = boxSize(box);
  const stripHeight = stripHeightOf(size);
  const planTop = TOP_EDGE + stripHeight + UPPER_LANE;
  const free = {
    width: Math.max(200, sheet.width - LEFT_RULER - RIGHT_EDGE - COLUMN_GAP),
    height: Math.max(160, sheet.height - planTop - MIDDLE_LANE - BOTTOM_RULER),
  };
  const scale = Math.min(cockpitScale(free.height, need), free.width / (need.x + SECTION.breadth));
  const rest = free.height - scale * (need.y + need.z);
  const toPlan = rest * (rest > 0 ? PLAN_SHARE_OF_REST : PLAN_SHARE_OF_SPARED);
  const room = cardPlace === 'over' ? card.height - (planTop - TOP_EDGE) : 0;
  const planHeight = Math.round(Math.max(room, scale * need.y + toPlan));
  const column = Math.round(columnFor(cardPlace, { scale, width: free.width, card }));
  return place(size, {
    cardPlace,
    cardSize: card,
    sheetWidth: sheet.width,
    stripHeight,
    planTop,
    planHeight,
    column,
    free,
  });
}

function cardPlaceOn({ width, height }: { width: number; height: number }): CardPlace {
  if (width < LEAST_FOR_CARD.width) return 'after';
  return height < LEAST_FOR_CARD.height ? 'beside' : 'over';
}

function columnFor(
  cardPlace: CardPlace,
  { scale, width, card }: { scale: number; width: number; card: CardSize },
): number {
  const wanted = scale * SECTION.breadth;
  if (cardPlace === 'over') return Math.max(card.width, wanted);
  return Math.min(width * SECTION.share, Math.max(SECTION.least, wanted));
}

/** Free space under the part's card at the foot, pixels. */
const UNDER_CARD = 8;
/** Share of height left over that goes to the plan, to the profile; the rest goes to the foot. */
const WHOLE_SHARES = { plan: 0.2, profile: 0.3 };

/**
 * Divides a sheet of this size to show a whole boat from above and from the side, as long as the sheet is wide. There is
 * no view from behind; the part's card stands at the foot.
 */
export function layOutWholeBoat(
  size: { width: number; height: number },
  box: BoatBox,
  asked: CardSize | null = CARD,
): SheetLayout {
  const card = asked ?? NO_CARD;
  const need = boxSize(box);
  const stripHeight = stripHeightOf(size);
  const planTop = TOP_EDGE + stripHeight + UPPER_LANE;
  const width = Math.max(200, size.width - LEFT_RULER - RIGHT_EDGE);
  const cardPlace = !asked || cardPlaceOn(size) === 'after' ? 'after' : 'foot';
  const leastFoot = cardPlace === 'after' ? 0 : card.height + UNDER_CARD;
  const tall = Math.max(160, size.height - planTop - MIDDLE_LANE - BOTTOM_RULER - leastFoot);
  const scale = Math.min(width / need.x, tall / (need.y + need.z));
  const rest = Math.max(0, tall - scale * (need.y + need.z));
  const planHeight = Math.round(scale * need.y + rest * WHOLE_SHARES.plan);
  const profileHeight = Math.round(scale * need.z + rest * WHOLE_SHARES.profile);
  const profileTop = planTop + planHeight + MIDDLE_LANE;
  const rulerTop = profileTop + profileHeight;
  const foot = rulerTop + BOTTOM_RULER;
  const left = LEFT_RULER;
  return {
    ...size,
    ...stripRects({ left, width, height: stripHeight }),
    windows: {
      plan: { left, top: planTop, width, height: planHeight },
      profile: { left, top: profileTop, width, height: profileHeight },
      section: { left: left + width, top: profileTop, width: 0, height: profileHeight },
    },
    cardPlace,
    look: { right: RIGHT_EDGE, top: profileTop + 2 },
    card: { left, top: foot, width: card.width, height: Math.max(0, size.height - foot) },
    lanes: { upper: planTop - UPPER_LANE / 2, middle: profileTop - MIDDLE_LANE / 2 },
    rulerTop,
  };
}

/** Whether a view has a place on the sheet. */
export function isShown({ windows }: Pick<SheetLayout, 'windows'>, view: ViewName): boolean {
  return windows[view].width > 0;
}

function stripHeightOf({ height }: { height: number }): number {
  return Math.round(Math.min(96, Math.max(40, height * 0.085 - 24)));
}

/** The strip and the words beside it, in one row. */
function stripRects(row: {
  left: number;
  width: number;
  height: number;
}): Pick<SheetLayout, 'strip' | 'stripWords'> {
  const words = Math.min(STRIP_WORDS.px, row.width * STRIP_WORDS.share);
  const { left, height } = row;
  const width = row.width - words - COLUMN_GAP;
  return {
    strip: { left, top: TOP_EDGE, width, height },
    stripWords: { left: left + width + COLUMN_GAP, top: TOP_EDGE, width: words, height },
  };
}

function place(
  size: { width: number; height: number },
  given: {
    cardPlace: CardPlace;
    cardSize: CardSize;
    sheetWidth: number;
    stripHeight: number;
    planTop: number;
    planHeight: number;
    column: number;
    free: { width: number; height: number };
  },
): SheetLayout {
  const { cardPlace, stripHeight, planTop, planHeight, column, free } = given;
  const width = free.width - column;
  const columnLeft = LEFT_RULER + width + COLUMN_GAP;
  const profileTop = planTop + planHeight + MIDDLE_LANE;
  const profileHeight = free.height - planHeight;
  const over = { left: columnLeft, top: TOP_EDGE, width: column, height: planTop + planHeight - TOP_EDGE };
  const beside = {
    left: given.sheetWidth - RIGHT_EDGE + COLUMN_GAP,
    top: TOP_EDGE,
    width: given.cardSize.width,
    height: size.height - 2 * TOP_EDGE,
  };
  const middle = profileTop - MIDDLE_LANE / 2;
  const lookTop = { over: profileTop + 2, beside: size.height - LOOK_ROW, after: TOP_EDGE, foot: TOP_EDGE }[
    cardPlace
  ];
  const none = { left: columnLeft, top: TOP_EDGE, width: 0, height: 0 };
  return {
    ...size,
    ...stripRects({ left: LEFT_RULER, width, height: stripHeight }),
    windows: {
      plan: { left: LEFT_RULER, top: planTop, width, height: planHeight },
      profile: { left: LEFT_RULER, top: profileTop, width, height: profileHeight },
      section: { left: columnLeft, top: profileTop, width: column, height: profileHeight },
    },
    cardPlace,
    look: { right: RIGHT_EDGE, top: lookTop },
    card: cardPlace === 'over' ? over : cardPlace === 'beside' ? beside : none,
    lanes: { upper: middle, middle },
    rulerTop: profileTop + profileHeight,
  };
}
