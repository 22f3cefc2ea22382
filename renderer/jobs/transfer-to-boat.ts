import type { Boat } from '../../core/document/boat-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { type Transferred, transferFit } from '../../core/transfer/transfer-fit.ts';
import type { JobTools } from './job.ts';

export interface TransferQuestion {
  readonly fit: Fit;
  readonly boat: Boat;
}

/** The fit as it is, and in the other boat. */
export interface TransferAnswer {
  readonly old: { readonly fit: Fit; readonly report: Report };
  readonly moved: Transferred;
}

/** The same stance in another boat. */
// biome-ignore lint/correctness/useYield: it is over in one step
export function* transferToBoat(
  { fit, boat }: TransferQuestion,
  { evaluator }: JobTools<never>,
): Generator<never, TransferAnswer, void> {
  const old = { fit, report: evaluator.evaluate(fit) };
  return { old, moved: transferFit(evaluator, fit, boat) };
}
