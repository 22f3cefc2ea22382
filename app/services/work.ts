/** What a long piece of work is. */
type WorkKind = 'export' | 'read-bundle' | 'backup';

/** How far it has come. */
interface WorkProgress {
  readonly what: WorkKind;
  readonly done: number;
  readonly of: number;
}

/** Thrown inside a long piece of work when the person has asked it to stop. */
export class WorkCancelled extends Error {}

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
}

/** How long work goes on before others get a turn, milliseconds: well under a frame. */
const TURN_MS = 8;

export function createWorkbench(): Workbench {
  let current: { what: WorkKind; done: number; of: number; cancelled: boolean } | null = null;
  return {
    progress() {
      return current && { what: current.what, done: current.done, of: Math.max(current.of, current.done) };
    },
    cancel() {
      if (current) current.cancelled = true;
      return current !== null;
    },
    async run({ what, of }, steps) {
      const job = { what, of, done: 0, cancelled: false };
      current = job;
      try {
        for (let turn = performance.now(); ; ) {
          const step = steps.next();
          if (step.done) return step.value;
          job.done += 1;
          if (performance.now() - turn < TURN_MS) continue;
          await new Promise((resolve) => setImmediate(resolve));
          if (job.cancelled) throw new WorkCancelled();
          turn = performance.now();
        }
      } finally {
        if (current === job) current = null;
      }
    },
  };
}
