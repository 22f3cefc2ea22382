import { useEffect, useRef, useState } from 'react';
import type { DrillingAnswer, DrillingQuestion } from '../../jobs/drilling-worker.ts';

/** Where the build puts the planner of holes. */
const WORKER = 'assets/drilling-worker.js';

/** Asks the planner of holes; it works in a thread of its own and ends with the component. */
export function useDrilling() {
  const worker = useRef<Worker | null>(null);
  const [busy, setBusy] = useState(false);
  useEffect(() => () => worker.current?.terminate(), []);
  const ask = (question: DrillingQuestion, then: (answer: DrillingAnswer) => void) => {
    worker.current?.terminate();
    const mine = new Worker(new URL(WORKER, document.baseURI), { type: 'module' });
    worker.current = mine;
    setBusy(true);
    const done = (answer: DrillingAnswer) => {
      setBusy(false);
      mine.terminate();
      then(answer);
    };
    mine.onmessage = ({ data }: MessageEvent<DrillingAnswer>) => done(data);
    mine.onerror = ({ message }) => done({ kind: 'failed', why: message });
    mine.postMessage(question);
  };
  return { busy, ask };
}
