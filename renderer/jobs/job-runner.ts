import type { JobAnswer, JobQuestion } from './job.ts';
import type { JobInput, JobName, JobProgress, JobResult } from './job-table.ts';

/** The part of a Worker that a runner uses. A test can stand in for it. */
export interface JobWorker {
  postMessage(question: JobQuestion): void;
  onmessage: ((event: MessageEvent<JobAnswer>) => void) | null;
  /** Called when the worker does not load, or its work throws. */
  onerror: (() => void) | null;
  terminate(): void;
}

/** Called with a job's progress and its result. */
export interface JobListener<Name extends JobName> {
  progress?(progress: JobProgress<Name>): void;
  result?(result: JobResult<Name>): void;
  /** A program error: no result comes. */
  failed?(): void;
}

/** Runs one job at a time. A newer start replaces an older one, whose answers are dropped. */
export interface JobRunner<Name extends JobName> {
  start(input: JobInput<Name>, listener: JobListener<Name>): void;
  /** Ends the work at once, with its worker. The next start makes a new one. */
  cancel(): void;
}

/** Where the build puts the worker: `renderer/vite.config.ts` builds it with the page, so that both share the core. */
const WORKER = 'assets/analysis-worker.js';

/** A worker starts in spite of a busy page after so long, milliseconds. */
const LONGEST_WAIT_MS = 1000;

/**
 * A worker that starts when the page has nothing else to do: loading and compiling the core again takes a second of the
 * processors' time, and the first drawing needs it. Questions wait until then.
 */
function startWorker(): JobWorker {
  let worker: Worker | null = null;
  const waiting: JobQuestion[] = [];
  const made: JobWorker = {
    onmessage: null,
    onerror: null,
    postMessage(question) {
      if (worker) worker.postMessage(question);
      else waiting.push(question);
    },
    terminate() {
      stopWaiting();
      worker?.terminate();
    },
  };
  const stopWaiting = whenIdle(() => {
    worker = new Worker(new URL(WORKER, document.baseURI), { type: 'module' });
    worker.onmessage = (event) => made.onmessage?.(event);
    worker.onerror = () => made.onerror?.();
    for (const question of waiting) worker.postMessage(question);
  });
  return made;
}

/** Calls back in a pause of the page's work. Returns a function that stops it. Some browsers do not tell of pauses. */
function whenIdle(work: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') {
    const timer = setTimeout(work, LONGEST_WAIT_MS / 4);
    return () => clearTimeout(timer);
  }
  const asked = requestIdleCallback(work, { timeout: LONGEST_WAIT_MS });
  return () => cancelIdleCallback(asked);
}

/** A runner with a worker of its own, made at the first start. `makeWorker` is for tests. */
export function createJobRunner<Name extends JobName>(
  name: Name,
  makeWorker: () => JobWorker = startWorker,
): JobRunner<Name> {
  let worker: JobWorker | null = null;
  let turn = 0;
  function cancel(): void {
    turn += 1;
    worker?.terminate();
    worker = null;
  }
  return {
    start(input, listener) {
      turn += 1;
      const mine = turn;
      worker ??= makeWorker();
      worker.onmessage = ({ data }) => {
        if (data.turn !== mine) return;
        if (data.kind === 'progress') listener.progress?.(data.value as JobProgress<Name>);
        else listener.result?.(data.value as JobResult<Name>);
      };
      worker.onerror = () => {
        cancel();
        listener.failed?.();
      };
      worker.postMessage({ turn, name, input });
    },
    cancel,
  };
}
