import type { Athlete } from '../../core/document/athlete-schema.ts';
import { type BodyDifference, bodyDifference } from '../../core/growth/body-difference.ts';
import { likelyGrown } from '../../core/growth/likely-grown.ts';
import { type GrowthDue, measureAgain } from '../../core/growth/measure-again.ts';
import { today } from '../language/dates.ts';

/** The body that a fit's copy is held against: as measured last, or as it has likely grown where that is the same. */
export interface ComparedBody {
  readonly newest: Athlete;
  /** Null where nothing differs. */
  readonly difference: BodyDifference | null;
  /** Set where the difference is only likely. */
  readonly due: GrowthDue | null;
}

export function comparedBody(copy: Athlete, listed: Athlete, day = today()): ComparedBody {
  const difference = bodyDifference(copy, listed);
  if (difference) return { newest: listed, difference, due: null };
  const due = measureAgain(listed, day);
  if (!due) return { newest: listed, difference: null, due: null };
  const newest = likelyGrown(listed, due);
  return { newest, difference: bodyDifference(copy, newest), due };
}
