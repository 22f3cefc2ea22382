import type { Fit } from '../../core/document/fit-schema.ts';
import type { Report } from '../../core/evaluation/report.ts';
import type { FitDocument, LiveListener } from './fit-document.ts';

/** Texts change at once, and then at most this often, milliseconds: nobody reads numbers faster. */
export const TELL_EVERY_MS = 50;

const shared = new WeakMap<FitDocument, { listeners: Set<LiveListener> }>();

/**
 * Calls back with a document's latest live change, in an animation frame: for texts of the page that change during a
 * drag. All texts of a document share one frame. Returns a function that stops it.
 */
export function onLiveFrame(document: FitDocument, listener: LiveListener): () => void {
  let bus = shared.get(document);
  if (!bus) {
    bus = startBus(document);
    shared.set(document, bus);
  }
  const { listeners } = bus;
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function startBus(document: FitDocument): { listeners: Set<LiveListener> } {
  const listeners = new Set<LiveListener>();
  let latest: { fit: Fit; report: Report } | null = null;
  let told = Number.NEGATIVE_INFINITY;
  function tell(now: number): void {
    told = now;
    const { fit, report } = latest!;
    latest = null;
    for (const listener of listeners) listener(fit, report);
  }
  document.onLive((fit, report) => {
    const waiting = latest !== null;
    latest = { fit, report };
    if (waiting) return;
    const wait = told + TELL_EVERY_MS - performance.now();
    if (wait <= 0) requestAnimationFrame(tell);
    else setTimeout(() => requestAnimationFrame(tell), wait);
  });
  return { listeners };
}
