import { useEffect, useRef, useState } from 'react';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { Trial } from '../../../core/trial/observation.ts';
import type { TrialAnswers } from '../../../core/trial/rank-changes.ts';
import type { RankAnswer, RankQuestion } from './rank-worker.ts';

/**
 * How a trial is answered by the fit as it stands, and the changes that would answer more; worked out beside the page.
 * Null while it is being worked out for this fit; `tried` undefined waits.
 */
export function useRanked(fit: Fit, tried: Fit | undefined, trial: Trial): TrialAnswers | null {
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const [known, setKnown] = useState<{ of: Fit; trial: Trial; answers: TrialAnswers } | null>(null);
  const asked = useRef<{ of: Fit; trial: Trial } | null>(null);

  useEffect(() => {
    const started = new Worker(new URL('./rank-worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<RankAnswer>) => {
      if (data.turn === turn.current && asked.current) setKnown({ ...asked.current, answers: data.answers });
    };
    worker.current = started;
    return () => started.terminate();
  }, []);

  useEffect(() => {
    if (!tried) return;
    turn.current += 1;
    asked.current = { of: fit, trial };
    worker.current?.postMessage({ turn: turn.current, fit, tried, trial } satisfies RankQuestion);
  }, [fit, tried, trial]);

  return known && known.of === fit && known.trial === trial ? known.answers : null;
}
