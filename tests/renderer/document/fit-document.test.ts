import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { KeepOutcome } from '../../../renderer/document/autosave.ts';
import { createFitDocument, NUDGE_BURST_MS, SETTLE_MS } from '../../../renderer/document/fit-document.ts';
import { countingEvaluator, inventedFit, padAt } from './invented-fit.ts';

const kept = async (): Promise<KeepOutcome> => ({ kind: 'kept', savedAt: '2031-05-01T10:00:00.000Z' });

function opened(fit: Fit = inventedFit()) {
  const { evaluator, calls } = countingEvaluator();
  const clock = { at: 0 };
  const document = createFitDocument({ fitId: 'f', fit, evaluator, keep: kept, now: () => clock.at });
  const aft = () => document.getState().fit.seats[0]!.kneePad.aftM;
  return { document, calls, clock, aft, fit };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a gesture', () => {
  it('of 200 moves is one step of undo, one commit to the store and one full evaluation', () => {
    const { document, calls, aft } = opened();
    const heardByStore = vi.fn();
    document.subscribe(heardByStore);
    const gesture = document.beginGesture('move the pad');
    heardByStore.mockClear();
    calls.evaluate = 0;
    for (let i = 1; i <= 200; i++) gesture.move((fit) => padAt(fit, 0.175 + i / 10_000));
    expect(heardByStore).not.toHaveBeenCalled();
    expect(calls).toEqual({ evaluate: 0, evaluateHolding: 200 });
    gesture.end();
    expect(calls.evaluate).toBe(1);
    expect(aft()).toBeCloseTo(0.195, 12);
    document.undo();
    expect(aft()).toBe(0.175);
    expect(document.getState().canUndo).toBe(false);
    document.redo();
    expect(aft()).toBeCloseTo(0.195, 12);
  });

  it('edits the fit as it stood when it began, so that moves do not add up', () => {
    const { document, aft } = opened();
    const gesture = document.beginGesture('move the pad');
    for (let i = 0; i < 5; i++) gesture.move((fit) => padAt(fit, fit.seats[0]!.kneePad.aftM + 0.01));
    gesture.end();
    expect(aft()).toBeCloseTo(0.185, 12);
  });

  it('that is cancelled restores the very same objects and leaves nothing to undo', () => {
    const { document } = opened();
    const before = document.getState();
    const gesture = document.beginGesture('move the pad');
    gesture.move((fit) => padAt(fit, 0.3));
    gesture.cancel();
    const after = document.getState();
    expect(after.fit).toBe(before.fit);
    expect(after.report).toBe(before.report);
    expect(document.live().fit).toBe(before.fit);
    expect(after.canUndo).toBe(false);
    expect(after.gestureName).toBeNull();
  });

  it('that comes back to where it began is no step', () => {
    const { document } = opened();
    const gesture = document.beginGesture('move the pad');
    gesture.move((fit) => padAt(fit, 0.3));
    gesture.move((fit) => padAt(fit, 0.175));
    gesture.end();
    expect(document.getState().canUndo).toBe(false);
  });

  it('that is over does nothing any more', () => {
    const { document, aft } = opened();
    const gesture = document.beginGesture('move the pad');
    gesture.move((fit) => padAt(fit, 0.2));
    gesture.end();
    gesture.move((fit) => padAt(fit, 0.4));
    gesture.cancel();
    expect(aft()).toBe(0.2);
    expect(document.live().fit.seats[0]!.kneePad.aftM).toBe(0.2);
  });

  it('ends by itself when another begins', () => {
    const { document, aft } = opened();
    document.beginGesture('move the pad').move((fit) => padAt(fit, 0.2));
    document.beginGesture('move the rest').cancel();
    expect(aft()).toBe(0.2);
    expect(document.getState().undoName).toBe('move the pad');
  });

  it('under way is put back by undo, before any earlier step', () => {
    const { document, aft } = opened();
    document.apply('set the pad', (fit) => padAt(fit, 0.2));
    document.beginGesture('move the pad').move((fit) => padAt(fit, 0.4));
    document.undo();
    expect(aft()).toBe(0.2);
    expect(document.live().fit.seats[0]!.kneePad.aftM).toBe(0.2);
    document.undo();
    expect(aft()).toBe(0.175);
  });

  it('is heard by live listeners at every move, at the end and when it is put back', () => {
    const { document } = opened();
    const heard: number[] = [];
    const stop = document.onLive((_, report) => heard.push(report.quantities[0]!.value));
    const gesture = document.beginGesture('move the pad');
    gesture.move((fit) => padAt(fit, 0.2));
    gesture.move((fit) => padAt(fit, 0.21));
    gesture.end();
    document.undo();
    stop();
    document.redo();
    expect(heard).toEqual([0.2, 0.21, 0.21, 0.175]);
  });
});

describe('steps', () => {
  it('nudges in a burst are one step; a pause or another name begins a new one', () => {
    const { document, clock, aft } = opened();
    const nudge = (name = 'pad aft') =>
      document.nudge(name, (fit) => padAt(fit, fit.seats[0]!.kneePad.aftM + 0.001));
    for (let i = 0; i < 30; i++) {
      clock.at += NUDGE_BURST_MS - 1;
      nudge();
    }
    clock.at += NUDGE_BURST_MS + 1;
    nudge();
    nudge('pad out');
    expect(aft()).toBeCloseTo(0.207, 12);
    document.undo();
    expect(aft()).toBeCloseTo(0.206, 12);
    document.undo();
    expect(aft()).toBeCloseTo(0.205, 12);
    document.undo();
    expect(aft()).toBe(0.175);
  });

  it('a held key evaluates the whole only once it rests', () => {
    const { document, calls, aft } = opened();
    calls.evaluate = 0;
    for (let i = 0; i < 30; i++) {
      document.nudge('pad aft', (fit) => padAt(fit, fit.seats[0]!.kneePad.aftM + 0.001));
      vi.advanceTimersByTime(33);
    }
    expect(calls).toMatchObject({ evaluate: 0, evaluateHolding: 30 });
    expect(document.getState().report.quantities[0]!.value).toBe(aft());
    vi.advanceTimersByTime(SETTLE_MS);
    expect(calls.evaluate).toBe(1);
    expect(document.getState().report).toBe(document.live().report);
  });

  it('a gesture after a nudge begins from settled spreads', () => {
    const { document, calls } = opened();
    document.nudge('pad aft', (fit) => padAt(fit, 0.18));
    calls.evaluate = 0;
    document.beginGesture('move the pad').cancel();
    expect(calls.evaluate).toBe(1);
    vi.advanceTimersByTime(5 * SETTLE_MS);
    expect(calls.evaluate).toBe(1);
  });

  it('a nudge that could not move does not swallow the step before it', () => {
    const { document, aft } = opened();
    document.apply('set the pad', (fit) => padAt(fit, 0.2));
    document.nudge('pad aft', (fit) => fit);
    document.nudge('pad aft', (fit) => padAt(fit, 0.201));
    document.undo();
    expect(aft()).toBe(0.2);
  });

  it('an edit after an undo forgets what could be redone', () => {
    const { document } = opened();
    document.apply('a', (fit) => padAt(fit, 0.2));
    document.undo();
    expect(document.getState()).toMatchObject({ canRedo: true, redoName: 'a', undoName: null });
    document.apply('b', (fit) => padAt(fit, 0.3));
    expect(document.getState()).toMatchObject({ canRedo: false, redoName: null, undoName: 'b' });
  });

  it('any edit drops a preview', () => {
    const { document, fit } = opened();
    document.showGhost(padAt(fit, 0.3));
    document.apply('a', (now) => padAt(now, 0.2));
    expect(document.getState().ghost).toBeNull();
  });

  it('replacing the fit forgets the steps of the session', () => {
    const { document, fit, aft } = opened();
    document.apply('a', (now) => padAt(now, 0.2));
    document.replace(padAt(fit, 0.25));
    expect(aft()).toBe(0.25);
    document.undo();
    expect(aft()).toBe(0.25);
  });
});
