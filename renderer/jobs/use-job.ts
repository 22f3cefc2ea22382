import { useEffect, useRef, useState } from 'react';
import { announce } from '../announce/announce.ts';
import { say } from '../language/messages.ts';
import { createJobRunner, type JobListener, type JobRunner } from './job-runner.ts';
import type { JobInput, JobName, JobProgress, JobResult } from './job-table.ts';

/** How far a job has come. Progress is everything told so far, oldest first. */
export type JobState<Name extends JobName> =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'working' | 'stopped';
      readonly input: JobInput<Name>;
      readonly progress: readonly JobProgress<Name>[];
    }
  | {
      readonly kind: 'done';
      readonly input: JobInput<Name>;
      readonly progress: readonly JobProgress<Name>[];
      readonly result: JobResult<Name>;
    };

export interface JobHandle<Name extends JobName> {
  readonly state: JobState<Name>;
  /** Starts the job, in place of an older run. `onResult` hears the result as it comes. */
  start(input: JobInput<Name>, onResult?: (result: JobResult<Name>) => void): void;
  /** Ends the work at once, or forgets its result. */
  cancel(): void;
  /** Ends the work at once and keeps what it has told. */
  stop(): void;
}

/** A job that the page starts and may cancel. It ends with the component. */
export function useJob<Name extends JobName>(name: Name): JobHandle<Name> {
  const runner = useRef<JobRunner<Name> | null>(null);
  const [state, setState] = useState<JobState<Name>>({ kind: 'idle' });

  function start(input: JobInput<Name>, onResult?: (result: JobResult<Name>) => void): void {
    runner.current ??= createJobRunner(name);
    let progress: readonly JobProgress<Name>[] = [];
    const listener: JobListener<Name> = {
      progress(told) {
        progress = [...progress, told];
        setState({ kind: 'working', input, progress });
      },
      result(result) {
        setState({ kind: 'done', input, progress, result });
        onResult?.(result);
      },
      failed() {
        setState({ kind: 'stopped', input, progress });
        announce(say('problem.internal'));
      },
    };
    setState({ kind: 'working', input, progress });
    runner.current.start(input, listener);
  }

  function cancel(): void {
    runner.current?.cancel();
    setState({ kind: 'idle' });
  }

  function stop(): void {
    runner.current?.cancel();
    setState((now) => (now.kind === 'working' ? { ...now, kind: 'stopped' } : now));
  }

  useEffect(() => () => runner.current?.cancel(), []);
  return { state, start, cancel, stop };
}

/**
 * A job that follows its input: it starts again whenever `input` is another object; null waits. The state is idle until
 * the first word about exactly this input.
 */
export function useJobOn<Name extends JobName>(name: Name, input: JobInput<Name> | null): JobState<Name> {
  const { state, start, cancel } = useJob(name);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the input alone starts the job
  useEffect(() => {
    if (input === null) cancel();
    else start(input);
  }, [input]);
  return state.kind !== 'idle' && state.input === input ? state : { kind: 'idle' };
}
