import type { BoardHole } from '../document/boat-schema.ts';
import type { DrillingModel, PlanHole, Standing } from './drilling-model.ts';
import type { DrillingPlan } from './drilling-plan.ts';
import type { DrilledFitting } from './drilling-wish.ts';

/** A paddler of a plan: fit and seat as its wishes have them. */
export interface PlannedPaddler {
  /** Index of the fit among those planned for. */
  readonly fit: number;
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly name: string;
}

/** A hole with the number that is painted beside it, and the letters of those whose fittings stand in it. */
export interface MarkedHole extends PlanHole {
  /** Counts from 1. */
  readonly number: number;
  readonly letters: readonly string[];
}

/** A paddler with a letter, and the numbers of the holes of pad and rest; none where a fitting needs no hole or finds none. */
export interface MarkedPaddler extends PlannedPaddler {
  readonly letter: string;
  /** Numbers as painted. */
  readonly holes: Readonly<Record<DrilledFitting, readonly number[]>>;
  /** How each fitting stands; null where it finds no place. */
  readonly standings: Readonly<Record<DrilledFitting, Standing | null>>;
  /** Station of the bolts of what stands on rails, metres; null for all else. */
  readonly onRails: Readonly<Record<DrilledFitting, number | null>>;
}

/** A plan as it is painted on the board: holes by number, paddlers by letter. */
export interface MarkedPlan {
  readonly holes: readonly MarkedHole[];
  readonly paddlers: readonly MarkedPaddler[];
  /** Holes of the board that nobody uses: drilled or plugged. */
  readonly unused: readonly BoardHole[];
}

/** What stands on holes. */
const FITTINGS = ['kneePad', 'rearRest'] as const;

/**
 * Numbers the holes of a plan from the bow aft and from port to starboard, letters the paddlers A, B, C in the order given, and
 * lists who uses which hole. Earlier planned holes are left out.
 */
export function markedPlan(
  model: DrillingModel,
  { standings, used }: DrillingPlan,
  paddlers: readonly PlannedPaddler[],
): MarkedPlan {
  const inOrder = used.toSorted((a, b) => b.x - a.x || b.y - a.y);
  const numberOf = (id: number) => inOrder.indexOf(model.holes[id]!) + 1;
  const marked = paddlers.map((paddler, k): MarkedPaddler => {
    const wishOf = (fitting: DrilledFitting) =>
      model.wishes.findIndex(
        (one) => one.fit === paddler.fit && one.seat === paddler.seat && one.fitting === fitting,
      );
    const stationOf = (fitting: DrilledFitting) => {
      const [wish, standing] = [model.wishes[wishOf(fitting)], standings[wishOf(fitting)]];
      return wish?.rails && standing ? wish.bolts[0]!.x + standing.dx : null;
    };
    const [pad, rest] = FITTINGS.map((fitting) => standings[wishOf(fitting)] ?? null);
    const numbers = (standing: Standing | null | undefined) =>
      (standing?.holes ?? []).map(numberOf).sort((a, b) => a - b);
    return {
      ...paddler,
      letter: letterOf(k),
      holes: { kneePad: numbers(pad), rearRest: numbers(rest) },
      standings: { kneePad: pad ?? null, rearRest: rest ?? null },
      onRails: { kneePad: stationOf('kneePad'), rearRest: stationOf('rearRest') },
    };
  });
  const holes = inOrder.map((hole, k): MarkedHole => {
    const number = k + 1;
    const users = marked.filter(({ holes: of }) => FITTINGS.some((fitting) => of[fitting].includes(number)));
    return { ...hole, number, letters: users.map(({ letter }) => letter) };
  });
  const isUsed = ({ xM, yM }: BoardHole) => holes.some(({ x, y }) => x === xM && y === yM);
  const unused = model.rules.known.filter((hole) => hole.state !== 'planned' && !isUsed(hole));
  return { holes, paddlers: marked, unused };
}

/** A, B … Z, AA, AB … */
function letterOf(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : `${letterOf(Math.floor(place / 26) - 1)}${last}`;
}
