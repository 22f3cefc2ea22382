import { useEffect, useState } from 'react';
import type { GrowthChanges } from '../../../core/growth/growth-changes.ts';
import type { GrowthAnswer, GrowthQuestion } from './growth-worker.ts';

type Answers = ReadonlyMap<string, GrowthChanges>;
const NONE: Answers = new Map();

/** What growth does to each of some fits, by key, as the answers come in; worked out beside the page. */
export function useGrowthChanges(questions: readonly GrowthQuestion[]): Answers {
  const [known, setKnown] = useState<{ of: readonly GrowthQuestion[]; answers: Answers }>({
    of: questions,
    answers: NONE,
  });
  useEffect(() => {
    if (questions.length === 0) return;
    const worker = new Worker(new URL('./growth-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<GrowthAnswer>) =>
      setKnown((before) => ({
        of: questions,
        answers: new Map([...(before.of === questions ? before.answers : NONE), [data.key, data.changes]]),
      }));
    for (const question of questions) worker.postMessage(question);
    return () => worker.terminate();
  }, [questions]);
  return known.of === questions ? known.answers : NONE;
}
