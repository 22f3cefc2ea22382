import { useEffect, useState } from 'react';
import type { Boat } from '../../../core/fit/boat-schema.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { TransferAnswer, TransferQuestion } from './transfer-worker.ts';

/** A fit in another boat, worked out beside the page; null while it is, or while no boat is chosen. */
export function useTransfer(fit: Fit, boat: Boat | null): TransferAnswer | null {
  const [known, setKnown] = useState<{ of: Boat; answer: TransferAnswer } | null>(null);
  useEffect(() => {
    if (!boat) return;
    const worker = new Worker(new URL('./transfer-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<TransferAnswer>) => setKnown({ of: boat, answer: data });
    worker.postMessage({ fit, boat } satisfies TransferQuestion);
    return () => worker.terminate();
  }, [fit, boat]);
  return known && known.of === boat ? known.answer : null;
}
