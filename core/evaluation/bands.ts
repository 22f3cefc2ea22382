import { PART_LIMITS } from '../parts/limits.ts';
import type { Finding, SourceKind } from './finding.ts';
import type { QuantityId } from './quantities.ts';

const deg = (angle: number) => (angle * Math.PI) / 180;
const cm = (length: number) => length / 100;
const PRACTICE = 'common coaching practice, no source';
const HANDBOOK = 'AAOS joint-motion handbook values, recalled';

/** One row of the band table. */
export interface BandRule {
  readonly quantity: QuantityId;
  /** Edges in the quantity's SI unit; null is open. */
  readonly min: number | null;
  readonly max: number | null;
  /** Past these the finding says stop, whatever the uncertainty. */
  readonly stopMin?: number;
  readonly stopMax?: number;
  readonly source: SourceKind;
  readonly sourceText: string;
  readonly part: Finding['part'];
  /** Number of seats of the boats it holds for; left out, all. */
  readonly crews?: readonly number[];
  /**
   * Of a rule of thumb about a place: the outcomes that it serves. Outside the band while they are good it is no more than a
   * *check*: an unusual place, and it works.
   */
  readonly serves?: readonly QuantityId[];
  /** True when it speaks of the whole boat only with every seat taken by somebody. */
  readonly needsCrew?: boolean;
}

const single = [1] as const;
const crew = [2, 3, 4] as const;

/** What the usual places of the knee are for: an even trim, weight over the boat, joints in their easy range. */
const TRIM: readonly QuantityId[] = ['trimRest', 'trimCatch'];
const ACROSS: readonly QuantityId[] = ['supportMargin', 'offCentre', 'trunkRoll'];
const JOINTS: readonly QuantityId[] = ['frontKnee', 'kneelingKnee', 'hipFlexorStretch', 'supportMargin'];

/**
 * The one table of bands. Rows of common practice are what sprint coaches say of the high kneel; the upper edge of
 * "slightly" and the crew figures are this project's reading of them and say so. Joint bands: ANTHROPOMETRY sources.
 */
export const BANDS: readonly BandRule[] = [
  {
    ...practice('padAft', cm(15), cm(20), 'kneePad', single),
    sourceText: `${PRACTICE}: 15 to 20 cm behind the boat's centre`,
    serves: TRIM,
  },
  { ...practice('padOut', cm(2), cm(5), 'kneePad', single), serves: ACROSS },
  {
    ...practice('padOut', cm(4), cm(12), 'kneePad', crew),
    serves: ACROSS,
    sourceText: `${PRACTICE}: in crews the knee lies nearer the boat's side; the figures are this project's reading`,
  },
  {
    ...practice('padHeight', cm(8), cm(15), 'kneePad', single),
    serves: JOINTS,
    sourceText: 'recalled, low confidence: pads of 8–15 cm above the floorboard',
  },
  {
    ...practice('padHeight', cm(10), cm(17), 'kneePad', [2, 3]),
    serves: JOINTS,
    sourceText: `${PRACTICE}: recess higher than in a single; the figures are this project's reading`,
  },
  {
    ...practice('padHeight', cm(12), cm(19), 'kneePad', [4]),
    serves: JOINTS,
    sourceText: `${PRACTICE}: recess higher still in a four; the figures are this project's reading`,
  },
  {
    ...practice('recessTurn', deg(3), deg(30), 'kneePad'),
    sourceText: `${PRACTICE}: recess slightly oblique; the figures are this project's reading`,
  },
  {
    ...practice('recessDepth', cm(0.8), cm(4), 'kneePad'),
    sourceText: `${PRACTICE}: recess shaped to the knee; the figures are this project's reading`,
  },
  practice('restTurn', deg(15), deg(25), 'rearRest'),
  {
    ...practice('frontKnee', deg(110), deg(160), 'frontKnee'),
    sourceText: `${PRACTICE}: over 110°; under 160° is this project's reading`,
  },
  practice('trunkRoll', deg(0), deg(6), 'trunk'),
  practice('paddleUnderStature', cm(8), cm(12), 'paddle'),
  {
    ...practice('bladeShare', 1 / 3, 0.38, 'paddle'),
    sourceText: `${PRACTICE}: slightly more than a third; 0.38 is this project's reading`,
  },
  {
    ...practice('strapReleases', 1, null, 'rearRest'),
    stopMin: 0,
    sourceText: `${PRACTICE}: a strap, if any, lets go by itself; nobody is tied in`,
  },
  practice('floorNonSlip', 1, null, 'frontFoot'),
  practice('padBraced', 1, null, 'kneePad'),
  practice('kneelsOnSide', 1, null, 'kneePad'),
  {
    ...practice('trimRest', 0, 0.035, 'hull'),
    sourceText: `${PRACTICE}: bow slightly higher than stern at rest; 35 mm is this project's reading`,
    needsCrew: true,
  },
  {
    ...practice('trimCatch', -0.01, null, 'hull'),
    sourceText: `${PRACTICE}: the bow not driven down by more than the coach's limit; 10 mm unless the coach sets it`,
    needsCrew: true,
  },
  {
    quantity: 'trunkPitch',
    min: deg(-5),
    max: deg(20),
    stopMax: deg(60),
    source: 'published',
    sourceText: 'ISO 11226 and EN 1005-4, trunk inclination held still (ready only), recalled',
    part: 'trunk',
  },
  {
    quantity: 'kneelingKnee',
    min: deg(60),
    max: deg(125),
    stopMin: deg(180 - 142),
    source: 'published',
    sourceText: 'range: Soucie et al. 2011, recalled; comfortable part: estimate',
    part: 'kneelingKnee',
  },
  {
    quantity: 'kneelingHip',
    min: deg(130),
    max: deg(195),
    stopMax: deg(205),
    source: 'published',
    sourceText: `${HANDBOOK}: hip extension to 20–30°`,
    part: 'hip',
  },
  {
    quantity: 'frontHip',
    min: deg(65),
    max: null,
    stopMin: deg(45),
    source: 'published',
    sourceText: `${HANDBOOK}: hip flexion to 120°; Soucie et al. 2011 130–135°, recalled`,
    part: 'hip',
  },
  {
    quantity: 'hipFlexorStretch',
    min: null,
    max: 0,
    source: 'published',
    sourceText: 'length test of the two-joint hip flexor: knee at least 80° with the hip at 0° (Kendall)',
    part: 'hip',
  },
  {
    quantity: 'rearAnkle',
    min: deg(70),
    max: deg(140),
    stopMax: deg(155),
    source: 'published',
    sourceText: `${HANDBOOK}: ankle 20° up, 50° down`,
    part: 'rearRest',
  },
  {
    quantity: 'frontAnkle',
    min: deg(73),
    max: deg(140),
    source: 'published',
    sourceText: `${HANDBOOK}; dorsiflexion 13–17°: Soucie et al. 2011, recalled`,
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
    sourceText: `${PRACTICE}: in crews the pad rests partly on the hull; the figure is this project's reading`,
  },
  because('padBevel', 'kneePad', {
    max: PART_LIMITS.padBevel,
    why: 'more would take the wood from under the recess’s side',
  }),
  model('kneeInsideHull', 0, null, 'kneePad'),
  because('restBevel', 'rearRest', {
    max: PART_LIMITS.restBevel,
    why: 'more would take the wood from under the ball of the foot',
  }),
  because('padHolesToSkin', 'kneePad', {
    min: PART_LIMITS.holeToSkin,
    why: 'what a drill may be out by',
    stopMin: 0,
  }),
  because('restHolesToSkin', 'rearRest', {
    min: PART_LIMITS.holeToSkin,
    why: 'what a drill may be out by',
    stopMin: 0,
  }),
  because('padHolesOnBoard', 'kneePad', {
    min: PART_LIMITS.holeOnBoard,
    why: 'a bolt’s own width of board beside it',
  }),
  because('restHolesOnBoard', 'rearRest', {
    min: PART_LIMITS.holeOnBoard,
    why: 'a bolt’s own width of board beside it',
  }),
  because('padOverhang', 'kneePad', {
    max: PART_LIMITS.padOverhang,
    why: 'a turned pad’s corners carry no knee',
    crews: single,
  }),
  {
    ...model('padOverhang', null, PART_LIMITS.crewPadOverhang, 'kneePad', { crews: crew }),
    source: 'common practice',
    sourceText: `${PRACTICE}: in crews the pad rests partly on the hull; the figure is this project's reading`,
  },
  because('restOverhang', 'rearRest', {
    max: PART_LIMITS.restOverhang,
    why: 'the foot bears on the middle half of the rest',
  }),
  because('footOverhang', 'frontFoot', {
    max: PART_LIMITS.footOverhang,
    why: 'a foot is rounder than its length and breadth',
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
    why: 'what planing the board’s lower edge takes off',
  }),
  model('leastFreeboard', 0.05, null, 'hull', { stopMin: 0.02 }),
];

function practice(
  quantity: QuantityId,
  min: number | null,
  max: number | null,
  part: Finding['part'],
  crews?: readonly number[],
): BandRule {
  return { quantity, min, max, part, source: 'common practice', sourceText: PRACTICE, crews };
}

/** A limit of this project's, and in a few words what it rests on. */
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
    sourceText: `this project's estimate: ${why}`,
  };
}

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
    sourceText: "this project's estimate; no published figure was found",
    ...more,
  };
}
