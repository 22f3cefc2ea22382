import type { FittingCoordinate } from '../document/coordinates.ts';
import { coordinateOf } from '../document/fitting-coordinate.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type Side, sideSign } from '../frame/mirror.ts';

/** Smallest change worth telling an athlete: a tape and a bevel read no finer. Metres and degrees. */
const LEAST_CHANGE = { m: 0.001, deg: 0.5 } as const;

/** One change told to an athlete: what moves, and what to feel for. */
export interface ToldChange {
  readonly what: string;
  readonly feel: string;
}

/** Writes a length as the reader wants it; the argument is in metres, never negative. */
export type WriteLength = (lengthM: number) => string;

interface Words {
  readonly unit: 'm' | 'deg';
  /** With `by` for the amount and `side` for the way a sideways move goes. */
  readonly more: (by: string, side: Side) => string;
  readonly less: (by: string, side: Side) => string;
  readonly feelMore: string;
  readonly feelLess: string;
}

/** What a greater and a smaller value of each coordinate is to the one who kneels. */
const WORDS: Readonly<Record<FittingCoordinate, Words>> = {
  'kneePad.aftM': {
    unit: 'm',
    more: (by) => `Your knee pad goes ${by} back.`,
    less: (by) => `Your knee pad goes ${by} forward.`,
    feelMore: 'The bow sits a little higher, and your front knee opens.',
    feelLess: 'The bow sits a little lower, and your front knee bends more.',
  },
  'kneePad.outM': {
    unit: 'm',
    more: (by, side) => `Your knee pad goes ${by} to the ${side}.`,
    less: (by, side) => `Your knee pad goes ${by} to the ${side}.`,
    feelMore: 'It is easier to lean over the water on your kneeling side.',
    feelLess: 'You kneel more over the middle, and the boat lies flatter.',
  },
  'kneePad.heightM': {
    unit: 'm',
    more: (by) => `Your knee pad is ${by} higher.`,
    less: (by) => `Your knee pad is ${by} lower.`,
    feelMore: 'You reach further, and the boat feels livelier.',
    feelLess: 'The boat feels steadier under you.',
  },
  'kneePad.recessTurnDeg': {
    unit: 'deg',
    more: (by) => `The hollow in your pad is turned ${by} more.`,
    less: (by) => `The hollow in your pad is turned ${by} less.`,
    feelMore: 'Your lower leg lies straight in the hollow, with no twist at the knee.',
    feelLess: 'Your lower leg lies straight in the hollow, with no twist at the knee.',
  },
  'rearRest.aftM': {
    unit: 'm',
    more: (by) => `Your rear foot rest goes ${by} back.`,
    less: (by) => `Your rear foot rest comes ${by} forward.`,
    feelMore: 'Your rear foot is less cramped; it should still touch.',
    feelLess: 'Your toes press more firmly on the rest.',
  },
  'rearRest.outM': {
    unit: 'm',
    more: (by, side) => `Your rear foot rest goes ${by} to the ${side}.`,
    less: (by, side) => `Your rear foot rest goes ${by} to the ${side}.`,
    feelMore: 'Your lower leg points straighter back.',
    feelLess: 'Your lower leg points more across the boat.',
  },
  'rearRest.heightM': {
    unit: 'm',
    more: (by) => `Your rear foot rest is ${by} higher.`,
    less: (by) => `Your rear foot rest is ${by} lower.`,
    feelMore: 'The ball of your rear foot sits higher.',
    feelLess: 'The ball of your rear foot sits lower.',
  },
  'rearRest.turnDeg': {
    unit: 'deg',
    more: (by) => `Your rear foot rest is turned ${by} more.`,
    less: (by) => `Your rear foot rest is turned ${by} less.`,
    feelMore: 'Your rear foot sits straight on the rest, without twisting.',
    feelLess: 'Your rear foot sits straight on the rest, without twisting.',
  },
  'frontFoot.forwardM': {
    unit: 'm',
    more: (by) => `Your front foot goes ${by} forward.`,
    less: (by) => `Your front foot comes ${by} back.`,
    feelMore: 'Your front knee opens, and the front leg pushes from further away.',
    feelLess: 'Your front knee bends more, and you push from closer.',
  },
  'frontFoot.outM': {
    unit: 'm',
    more: (by, side) => `Your front foot goes ${by} to the ${side}.`,
    less: (by, side) => `Your front foot goes ${by} to the ${side}.`,
    feelMore: 'Your feet stand closer together across the boat.',
    feelLess: 'You stand wider, which steadies you.',
  },
  'frontFoot.heightM': {
    unit: 'm',
    more: (by) => `Your front foot stands ${by} higher.`,
    less: (by) => `Your front foot stands ${by} lower.`,
    feelMore: 'Your front knee bends more.',
    feelLess: 'Your front knee opens a little.',
  },
  'frontFoot.toeOutDeg': {
    unit: 'deg',
    more: (by) => `Your front toes point ${by} further out.`,
    less: (by) => `Your front toes point ${by} further in.`,
    feelMore: 'Your front knee follows your toes.',
    feelLess: 'Your front knee follows your toes.',
  },
  'frontFoot.wedgeDeg': {
    unit: 'deg',
    more: (by) => `The slope under your front foot is ${by} steeper.`,
    less: (by) => `The slope under your front foot is ${by} flatter.`,
    feelMore: 'Your whole front foot presses, not only the toes.',
    feelLess: 'Your front heel stays down.',
  },
  'paddle.lengthM': {
    unit: 'm',
    more: (by) => `Your paddle is ${by} longer.`,
    less: (by) => `Your paddle is ${by} shorter.`,
    feelMore: 'Your top hand comes through a little higher.',
    feelLess: 'Your top hand comes through a little lower.',
  },
  'paddle.bladeLengthM': {
    unit: 'm',
    more: (by) => `Your blade is ${by} longer.`,
    less: (by) => `Your blade is ${by} shorter.`,
    feelMore: 'Each stroke is heavier; bury the blade, not the shaft.',
    feelLess: 'Each stroke is lighter.',
  },
  'paddle.lowerHandM': {
    unit: 'm',
    more: (by) => `Your lower hand goes ${by} down the shaft.`,
    less: (by) => `Your lower hand comes ${by} up the shaft.`,
    feelMore: 'Your hands are wider apart.',
    feelLess: 'Your hands are closer together.',
  },
};

/** Every fitting that moved between two settings of a seat, in the athlete's words. `kneels` is the side knelt on. */
export function toldChanges(
  before: Seat,
  after: Seat,
  { kneels, write }: { kneels: Side; write: WriteLength },
): ToldChange[] {
  const moves = (Object.keys(WORDS) as FittingCoordinate[]).flatMap((coordinate) => {
    const words = WORDS[coordinate];
    const by = coordinateOf(after, coordinate) - coordinateOf(before, coordinate);
    if (Math.abs(by) < LEAST_CHANGE[words.unit] - 1e-9) return [];
    const amount = words.unit === 'm' ? write(Math.abs(by)) : `${Number(Math.abs(by).toFixed(1))}°`;
    const side: Side = by * sideSign(kneels) > 0 ? 'left' : 'right';
    return by > 0
      ? [{ what: words.more(amount, side), feel: words.feelMore }]
      : [{ what: words.less(amount, side), feel: words.feelLess }];
  });
  return [...moves, ...choices(before, after)];
}

/** Changes of a kind rather than a place. */
function choices(before: Seat, after: Seat): ToldChange[] {
  const told: ToldChange[] = [];
  if (before.rearRest.strap !== 'releases' && after.rearRest.strap === 'releases') {
    told.push({
      what: 'Your foot strap now lets go by itself.',
      feel: 'Pull your foot free on land, then in shallow water, before you paddle.',
    });
  }
  if (!before.kneePad.braced && after.kneePad.braced) {
    told.push({ what: 'Your pad is now held firmly.', feel: 'The pad stays put when you pull hard.' });
  }
  if (!before.frontFoot.nonSlip && after.frontFoot.nonSlip) {
    told.push({
      what: 'The floor under your front foot has grip.',
      feel: 'Your front foot stays where it is, wet or dry.',
    });
  }
  return told;
}

/** Every sentence this module can say, for tests that read them all. */
export function everyChangeSentence(): string[] {
  return Object.values(WORDS).flatMap(({ more, less, feelMore, feelLess }) => [
    more('1 cm', 'left'),
    less('1 cm', 'right'),
    feelMore,
    feelLess,
  ]);
}
