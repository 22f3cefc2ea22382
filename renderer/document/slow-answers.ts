import { createStore, type StoreApi } from 'zustand/vanilla';
import type { FittingCoordinate } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Suggestion } from '../../core/evaluation/finding.ts';
import type { Derivative } from '../../core/optimise/sensitivity.ts';
import type { JobRunner } from '../jobs/job-runner.ts';
import type { SlowAnswer } from '../jobs/slow-answers-of.ts';
import type { FitDocument } from './fit-document.ts';

/** What is known so far. Suggestions are of the fit as it stands; derivatives stay until newer ones come. */
export interface SlowAnswers {
  readonly seat: number | null;
  readonly derivatives: Readonly<Partial<Record<FittingCoordinate, readonly Derivative[]>>>;
  readonly suggestions: Readonly<Record<string, Suggestion>>;
}

/** A pause in the movement of the hand before the worker is asked, milliseconds. */
const PAUSE_MS = 120;

/** Keeps the slow answers of a document up to date, in a worker, after each gesture. */
export function keepSlowAnswers(
  document: FitDocument,
  runner: JobRunner<'slowAnswersOf'>,
): { readonly answers: StoreApi<SlowAnswers>; stop(): void } {
  const answers = createStore<SlowAnswers>(() => ({ seat: null, derivatives: {}, suggestions: {} }));
  let timer: ReturnType<typeof setTimeout> | null = null;
  let asked: { fit: Fit; seat: number } | null = null;

  function ask(): void {
    const { fit, seat } = document.getState();
    if (asked?.fit === fit && asked.seat === seat) return;
    answers.setState({
      suggestions: asked?.fit === fit ? answers.getState().suggestions : {},
      ...(answers.getState().seat === seat ? {} : { derivatives: {}, seat }),
    });
    asked = { fit, seat };
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      runner.start({ fit, seat }, { progress: hear });
    }, PAUSE_MS);
  }

  /** Nothing of an older fit is shown: the runner drops what comes after a newer start, this what comes before it. */
  function hear(answer: SlowAnswer): void {
    if (answer.kind === 'derivatives') answers.setState({ seat: answer.seat, derivatives: answer.of });
    else if (timer === null) {
      const { suggestions } = answers.getState();
      answers.setState({ suggestions: { ...suggestions, [answer.findingId]: answer.suggestion } });
    }
  }

  const unsubscribe = document.subscribe(ask);
  ask();
  return {
    answers,
    stop() {
      unsubscribe();
      if (timer !== null) clearTimeout(timer);
      runner.cancel();
    },
  };
}
