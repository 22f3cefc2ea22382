import { useEffect, useRef, useState } from 'react';
import { rankOrders, type SeatingOrder } from '../../../core/crew/compare-orders.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { OrderAnswer } from './order-worker.ts';

/** The comparison of seating orders: what has been judged so far, best first, and whether work is going on. */
export interface Orders {
  readonly ranked: readonly SeatingOrder[];
  readonly done: number;
  readonly all: number;
  readonly working: boolean;
  start(fit: Fit): void;
  stop(): void;
}

/** Compares orders in a worker of its own, with progress; `stop` ends it at once, and so does leaving the page. */
export function useOrders(): Orders {
  const worker = useRef<Worker | null>(null);
  const [orders, setOrders] = useState<readonly SeatingOrder[]>([]);
  const [progress, setProgress] = useState({ done: 0, all: 0 });
  const [working, setWorking] = useState(false);

  function stop(): void {
    worker.current?.terminate();
    worker.current = null;
    setWorking(false);
  }

  function start(fit: Fit): void {
    stop();
    setOrders([]);
    setProgress({ done: 0, all: 0 });
    setWorking(true);
    const started = new Worker(new URL('./order-worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<OrderAnswer>) => {
      setOrders((before) => [...before, data.order]);
      setProgress({ done: data.done, all: data.all });
      if (data.done === data.all) stop();
    };
    worker.current = started;
    started.postMessage(fit);
  }

  useEffect(() => () => worker.current?.terminate(), []);
  return { ranked: rankOrders(orders), ...progress, working, start, stop };
}
