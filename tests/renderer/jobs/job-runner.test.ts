import { describe, expect, it, vi } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { JobAnswer, JobQuestion } from '../../../renderer/jobs/job.ts';
import { createJobRunner, type JobWorker } from '../../../renderer/jobs/job-runner.ts';
import { JOB_TABLE } from '../../../renderer/jobs/job-table.ts';
import { exampleFit } from '../../core/example/example-fit.ts';

function withWorkers() {
  const asked: JobQuestion[] = [];
  const workers: (JobWorker & { terminate: ReturnType<typeof vi.fn> })[] = [];
  const runner = createJobRunner('compareSeatingOrders', () => {
    const worker = {
      postMessage: (q: JobQuestion) => asked.push(q),
      onmessage: null,
      onerror: null,
      terminate: vi.fn(),
    };
    workers.push(worker);
    return worker;
  });
  const answer = (data: JobAnswer) => workers.at(-1)!.onmessage?.({ data } as MessageEvent<JobAnswer>);
  return { runner, asked, workers, answer };
}

describe('a job runner', () => {
  it('tells progress and the result of the run that was started', () => {
    const { runner, asked, answer } = withWorkers();
    const heard: unknown[] = [];
    runner.start(exampleFit(), { progress: (p) => heard.push(p), result: () => heard.push('end') });
    answer({ turn: asked[0]!.turn, kind: 'progress', value: 'first' });
    answer({ turn: asked[0]!.turn, kind: 'result', value: undefined });
    expect(asked[0]!.name).toBe('compareSeatingOrders');
    expect(heard).toEqual(['first', 'end']);
  });

  it('says nothing more of a run that a newer one replaces, in the same worker', () => {
    const { runner, asked, workers, answer } = withWorkers();
    const old = vi.fn();
    const newer = vi.fn();
    runner.start(exampleFit(), { progress: old });
    runner.start(exampleFit(), { progress: newer });
    answer({ turn: asked[0]!.turn, kind: 'progress', value: 1 });
    answer({ turn: asked[1]!.turn, kind: 'progress', value: 2 });
    expect(workers).toHaveLength(1);
    expect(old).not.toHaveBeenCalled();
    expect(newer).toHaveBeenCalledWith(2);
  });

  it('ends the worker on cancel and starts a new one for the next run', () => {
    const { runner, workers } = withWorkers();
    runner.start(exampleFit(), {});
    runner.cancel();
    expect(workers[0]!.terminate).toHaveBeenCalledOnce();
    runner.start(exampleFit(), {});
    expect(workers).toHaveLength(2);
  });
});

describe('a worker that throws', () => {
  it('is told, ended, and replaced at the next start', () => {
    const { runner, workers } = withWorkers();
    const failed = vi.fn();
    runner.start(exampleFit(), { failed });
    workers[0]!.onerror?.();
    expect(failed).toHaveBeenCalledOnce();
    expect(workers[0]!.terminate).toHaveBeenCalledOnce();
    runner.start(exampleFit(), {});
    expect(workers).toHaveLength(2);
  });
});

describe('the job table', () => {
  const tools = { evaluator: createEvaluator(), tell: () => {} };

  it('judges each order of a single once', () => {
    const steps = [...JOB_TABLE.compareSeatingOrders(exampleFit(), tools)];
    expect(steps).toHaveLength(1);
    expect(steps[0]).toMatchObject({ done: 1, all: 1, order: { order: [0] } });
  });

  it('tells what one centimetre does first, then one suggestion for each finding that wants one', () => {
    const fit = exampleFit();
    const steps = [...JOB_TABLE.slowAnswersOf({ fit, seat: 0 }, tools)];
    const wanting = tools.evaluator.evaluate(fit).findings.filter(({ severity }) => severity !== 'good');
    expect(steps[0]!.kind).toBe('derivatives');
    expect(steps.slice(1).map((s) => (s.kind === 'suggestion' ? s.findingId : ''))).toEqual(
      wanting.map(({ id }) => id),
    );
  });
});
