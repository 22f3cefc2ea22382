import { type BackgroundJobName, type Jobs, WorkCancelled } from '../background/job.ts';
import { startJob } from '../background/run-job.ts';

/** What a long piece of work is. */
type WorkKind =
  | 'export'
  | 'unlock'
  | 'read-bundle'
  | 'import'
  | 'backup'
  | 'restore'
  | 'erase-preview'
  | 'erase';

/** How far it has come. */
interface WorkProgress {
  readonly what: WorkKind;
  readonly done: number;
  readonly of: number;
}

/** The one long piece of work that may be under way. */
export interface Workbench {
  progress(): WorkProgress | null;
  /** Asks the work under way to stop; false if there is none, or it must come to its end. */
  cancel(): boolean;
  /**
   * Runs `steps` to their end, giving way to the event loop every few milliseconds; gives what they return. A step that is a
   * number says how much is done. Throws `WorkCancelled` between two steps when asked to stop, unless it `mustEnd`.
   */
  run<T>(work: { what: WorkKind; of: number; mustEnd?: boolean }, steps: Iterator<unknown, T>): Promise<T>;
  /** Runs a job in a worker, whose progress is then the progress here. With `hold` the job runs within that, which it does not hold up by loading. */
  inWorker<N extends BackgroundJobName>(
    what: WorkKind,
    { name, input, hold }: WorkerJob<N>,
  ): Promise<Jobs[N]['output']>;
}

/** A job, and what is to be held while it runs. */
interface WorkerJob<N extends BackgroundJobName> {
  readonly name: N;
  readonly input: Jobs[N]['input'];
  readonly hold?: (run: () => Promise<Jobs[N]['output']>) => Promise<Jobs[N]['output']>;
}

/** Work runs this long before it gives way to others, milliseconds: about one transaction of an import, well under a frame. */
const TURN_MS = 5;

interface Current {
  readonly what: WorkKind;
  readonly cancel: (() => void) | null;
  done: number;
  of: number;
}

export function createWorkbench(): Workbench {
  let current: Current | null = null;
  return {
    progress() {
      return current && { what: current.what, done: current.done, of: Math.max(current.of, current.done) };
    },
    cancel() {
      if (!current?.cancel) return false;
      current.cancel();
      return true;
    },
    async run({ what, of, mustEnd = false }, steps) {
      let cancelled = false;
      const cancel = () => {
        cancelled = true;
      };
      const job = { what, of, done: 0, cancel: mustEnd ? null : cancel };
      current = job;
      try {
        for (let turn = performance.now(); ; ) {
          const step = steps.next();
          if (step.done) return step.value;
          job.done = typeof step.value === 'number' ? step.value : job.done + 1;
          if (performance.now() - turn < TURN_MS) continue;
          await new Promise((resolve) => setImmediate(resolve));
          if (cancelled) throw new WorkCancelled();
          turn = performance.now();
        }
      } finally {
        if (current === job) current = null;
      }
    },
    async inWorker(what, { name, input, hold }) {
      const progress = (done: number, of: number) => {
        job.done = done;
        job.of = of;
      };
      const running = startJob(name, input, { progress, waits: hold !== undefined });
      const job: Current = { what, done: 0, of: 0, cancel: running.cancel };
      current = job;
      try {
        if (!hold) return await running.result;
        await running.ready;
        return await hold(() => {
          running.begin();
          return running.result;
        });
      } finally {
        if (current === job) current = null;
      }
    },
  };
}
