import { FITTING_COORDINATES, type FittingCoordinate } from '../../core/findings/finding.ts';
import { suggestChange } from '../../core/findings/suggest-change.ts';
import { createEvaluator } from '../../core/fit/evaluator.ts';
import { type Derivative, derivativesTo } from '../../core/proposal/sensitivity.ts';
import type { SlowAnswer, SlowQuestion } from './slow-answers.ts';

const evaluator = createEvaluator();
let latest = 0;

const post = (answer: SlowAnswer) => self.postMessage(answer);
/** Lets a newer question in. */
const breathe = () => new Promise((resolve) => setTimeout(resolve, 0));

self.onmessage = ({ data }: MessageEvent<SlowQuestion>) => {
  latest = data.turn;
  void answer(data);
};

async function answer({ turn, fit, seat }: SlowQuestion): Promise<void> {
  await breathe();
  if (latest !== turn) return;
  const report = evaluator.evaluate(fit);
  if (fit.seats[seat]?.athlete) {
    const of = {} as Record<FittingCoordinate, Derivative[]>;
    for (const coordinate of FITTING_COORDINATES) {
      of[coordinate] = derivativesTo({ evaluator, fit, report }, { seat, coordinate });
    }
    post({ turn, kind: 'derivatives', seat, of });
  }
  for (const finding of report.findings) {
    if (finding.severity === 'good' || (finding.seat !== null && finding.seat !== seat)) continue;
    await breathe();
    if (latest !== turn) return;
    const suggestion = suggestChange({ evaluator, fit, report, finding });
    post({ turn, kind: 'suggestion', findingId: finding.id, suggestion });
  }
}
