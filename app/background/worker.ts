import { parentPort, workerData } from 'node:worker_threads';
import { speak } from '../language/spoken.ts';
import { errorCode } from '../shell/error-code.ts';

import { type JobHooks, type JobOrder, type JobWord, WorkCancelled } from './job.ts';
import { jobs } from './jobs.ts';

/** Runs the one job this thread was started for, and ends. */
async function work({ name, input, stop, language }: JobOrder, say: (word: JobWord) => void): Promise<void> {
  await speak(language);
  const asked = new Int32Array(stop);
  const hooks: JobHooks = {
    progress: (done, of) => say({ kind: 'progress', done, of }),
    goOn() {
      if (Atomics.load(asked, 0) !== 0) throw new WorkCancelled();
    },
  };
  try {
    // The table's type ties each name to its own input; a union of names loses that tie, hence the one cast.
    const job = jobs[name] as (input: unknown, hooks: JobHooks) => unknown;
    say({ kind: 'done', output: await job(input, hooks) });
  } catch (error) {
    if (error instanceof WorkCancelled) return say({ kind: 'cancelled' });
    const { message, stack = '' } = error instanceof Error ? error : new Error(String(error));
    say({ kind: 'failed', code: errorCode(error), message, stack });
  }
}

if (parentPort) {
  const port = parentPort;
  const order = workerData as JobOrder;
  const say = (word: JobWord) => port.postMessage(word);
  const begin = () => void work(order, say);
  if (order.waits) {
    port.once('message', begin);
    say({ kind: 'ready' });
  } else begin();
}
