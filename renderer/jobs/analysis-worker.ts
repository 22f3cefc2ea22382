import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import type { Job, JobAnswer, JobQuestion } from './job.ts';
import { JOB_TABLE } from './job-table.ts';

const jobs: Readonly<Record<string, unknown>> = JOB_TABLE;
const evaluator = createEvaluator();
let latest = 0;

const post = (answer: JobAnswer) => self.postMessage(answer);

/** Lets a newer question in. */
const yieldToEventLoop = () => new Promise((resolve) => setTimeout(resolve, 0));

self.onmessage = ({ data }: MessageEvent<JobQuestion>) => {
  latest = data.turn;
  run(data).catch(throwAtLarge);
};

/** Throws where the page hears of it: a promise that is refused in a worker stays there. */
function throwAtLarge(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}

/** Runs one job to its end, or until a newer question has come. */
async function run({ turn, name, input }: JobQuestion): Promise<void> {
  const job = jobs[name] as Job<unknown, unknown, unknown>;
  const steps = job(input, { evaluator, tell: (value) => post({ turn, kind: 'progress', value }) });
  for (;;) {
    await yieldToEventLoop();
    if (latest !== turn) return;
    const step = await steps.next();
    if (step.done) return post({ turn, kind: 'result', value: step.value });
    post({ turn, kind: 'progress', value: step.value });
  }
}
