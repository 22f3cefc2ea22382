import type { FittingCoordinate } from '../../../core/document/coordinates.ts';
import type { Lockable } from '../../../core/document/seat-schema.ts';
import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import type { ViewName } from './view-geometry.ts';

/** The handles, in the order of the Tab key. */
export const HANDLE_IDS = [
  'kneePad',
  'padTurn',
  'rearRest',
  'restTurn',
  'frontFoot',
  'toeOut',
  'lowerHand',
] as const;
export type HandleId = (typeof HANDLE_IDS)[number];

/** One handle in one view: the same knee pad may be taken from above, from the side and from behind. */
export interface Grip {
  readonly handle: HandleId;
  readonly view: ViewName;
}

/** What a handle moves. */
export interface HandleKind {
  readonly fitting: Lockable;
  /** How it moves: freely in the view, round the fitting's bearing point, or along the shaft. */
  readonly motion: 'place' | 'turn' | 'shaft';
  /** Coordinates that follow the hand in each view where it can be taken. */
  readonly views: Partial<Readonly<Record<ViewName, readonly FittingCoordinate[]>>>;
}

export const HANDLES: Readonly<Record<HandleId, HandleKind>> = {
  kneePad: {
    fitting: 'kneePad',
    motion: 'place',
    views: {
      plan: ['kneePad.aftM', 'kneePad.outM'],
      profile: ['kneePad.aftM', 'kneePad.heightM'],
      section: ['kneePad.outM', 'kneePad.heightM'],
    },
  },
  padTurn: { fitting: 'kneePad', motion: 'turn', views: { plan: ['kneePad.recessTurnDeg'] } },
  rearRest: {
    fitting: 'rearRest',
    motion: 'place',
    views: {
      plan: ['rearRest.aftM', 'rearRest.outM'],
      profile: ['rearRest.aftM', 'rearRest.heightM'],
      section: ['rearRest.outM', 'rearRest.heightM'],
    },
  },
  restTurn: { fitting: 'rearRest', motion: 'turn', views: { plan: ['rearRest.turnDeg'] } },
  frontFoot: {
    fitting: 'frontFoot',
    motion: 'place',
    views: {
      plan: ['frontFoot.forwardM', 'frontFoot.outM'],
      profile: ['frontFoot.forwardM', 'frontFoot.heightM'],
    },
  },
  toeOut: { fitting: 'frontFoot', motion: 'turn', views: { plan: ['frontFoot.toeOutDeg'] } },
  lowerHand: {
    fitting: 'paddle',
    motion: 'shaft',
    views: { profile: ['paddle.lowerHandM'], section: ['paddle.lowerHandM'] },
  },
};

/** Every grip, in the order of the Tab key: each fitting from above, then from the side. */
export const GRIPS: readonly Grip[] = HANDLE_IDS.flatMap((handle) =>
  (['plan', 'profile', 'section'] as const)
    .filter((view) => HANDLES[handle].views[view])
    .map((view) => ({ handle, view })),
);

/** Whether a grip stands in the Tab order; what the view from behind moves, the two others move too. */
export function isTabStop({ view }: Grip): boolean {
  return view !== 'section';
}

/** A grip's name in the page: `kneePad/plan`. */
export function gripName({ handle, view }: Grip): string {
  return `${handle}/${view}`;
}

/** Whether two grips are the same one. */
export function sameGrip(a: Grip | null, b: Grip | null): boolean {
  return a === b || (a !== null && b !== null && a.handle === b.handle && a.view === b.view);
}

/** The judged quantity that a coordinate sets directly: its band is the coordinate's limits. */
export const QUANTITY_OF: Partial<Readonly<Record<FittingCoordinate, QuantityId>>> = {
  'kneePad.aftM': 'padAft',
  'kneePad.outM': 'padOut',
  'kneePad.heightM': 'padHeight',
  'kneePad.recessTurnDeg': 'recessTurn',
  'rearRest.turnDeg': 'restTurn',
};
