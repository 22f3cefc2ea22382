import { Worker } from 'node:worker_threads';
import { words } from '../shell/say.ts';
import { type BackgroundJobName, type JobOrder, type Jobs, type JobWord, WorkCancelled } from './job.ts';

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

/** A build puts the worker's name here: another one in each, so that a running program gets the worker it was built with. */
declare const BUILT_WORKER: string | undefined;

/** It lies beside this file. */
const WORKER_FILE = typeof BUILT_WORKER === 'string' ? BUILT_WORKER : 'worker.ts';

/** How long a thread that has done its job waits for the next one, milliseconds. Starting one takes a quarter of a second. */
const WAITS_FOR_MORE_MS = 10_000;
let idle: { readonly worker: Worker; readonly timer: NodeJS.Timeout } | null = null;

/**
 * Runs a job in a thread, so that the program answers meanwhile. One that `waits` loads what it needs, and begins when `begin`
 * is called. Rejects with `WorkCancelled`, or with `JobFailed` and the code of the error.
 */
export function startJob<N extends BackgroundJobName>(
  name: N,
  input: Jobs[N]['input'],
  {
    progress = () => {},
    waits = false,
  }: { progress?: (done: number, of: number) => void; waits?: boolean } = {},
): RunningJob<Jobs[N]['output']> {
  const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const worker = takeWorker();
  const isReady = Promise.withResolvers<void>();
  const result = new Promise<Jobs[N]['output']>((resolve, reject) => {
    worker.on('message', (word: JobWord) => {
      if (word.kind === 'ready') return isReady.resolve();
      if (word.kind === 'progress') return progress(word.done, word.of);
      keep(worker);
      if (word.kind === 'done') resolve(word.output as Jobs[N]['output']);
      else reject(word.kind === 'cancelled' ? new WorkCancelled() : new JobFailed(word));
    });
    worker.on('error', reject);
    // After a word that settled it this changes nothing.
    worker.on('exit', (code) => reject(new Error(`the worker for ${name} ended with ${code}`)));
  });
  // Whoever waits for it to be ready hears why it never will be; nobody else needs to.
  result.catch(isReady.reject);
  isReady.promise.catch(() => {});
  const order: JobOrder = { name, input, stop, waits, language: words().language };
  worker.postMessage(order);
  return {
    ready: isReady.promise,
    begin: () => worker.postMessage('begin'),
    result,
    cancel: () => void Atomics.store(new Int32Array(stop), 0, 1),
  };
}

/** The thread that waits for a job, or a new one. */
function takeWorker(): Worker {
  if (!idle) return new Worker(new URL(WORKER_FILE, import.meta.url));
  const { worker, timer } = idle;
  idle = null;
  clearTimeout(timer);
  forget(worker);
  worker.ref();
  return worker;
}

/** Keeps a thread for the next job, for a while; one is enough. It does not keep the program from ending. */
function keep(worker: Worker): void {
  forget(worker);
  if (idle) return void worker.terminate();
  worker.unref();
  const timer = setTimeout(() => {
    idle = null;
    void worker.terminate();
  }, WAITS_FOR_MORE_MS).unref();
  const lost = () => {
    if (idle?.worker === worker) idle = null;
    clearTimeout(timer);
  };
  worker.on('error', lost).on('exit', lost);
  idle = { worker, timer };
}

/** Takes away our listeners by name: the thread has some of its own. */
function forget(worker: Worker): void {
  for (const event of ['message', 'error', 'exit']) worker.removeAllListeners(event);
}
