import type { Fit } from '../document/fit-schema.ts';
import type { Evaluator } from './evaluator.ts';
import type { Suggestion } from './finding.ts';
import type { Report } from './report.ts';
import { type KnownValues, suggestChange } from './suggest-change.ts';

/** A finding's id with the smallest single change that clears it. */
export interface SuggestionFor {
  /** The finding's id. */
  readonly finding: string;
  readonly suggestion: Suggestion;
}

/** The smallest single change for every finding that is not good, in the report's order. Each costs a search. */
export function suggestionsFor(evaluator: Evaluator, fit: Fit, report: Report): SuggestionFor[] {
  const known: KnownValues = new Map();
  return report.findings
    .filter((finding) => finding.severity !== 'good')
    .map((finding) => ({
      finding: finding.id,
      suggestion: suggestChange({ evaluator, fit, report, finding, known }),
    }));
}
