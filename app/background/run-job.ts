import { Worker } from 'node:worker_threads';
import { words } from '../shell/say.ts';
import { type JobName, type JobOrder, type Jobs, type JobWord, WorkCancelled } from './job.ts';

/** A fault in a worker, with the code that the file system or SQLite gave it. */
export class JobFailed extends Error {
  readonly code: string;
  constructor({ code, message, stack }: Extract<JobWord, { kind: 'failed' }>) {
    super(message);
    this.code = code;
    this.stack = stack;
  }
}

/** A job under way. */
export interface RunningJob<T> {
  /** Resolves when everything it needs is loaded. */
  readonly ready: Promise<void>;
  /** Lets a job begin that waits. */
  begin(): void;
  readonly result: Promise<T>;
  /** Asks it to stop; it then ends with `WorkCancelled`. */
  cancel(): void;
}

/** As a source the worker lies beside this file; the desktop's build puts both into one folder under this name. */
const WORKER_FILE = import.meta.url.endsWith('.ts') ? 'worker.ts' : 'worker.js';

/**
 * Runs a job in a thread of its own, so that the program answers meanwhile. One that `waits` loads what it needs, and begins when
 * it is told. Rejects with `WorkCancelled`, or with `JobFailed` and the code of the error.
 */
export function startJob<N extends JobName>(
  name: N,
  input: Jobs[N]['input'],
  {
    progress = () => {},
    waits = false,
  }: { progress?: (done: number, of: number) => void; waits?: boolean } = {},
): RunningJob<Jobs[N]['output']> {
  const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const order: JobOrder = { name, input, stop, waits, language: words().language };
  const worker = new Worker(new URL(WORKER_FILE, import.meta.url), { workerData: order });
  const isReady = Promise.withResolvers<void>();
  const result = new Promise<Jobs[N]['output']>((resolve, reject) => {
    worker.on('message', (word: JobWord) => {
      if (word.kind === 'ready') isReady.resolve();
      else if (word.kind === 'progress') progress(word.done, word.of);
      else if (word.kind === 'done') resolve(word.output as Jobs[N]['output']);
      else reject(word.kind === 'cancelled' ? new WorkCancelled() : new JobFailed(word));
    });
    worker.on('error', reject);
    // After a word that settled it this changes nothing.
    worker.on('exit', (code) => reject(new Error(`the worker for ${name} ended with ${code}`)));
  });
  // Whoever waits for it to be ready hears why it never will be; nobody else needs to.
  result.catch(isReady.reject);
  isReady.promise.catch(() => {});
  return {
    ready: isReady.promise,
    begin: () => worker.postMessage('begin'),
    result,
    cancel: () => void Atomics.store(new Int32Array(stop), 0, 1),
  };
}
