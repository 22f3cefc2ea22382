import { parentPort } from 'node:worker_threads';
import { speak } from '../language/spoken.ts';
import { errorCode } from '../shell/error-code.ts';
import { type JobHooks, type JobOrder, type JobWord, WorkCancelled } from './job.ts';
import { jobs } from './jobs.ts';

/** Any job, once its own name is forgotten: the thread passes on what it was given. */
type AnyJob = (input: unknown, hooks: JobHooks) => unknown;

/** Loads what the job of an order needs. */
async function load({ name, language }: JobOrder): Promise<AnyJob> {
  const [job] = await Promise.all([jobs[name](), speak(language)]);
  // The table's type ties each name to its own input; a union of names loses that tie, hence the one cast.
  return job as AnyJob;
}

/** Runs one job. */
async function work(job: AnyJob, { input, stop }: JobOrder, say: (word: JobWord) => void): Promise<void> {
  const asked = new Int32Array(stop);
  const hooks: JobHooks = {
    progress: (done, of) => say({ kind: 'progress', done, of }),
    goOn() {
      if (Atomics.load(asked, 0) !== 0) throw new WorkCancelled();
    },
  };
  try {
    say({ kind: 'done', output: await job(input, hooks) });
  } catch (error) {
    if (error instanceof WorkCancelled) return say({ kind: 'cancelled' });
    const { message, stack = '' } = error instanceof Error ? error : new Error(String(error));
    say({ kind: 'failed', code: errorCode(error), message, stack });
  }
}

if (parentPort) {
  const port = parentPort;
  const say = (word: JobWord) => port.postMessage(word);
  let begin = () => {};
  const take = async (order: JobOrder) => {
    const job = await load(order);
    if (order.waits) {
      const begun = new Promise<void>((resolve) => {
        begin = resolve;
      });
      say({ kind: 'ready' });
      await begun;
    }
    await work(job, order, say);
  };
  // One order after the other; `begin` is for the one that waits.
  port.on('message', (word: JobOrder | 'begin') => (word === 'begin' ? begin() : void take(word)));
}
