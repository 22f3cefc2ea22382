import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Finding, FittingCoordinate, Suggestion } from '../../core/findings/finding.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import type { Derivative } from '../../core/proposal/sensitivity.ts';
import type { FitDocument } from './fit-document.ts';

/** What is asked of the worker: everything slow about one fit. A newer question ends the work on an older one. */
export interface SlowQuestion {
  readonly turn: number;
  readonly fit: Fit;
  readonly seat: number;
}

/** What the worker answers, piece by piece. */
export type SlowAnswer =
  | {
      readonly turn: number;
      readonly kind: 'derivatives';
      readonly seat: number;
      readonly of: Readonly<Record<FittingCoordinate, readonly Derivative[]>>;
    }
  | {
      readonly turn: number;
      readonly kind: 'suggestion';
      readonly findingId: Finding['id'];
      readonly suggestion: Suggestion;
    };

/** What is known so far. Suggestions are of the fit as it stands; derivatives stay until newer ones come. */
export interface SlowAnswers {
  readonly seat: number | null;
  readonly derivatives: Readonly<Partial<Record<FittingCoordinate, readonly Derivative[]>>>;
  readonly suggestions: Readonly<Record<string, Suggestion>>;
}

/** The part of a worker that is used, so that a test can stand in for it. */
export interface SlowWorker {
  postMessage(question: SlowQuestion): void;
  onmessage: ((event: MessageEvent<SlowAnswer>) => void) | null;
  terminate(): void;
}

/** A pause in the movement of the hand before the worker is asked, milliseconds. */
const PAUSE_MS = 120;

/** Keeps the slow answers of a document up to date, in a worker, after each gesture. */
export function followSlowly(
  document: FitDocument,
  worker: SlowWorker,
): { readonly answers: StoreApi<SlowAnswers>; stop(): void } {
  const answers = createStore<SlowAnswers>(() => ({ seat: null, derivatives: {}, suggestions: {} }));
  let turn = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let asked: { fit: Fit; seat: number } | null = null;

  function ask(): void {
    const { fit, seat } = document.getState();
    if (asked?.fit === fit && asked.seat === seat) return;
    turn += 1;
    answers.setState({
      suggestions: asked?.fit === fit ? answers.getState().suggestions : {},
      ...(answers.getState().seat === seat ? {} : { derivatives: {}, seat }),
    });
    asked = { fit, seat };
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => worker.postMessage({ turn, fit, seat }), PAUSE_MS);
  }

  worker.onmessage = ({ data }) => {
    if (data.turn !== turn) return;
    if (data.kind === 'derivatives') answers.setState({ seat: data.seat, derivatives: data.of });
    else {
      const { suggestions } = answers.getState();
      answers.setState({ suggestions: { ...suggestions, [data.findingId]: data.suggestion } });
    }
  };
  const unsubscribe = document.subscribe(ask);
  ask();
  return {
    answers,
    stop() {
      unsubscribe();
      if (timer !== null) clearTimeout(timer);
      worker.terminate();
    },
  };
}
