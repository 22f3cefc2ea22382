import { useEffect, useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Evaluator } from '../../../core/evaluation/evaluator.ts';
import type { Bench } from '../../bench/bench-context.tsx';
import { createBenchView } from '../../document/bench-view.ts';
import { createFitDocument } from '../../document/fit-document.ts';
import { keepDraft, waitForClose } from '../../document/keep-draft.ts';
import { historyFor, keepHistory } from '../../document/kept-histories.ts';
import { keepSlowAnswers } from '../../document/slow-answers.ts';
import { createJobRunner } from '../../jobs/job-runner.ts';

/** A bench for an opened fit: its document, kept on the disk, and its slow answers. Ends with the component. */
export function useOpenedBench(opened: OpenedFit, evaluator: Evaluator): Bench | null {
  return useDocumentWithAnswers(opened.id, () => {
    const history = historyFor(opened.id, opened.fit);
    const document = createFitDocument({
      fitId: opened.id,
      fit: opened.fit,
      savedAt: opened.draftSavedAt,
      evaluator,
      keep: keepDraft,
      history,
    });
    const newest = opened.revisions[0];
    if (opened.draftSavedAt === null && newest) document.keptAsRevision(newest.savedAt);
    return { document, leave: () => keepHistory(opened.id, history, document.getState().fit) };
  });
}

/** A bench that only looks at a state of a fit: nothing of it is ever kept. */
export function useLook(fit: Fit | null, evaluator: Evaluator): Bench | null {
  return useDocumentWithAnswers(fit, () => ({
    document: createFitDocument({
      fitId: '',
      fit: fit!,
      evaluator,
      keep: async () => ({ kind: 'conflict', message: '' }),
    }),
    leave: () => undefined,
  }));
}

interface Made {
  readonly document: Bench['document'];
  /** Called when the bench ends, before the document does. */
  readonly leave: () => void;
}

function useDocumentWithAnswers(key: unknown, make: () => Made): Bench | null {
  const [bench, setBench] = useState<Bench | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a bench lives as long as the fit it was made for
  useEffect(() => {
    if (!key) {
      setBench(null);
      return;
    }
    const { document, leave } = make();
    const slow = keepSlowAnswers(document, createJobRunner('slowAnswersOf'));
    setBench({ document, answers: slow.answers, view: createBenchView() });
    const leaving = () => void document.keepNow();
    window.addEventListener('pagehide', leaving);
    window.addEventListener('visibilitychange', leaving);
    return () => {
      window.removeEventListener('pagehide', leaving);
      window.removeEventListener('visibilitychange', leaving);
      slow.stop();
      waitForClose(document.close());
      leave();
      setBench(null);
    };
  }, [key]);
  return bench;
}
