import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import type { FitDocument, LiveListener } from '../../../renderer/document/fit-document.ts';
import { onLiveFrame, TELL_EVERY_MS } from '../../../renderer/document/live-frame.ts';

const FRAME_MS = 16;
const report = {} as Report;

/** A document that only tells. */
function teller() {
  const listeners = new Set<LiveListener>();
  const document = { onLive: (listener: LiveListener) => listeners.add(listener) } as unknown as FitDocument;
  return {
    document,
    tell: (name: string) => {
      for (const listener of listeners) listener({ name } as Fit, report);
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('requestAnimationFrame', (run: (now: number) => void) =>
    setTimeout(() => run(performance.now()), FRAME_MS),
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('texts that follow the hand', () => {
  it('hear a first change in the next frame, and of many the latest', () => {
    const { document, tell } = teller();
    const heard: string[] = [];
    onLiveFrame(document, ({ name }) => heard.push(name));
    tell('a');
    tell('b');
    vi.advanceTimersByTime(FRAME_MS);
    expect(heard).toEqual(['b']);
  });

  it('hear no more often than anybody reads, and never miss the last', () => {
    const { document, tell } = teller();
    const heard: string[] = [];
    onLiveFrame(document, ({ name }) => heard.push(name));
    for (let k = 0; k < 100; k++) {
      tell(String(k));
      vi.advanceTimersByTime(FRAME_MS / 2);
    }
    vi.advanceTimersByTime(TELL_EVERY_MS + 2 * FRAME_MS);
    expect(heard.at(-1)).toBe('99');
    expect(heard.length).toBeLessThanOrEqual((100 * FRAME_MS) / 2 / TELL_EVERY_MS + 2);
    expect(heard.length).toBeGreaterThan(8);
  });
});
