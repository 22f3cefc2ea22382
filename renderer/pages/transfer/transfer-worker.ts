import type { Boat } from '../../../core/fit/boat-schema.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { Report } from '../../../core/fit/report.ts';
import { type Transferred, transferFit } from '../../../core/transfer/transfer-fit.ts';

export interface TransferQuestion {
  readonly fit: Fit;
  readonly boat: Boat;
}

/** The fit as it is, and in the other boat. */
export interface TransferAnswer {
  readonly old: { readonly fit: Fit; readonly report: Report };
  readonly moved: Transferred;
}

const evaluator = createEvaluator();

self.onmessage = ({ data: { fit, boat } }: MessageEvent<TransferQuestion>) => {
  const old = { fit, report: evaluator.evaluate(fit) };
  self.postMessage({ old, moved: transferFit(evaluator, fit, boat) } satisfies TransferAnswer);
};
