import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createFitDocument } from '../../../renderer/document/fit-document.ts';
import { keepSlowAnswers } from '../../../renderer/document/slow-answers.ts';
import type { JobQuestion } from '../../../renderer/jobs/job.ts';
import { createJobRunner, type JobWorker } from '../../../renderer/jobs/job-runner.ts';
import type { SlowAnswer, SlowQuestion } from '../../../renderer/jobs/slow-answers-of.ts';
import { countingEvaluator, inventedFit, padAt } from './invented-fit.ts';

function followed() {
  const { evaluator } = countingEvaluator();
  const document = createFitDocument({
    fitId: 'f',
    fit: inventedFit(),
    evaluator,
    keep: async () => ({ kind: 'kept', savedAt: '2031-05-01T10:00:00.000Z' }),
  });
  const asked: (JobQuestion & { input: SlowQuestion })[] = [];
  const worker: JobWorker = {
    postMessage: (question) => asked.push(question as JobQuestion & { input: SlowQuestion }),
    onmessage: null,
    onerror: null,
    terminate: vi.fn(),
  };
  const { answers, stop } = keepSlowAnswers(
    document,
    createJobRunner('slowAnswersOf', () => worker),
  );
  const answer = (turn: number, value: SlowAnswer) =>
    worker.onmessage?.({ data: { turn, kind: 'progress', value } } as MessageEvent);
  return { document, asked, answers, answer, stop, worker };
}

const none = { kind: 'none', locked: [] } as const;

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('slow answers', () => {
  it('are asked for at once, and again only after the hand has rested', () => {
    const { document, asked } = followed();
    vi.advanceTimersByTime(500);
    expect(asked).toHaveLength(1);
    const gesture = document.beginGesture('move the pad');
    for (let i = 0; i < 50; i++) gesture.move((fit) => padAt(fit, 0.2 + i / 1000));
    vi.advanceTimersByTime(500);
    expect(asked).toHaveLength(1);
    gesture.end();
    vi.advanceTimersByTime(500);
    expect(asked).toHaveLength(2);
    expect(asked[1]!.input.fit).toBe(document.getState().fit);
  });

  it('of an older fit are not shown', () => {
    const { document, asked, answers, answer } = followed();
    vi.advanceTimersByTime(500);
    document.apply('set the pad', (fit) => padAt(fit, 0.2));
    answer(asked[0]!.turn, { kind: 'suggestion', findingId: 'padAft@0', suggestion: none });
    expect(answers.getState().suggestions).toEqual({});
    vi.advanceTimersByTime(500);
    answer(asked[1]!.turn, { kind: 'suggestion', findingId: 'padAft@0', suggestion: none });
    expect(answers.getState().suggestions).toEqual({ 'padAft@0': none });
  });

  it('lighting a part asks nothing anew', () => {
    const { document, asked } = followed();
    vi.advanceTimersByTime(500);
    document.light('kneePad');
    vi.advanceTimersByTime(500);
    expect(asked).toHaveLength(1);
  });

  it('end with the bench', () => {
    const { document, asked, stop, worker } = followed();
    vi.advanceTimersByTime(500);
    stop();
    document.apply('set the pad', (fit) => padAt(fit, 0.2));
    vi.advanceTimersByTime(500);
    expect(asked).toHaveLength(1);
    expect(worker.terminate).toHaveBeenCalled();
  });
});
