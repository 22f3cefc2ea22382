import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { Autosave, type Keep, type KeepingState } from '../../../renderer/document/autosave.ts';
import { inventedFit, padAt } from './invented-fit.ts';

const savedAt = (n: number) => `2031-05-01T10:00:00.${String(n).padStart(3, '0')}Z`;

function keeper(keep: Keep) {
  const told: KeepingState[] = [];
  const made = new Autosave({ fitId: 'f', savedAt: null, keep, tell: (state) => told.push(state) });
  return { made, told, keep: (fit: Fit) => made.keep(fit), last: () => told.at(-1)! };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('drafts', () => {
  const fit = inventedFit();
  it('reach the disk within a second of the gesture, the newest state only', async () => {
    const keep = vi.fn<Keep>(async () => ({ kind: 'kept', savedAt: savedAt(1) }));
    const { keep: ask, last } = keeper(keep);
    ask(padAt(fit, 0.2));
    ask(padAt(fit, 0.21));
    expect(last().keeping).toBe('keeping');
    await vi.advanceTimersByTimeAsync(1000);
    expect(keep).toHaveBeenCalledTimes(1);
    expect(keep.mock.calls[0]![0].fit.seats[0]!.kneePad.aftM).toBe(0.21);
    expect(last()).toEqual({
      keeping: 'kept',
      savedAt: savedAt(1),
      keepProblem: null,
      retrying: false,
    });
  });

  it('go one at a time, each based on the one before', async () => {
    let n = 0;
    const bases: (string | null)[] = [];
    const { keep: ask } = keeper(async ({ basedOn }) => {
      bases.push(basedOn);
      n += 1;
      await new Promise((resolve) => setTimeout(resolve, 700));
      return { kind: 'kept', savedAt: savedAt(n) };
    });
    ask(padAt(fit, 0.2));
    await vi.advanceTimersByTimeAsync(400);
    ask(padAt(fit, 0.22));
    await vi.advanceTimersByTimeAsync(3000);
    expect(bases).toEqual([null, savedAt(1)]);
  });

  it('are tried again when the program does not answer, and say so meanwhile', async () => {
    let up = false;
    const keep = vi.fn<Keep>(async () => {
      if (!up) throw new Error('no answer');
      return { kind: 'kept', savedAt: savedAt(9) };
    });
    const { keep: ask, last } = keeper(keep);
    ask(padAt(fit, 0.2));
    await vi.advanceTimersByTimeAsync(500);
    expect(last()).toMatchObject({ keeping: 'failed', keepProblem: 'no answer', retrying: true });
    ask(padAt(fit, 0.23));
    up = true;
    await vi.advanceTimersByTimeAsync(20_000);
    expect(last().keeping).toBe('kept');
    expect(keep.mock.calls.at(-1)![0].fit.seats[0]!.kneePad.aftM).toBe(0.23);
  });

  it('stop at a conflict: trying again would write over the other window', async () => {
    const keep = vi.fn<Keep>(async () => ({ kind: 'conflict', message: 'another window' }));
    const { keep: ask, last } = keeper(keep);
    ask(padAt(fit, 0.2));
    await vi.advanceTimersByTimeAsync(60_000);
    expect(keep).toHaveBeenCalledTimes(1);
    expect(last()).toMatchObject({ keeping: 'failed', keepProblem: 'another window', retrying: false });
  });

  it('are sent at once when the page goes away', async () => {
    const keep = vi.fn<Keep>(async () => ({ kind: 'kept', savedAt: savedAt(1) }));
    const { made } = keeper(keep);
    made.keep(padAt(fit, 0.2));
    await made.flush();
    expect(keep).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(5000);
    expect(keep).toHaveBeenCalledTimes(1);
  });

  it('begin anew after a revision, which has taken the draft with it', async () => {
    const bases: (string | null)[] = [];
    const { made, last } = keeper(async ({ basedOn }) => {
      bases.push(basedOn);
      return { kind: 'kept', savedAt: savedAt(bases.length) };
    });
    made.keep(padAt(fit, 0.2));
    await vi.advanceTimersByTimeAsync(1000);
    made.keptAsRevision(savedAt(50));
    expect(last()).toMatchObject({ keeping: 'kept', savedAt: savedAt(50) });
    expect(await made.flush()).toBeNull();
    made.keep(padAt(fit, 0.21));
    await vi.advanceTimersByTimeAsync(1000);
    expect(bases).toEqual([null, null]);
  });
});
