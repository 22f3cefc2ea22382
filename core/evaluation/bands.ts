import { PART_LIMITS } from '../parts/limits.ts';
import type { Band, Finding, SourceKind } from './finding.ts';
import type { QuantityId } from './quantities.ts';

/** Degrees as radians. */
const deg = (angle: number) => (angle * Math.PI) / 180;
const cm = (length: number) => length / 100;

/** One row of the band table. */
export interface BandRule {
  /** The quantity that it judges. */
  readonly quantity: QuantityId;
  /** Edges in the quantity's SI unit; null is open. */
  readonly min: number | null;
  /** As `min`, at the other end. */
  readonly max: number | null;
  /** Past these the finding says stop, whatever the uncertainty. */
  readonly stopMin?: number;
  /** As `stopMin`, at the other end. */
  readonly stopMax?: number;
  /** Kind of its source. */
  readonly source: SourceKind;
  /** The message `band-source.…` names the source. */
  readonly sourceKey: string;
  /** The part that is highlighted on the drawing. */
  readonly part: Finding['part'];
  /** Numbers of seats of the boats for which it holds. Left out: all. */
  readonly crews?: readonly number[];
  /**
   * For a rule of thumb about a place: the outcomes that it serves. While they are good, a value outside the band is at most a
   * *check*: an unusual place that works.
   */
  readonly serves?: readonly QuantityId[];
  /** True when it is judged only with a paddler in the boat. */
  readonly needsCrew?: boolean;
  /** Whose the stop limit is, where it is not the band's: an athlete's own, outside the band. */
  readonly stopBy?: Pick<Band, 'source' | 'sourceKey' | 'reason'>;
}

/** Boats of one. */
const single = [1] as const;
const crew = [2, 3, 4] as const;

/** What the usual places of the knee are for: an even trim, weight over the boat, joints in their easy range. */
const TRIM: readonly QuantityId[] = ['trimRest', 'trimCatch'];
const ACROSS: readonly QuantityId[] = ['supportMargin', 'offCentre', 'trunkRoll'];
const JOINTS: readonly QuantityId[] = ['frontKnee', 'kneelingKnee', 'hipFlexorStretch', 'supportMargin'];

/**
 * The one table of bands. Rows of common practice are what sprint coaches say about the high kneel. Each row's `sourceKey`
 * names its source, or says that it is an estimate.
 */
export const BANDS: readonly BandRule[] = [
  {
    ...practice('padAft', cm(15), cm(20), 'kneePad', single),
    sourceKey: 'padAft',
    serves: TRIM,
  },
  { ...practice('padOut', cm(2), cm(5), 'kneePad', single), serves: ACROSS },
  {
    ...practice('padOut', cm(4), cm(12), 'kneePad', crew),
    serves: ACROSS,
    sourceKey: 'padOut.crew',
  },
  {
    ...practice('padHeight', cm(8), cm(15), 'kneePad', single),
    serves: JOINTS,
    sourceKey: 'padHeight',
  },
  {
    ...practice('padHeight', cm(10), cm(17), 'kneePad', [2, 3]),
    serves: JOINTS,
    sourceKey: 'padHeight.crew',
  },
  {
    ...practice('padHeight', cm(12), cm(19), 'kneePad', [4]),
    serves: JOINTS,
    sourceKey: 'padHeight.four',
  },
  {
    ...practice('recessTurn', deg(3), deg(30), 'kneePad'),
    sourceKey: 'recessTurn',
  },
  {
    ...practice('recessDepth', cm(0.8), cm(4), 'kneePad'),
    sourceKey: 'recessDepth',
  },
  practice('restTurn', deg(15), deg(25), 'rearRest'),
  {
    ...practice('frontKnee', deg(110), deg(160), 'frontKnee'),
    sourceKey: 'frontKnee',
  },
  practice('trunkRoll', deg(0), deg(6), 'trunk'),
  practice('paddleUnderStature', cm(8), cm(12), 'paddle'),
  {
    ...practice('bladeShare', 1 / 3, 0.38, 'paddle'),
    sourceKey: 'bladeShare',
  },
  {
    ...practice('strapReleases', 1, null, 'rearRest'),
    stopMin: 0,
    sourceKey: 'strapReleases',
  },
  practice('floorNonSlip', 1, null, 'frontFoot'),
  practice('padBraced', 1, null, 'kneePad'),
  practice('kneelsOnSide', 1, null, 'kneePad'),
  {
    ...practice('trimRest', 0, 0.035, 'hull'),
    sourceKey: 'trimRest',
    needsCrew: true,
  },
  {
    ...practice('trimCatch', -0.01, null, 'hull'),
    sourceKey: 'trimCatch',
    needsCrew: true,
  },
  {
    quantity: 'trunkPitch',
    min: deg(-5),
    max: deg(20),
    stopMax: deg(60),
    source: 'published',
    sourceKey: 'trunkPitch',
    part: 'trunk',
  },
  {
    quantity: 'kneelingKnee',
    min: deg(60),
    max: deg(125),
    stopMin: deg(180 - 142),
    source: 'published',
    sourceKey: 'kneelingKnee',
    part: 'kneelingKnee',
  },
  {
    quantity: 'kneelingHip',
    min: deg(130),
    max: deg(195),
    stopMax: deg(205),
    source: 'published',
    sourceKey: 'kneelingHip',
    part: 'hip',
  },
  {
    quantity: 'frontHip',
    min: deg(65),
    max: null,
    stopMin: deg(45),
    source: 'published',
    sourceKey: 'frontHip',
    part: 'hip',
  },
  {
    quantity: 'hipFlexorStretch',
    min: null,
    max: 0,
    source: 'published',
    sourceKey: 'hipFlexorStretch',
    part: 'hip',
  },
  {
    quantity: 'rearAnkle',
    min: deg(70),
    max: deg(140),
    // Our own estimate: pointed by 65°, past the averages of 53 to 62° (Soucie et al. 2011, from memory).
    stopMax: deg(155),
    source: 'published',
    sourceKey: 'rearAnkle',
    part: 'rearRest',
  },
  {
    quantity: 'frontAnkle',
    min: deg(73),
    max: deg(140),
    source: 'published',
    sourceKey: 'frontAnkle',
    part: 'frontFoot',
  },
  model('supportMargin', 0.005, null, 'support', { stopMin: 0 }),
  model('kneeShare', 0.4, 0.7, 'support'),
  model('rearShare', 0.03, 0.25, 'rearRest'),
  model('frontShare', 0.15, 0.5, 'frontFoot'),
  model('rearReach', null, 0, 'rearRest', { stopMax: 0.01 }),
  model('frontReach', null, 0, 'frontFoot', { stopMax: 0.01 }),
  {
    ...model('padInsideHull', null, 0.02, 'kneePad', { crews: crew }),
    serves: ACROSS,
    source: 'common practice',
    sourceKey: 'pad-on-hull',
  },
  because('padBevel', 'kneePad', {
    max: PART_LIMITS.padBevel,
    why: 'estimate.padBevel',
  }),
  model('kneeInsideHull', 0, null, 'kneePad'),
  because('restBevel', 'rearRest', {
    max: PART_LIMITS.restBevel,
    why: 'estimate.restBevel',
  }),
  because('padHolesToSkin', 'kneePad', {
    min: PART_LIMITS.holeToSkin,
    why: 'estimate.drill',
    stopMin: 0,
  }),
  because('restHolesToSkin', 'rearRest', {
    min: PART_LIMITS.holeToSkin,
    why: 'estimate.drill',
    stopMin: 0,
  }),
  because('padHolesOnBoard', 'kneePad', {
    min: PART_LIMITS.holeOnBoard,
    why: 'estimate.bolt',
  }),
  because('restHolesOnBoard', 'rearRest', {
    min: PART_LIMITS.holeOnBoard,
    why: 'estimate.bolt',
  }),
  because('padOverhang', 'kneePad', {
    max: PART_LIMITS.padOverhang,
    why: 'estimate.padOverhang',
    crews: single,
  }),
  {
    ...model('padOverhang', null, PART_LIMITS.crewPadOverhang, 'kneePad', { crews: crew }),
    source: 'common practice',
    sourceKey: 'pad-on-hull',
  },
  because('restOverhang', 'rearRest', {
    max: PART_LIMITS.restOverhang,
    why: 'estimate.restOverhang',
  }),
  because('footOverhang', 'frontFoot', {
    max: PART_LIMITS.footOverhang,
    why: 'estimate.footOverhang',
  }),
  model('footInsideHull', 0, null, 'frontFoot'),
  model('padToRest', 0.02, null, 'rearRest'),
  model('padToFrontHeel', 0.02, null, 'frontFoot'),
  // Between whole blocks, a rest's sloping face included: a finger's breadth to get a foot in and out.
  model('toNextSeat', 0.01, null, 'rearRest', { crews: crew }),
  model('bladeSpacing', 0.8, null, 'paddle', { crews: crew }),
  model('padTravel', 0, null, 'kneePad'),
  model('restTravel', 0, null, 'rearRest'),
  { ...model('offCentre', -0.01, 0.01, 'hull'), needsCrew: true },
  because('boardInsideHull', 'hull', {
    min: -PART_LIMITS.boardBevel,
    why: 'estimate.boardBevel',
  }),
  // Both numbers are our own estimates.
  model('leastFreeboard', 0.05, null, 'hull', { stopMin: 0.02 }),
];

/** A row that rests on common practice, no source. */
function practice(
  quantity: QuantityId,
  min: number | null,
  max: number | null,
  part: Finding['part'],
  crews?: readonly number[],
): BandRule {
  return { quantity, min, max, part, source: 'common practice', sourceKey: 'practice', crews };
}

/** A limit of this project's own, and the message that gives its reason. */
function because(
  quantity: QuantityId,
  part: Finding['part'],
  {
    min,
    max,
    why,
    ...more
  }: { min?: number; max?: number; why: string } & Pick<BandRule, 'stopMin' | 'crews'>,
): BandRule {
  return {
    ...model(quantity, min ?? null, max ?? null, part, more),
    sourceKey: why,
  };
}

/** A row that rests on the model itself. */
function model(
  quantity: QuantityId,
  min: number | null,
  max: number | null,
  part: Finding['part'],
  more: Pick<BandRule, 'stopMin' | 'stopMax' | 'crews'> = {},
): BandRule {
  return {
    quantity,
    min,
    max,
    part,
    source: 'this model',
    sourceKey: 'estimate',
    ...more,
  };
}
