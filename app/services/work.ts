import { type JobName, type Jobs, WorkCancelled } from '../background/job.ts';
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
  /** Asks the work under way to stop; false if there is none. */
  cancel(): boolean;
  /**
   * Runs `steps` to their end, giving way to the event loop every few milliseconds; gives what they return. Throws
   * `WorkCancelled` between two steps when asked to stop.
   */
  run<T>(work: { what: WorkKind; of: number }, steps: Iterator<unknown, T>): Promise<T>;
  /** Runs a job in a worker, whose progress is then the progress here. */
  inWorker<N extends JobName>(what: WorkKind, name: N, input: Jobs[N]['input']): Promise<Jobs[N]['output']>;
}

/** How long work goes on before others get a turn, milliseconds: well under a frame. */
const TURN_MS = 8;

interface Current {
  readonly what: WorkKind;
  readonly cancel: () => void;
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
      current?.cancel();
      return current !== null;
    },
    async run({ what, of }, steps) {
      let cancelled = false;
      const cancel = () => {
        cancelled = true;
      };
      const job = { what, of, done: 0, cancel };
      current = job;
      try {
        for (let turn = performance.now(); ; ) {
          const step = steps.next();
          if (step.done) return step.value;
          job.done += 1;
          if (performance.now() - turn < TURN_MS) continue;
          await new Promise((resolve) => setImmediate(resolve));
          if (cancelled) throw new WorkCancelled();
          turn = performance.now();
        }
      } finally {
        if (current === job) current = null;
      }
    },
    async inWorker(what, name, input) {
      const running = startJob(name, input, (done, of) => {
        job.done = done;
        job.of = of;
      });
      const job: Current = { what, done: 0, of: 0, cancel: running.cancel };
      current = job;
      try {
        return await running.result;
      } finally {
        if (current === job) current = null;
      }
    },
  };
}
