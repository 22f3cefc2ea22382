import type { Boat } from '../../core/document/boat-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { hullOrNot } from '../../core/hull/hull-of-boat.ts';
import { whyNot } from '../language/why-not.ts';

/** A fit with its report and its hull: what every picture of it is made from. */
export interface SolvedFit {
  readonly fit: Fit;
  readonly report: Report;
  readonly hull: Hull;
}

/** Evaluates a fit; a text says why its boat cannot be drawn. */
export function solveFit(fit: Fit): SolvedFit | string {
  const hull = hullOrWhyNot(fit.boat);
  return typeof hull === 'string' ? hull : { fit, report: evaluateFit(fit), hull };
}

/** The hull of a boat; a text says why it is none. */
export function hullOrWhyNot(boat: Pick<Boat, 'hull' | 'name' | 'correction'>): Hull | string {
  const hull = hullOrNot(boat);
  return hull.kind === 'hull' ? hull : whyNot(hull);
}
