import type { Fit } from '../../core/document/fit-schema.ts';
import { DEFAULT_RATE_PER_MIN } from '../../core/document/stroke-defaults.ts';
import { type UnderWay, underWayOfFit } from '../../core/under-way/under-way-of-fit.ts';
import type { JobTools } from './job.ts';

/** A fit, how fast and over what depth it runs, and another state of it to compare with. */
export interface UnderWayAsked {
  readonly fit: Fit;
  readonly speed: number;
  readonly depth: number | null;
  readonly against: Fit | null;
}

/** What the water says of a fit; null where it does not float. */
export function* underWayOf(
  { fit, speed, depth, against }: UnderWayAsked,
  { evaluator }: JobTools<never>,
): Generator<never, UnderWay | null, void> {
  const other = against && { fit: against, report: evaluator.evaluate(against) };
  const ratePerMin = fit.seats.find(({ athlete }) => athlete)?.stroke.ratePerMin ?? DEFAULT_RATE_PER_MIN;
  return underWayOfFit(fit, evaluator.evaluate(fit), { speed, depth, ratePerMin, against: other });
}
