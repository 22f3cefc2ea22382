import type { Fit } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { exampleFit } from './example-fit.ts';

const evaluator = createEvaluator();
let held: Report | null = null;

/**
 * The report of a fit for tests that read no spread: every value is the fit's own, the spreads are those of the example. Most of an
 * evaluation goes into its spreads.
 */
export function valuesOf(fit: Fit): Report {
  held ??= evaluator.evaluate(exampleFit());
  return evaluator.evaluateHolding(fit, held);
}
