import type { Quantity, Unit } from '../evaluation/finding.ts';
import { type QuantityId, quantityDefinition } from '../evaluation/quantities.ts';
import type { Report } from '../evaluation/report.ts';
import { type Desire, desiresOf } from './desires.ts';
import type { Trial } from './observation.ts';

/** A wished-for quantity before and after, in its SI unit. */
export interface Moved {
  readonly quantity: QuantityId;
  readonly unit: Unit;
  /** Before and after, in `unit`. */
  readonly from: number;
  /** After the change. */
  readonly to: number;
}

/** How fully one observation is answered by a setting, against the one that was tried. */
export interface Answer {
  /** Index in the trial's observations. */
  readonly observation: number;
  /** 1 is a clear answer, 0 none, negative is worse than it was. */
  readonly answered: number;
  /** The coaching reason, in a half-sentence. */
  readonly reason: string;
  /** What the wishes ask for, as far as the model has it. */
  readonly moved: readonly Moved[];
}

/** From this much on an observation counts as answered (this project's weighing). */
export const ANSWERED = 0.6;

/** Each further wish of an observation counts half of the one before (this project's weighing). */
const NEXT_WISH = 0.5;

/**
 * How fully `now` answers each observation of a trial that was held on the setting of `tried`. The main wish of an
 * observation counts whole, each further one half of the one before. A knee share down by 0.04 answers "pressure on the
 * kneeling knee" with about 1.
 */
export function answersOf(trial: Trial, { tried, now }: { tried: Report; now: Report }): Answer[] {
  return trial.observations.map((observed, observation) => {
    const desires = desiresOf(observed);
    let answered = 0;
    const moved: Moved[] = [];
    desires.forEach((desire, i) => {
      const [was, is] = [tried, now].map((r) => readQuantity(r.quantities, desire.quantity, trial.seat));
      if (was == null || is == null) return;
      answered += wishAnswered(desire, was, is) * NEXT_WISH ** i;
      const unit = quantityDefinition(desire.quantity)!.unit;
      moved.push({ quantity: desire.quantity, unit, from: was, to: is });
    });
    return { observation, answered, reason: desires[0]?.reason ?? '', moved };
  });
}

/**
 * What an answer moves, from where each quantity stands now: `soFar` is the answer that the same observation has already. An answer is
 * told from the tried setting, and a drawing that has changed since shows other values.
 */
export function movedFromNow({ moved }: Answer, soFar: Answer | undefined): Moved[] {
  return moved.map((each) => {
    const now = soFar?.moved.find(({ quantity }) => quantity === each.quantity);
    return { ...each, from: now?.to ?? each.from };
  });
}

/**
 * How fully one wish came true: 1 where the quantity moved by as much as is clearly felt, below 0 where it went the
 * wrong way.
 */
function wishAnswered({ direction, clear }: Desire, was: number, is: number): number {
  if (direction === 'to zero') return (Math.abs(was) - Math.abs(is)) / clear;
  return ((is - was) * direction) / clear;
}

/** A quantity of a seat or else of the boat; null where it was not computed. */
function readQuantity(quantities: readonly Quantity[], id: QuantityId, seat: number): number | null {
  return quantities.find((q) => q.id === id && (q.seat === seat || q.seat === null))?.value ?? null;
}
