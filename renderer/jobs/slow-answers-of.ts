import { FITTING_COORDINATES, type FittingCoordinate } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Finding, Suggestion } from '../../core/evaluation/finding.ts';
import { type KnownValues, suggestChange } from '../../core/evaluation/suggest-change.ts';
import { type Derivative, derivativesTo } from '../../core/optimise/sensitivity.ts';
import { recordOf } from '../../core/units/entries.ts';
import type { JobTools } from './job.ts';

/** A fit, and the seat in hand. */
export interface SlowQuestion {
  readonly fit: Fit;
  readonly seat: number;
}

/** What is told piece by piece: first what one centimetre does, then a suggestion for each finding. */
export type SlowAnswer =
  | {
      readonly kind: 'derivatives';
      readonly seat: number;
      readonly of: Readonly<Record<FittingCoordinate, readonly Derivative[]>>;
    }
  | { readonly kind: 'suggestion'; readonly findingId: Finding['id']; readonly suggestion: Suggestion };

/** Everything slow that the bench shows of one fit. */
export function* slowAnswersOf(
  { fit, seat }: SlowQuestion,
  { evaluator }: JobTools<SlowAnswer>,
): Generator<SlowAnswer, void, void> {
  const report = evaluator.evaluate(fit);
  if (fit.seats[seat]?.athlete) {
    const of = recordOf(FITTING_COORDINATES, (coordinate) =>
      derivativesTo({ evaluator, fit, report }, { seat, coordinate }),
    );
    yield { kind: 'derivatives', seat, of };
  }
  const known: KnownValues = new Map();
  for (const finding of report.findings) {
    if (finding.severity === 'good' || (finding.seat !== null && finding.seat !== seat)) continue;
    const suggestion = suggestChange({ evaluator, fit, report, finding, known });
    yield { kind: 'suggestion', findingId: finding.id, suggestion };
  }
}
