import type { Fit } from '../../core/fit/fit-schema.ts';
import type { Report } from '../../core/fit/report.ts';
import type { FitDocument, LiveListener } from './fit-document.ts';

const shared = new WeakMap<FitDocument, { listeners: Set<LiveListener> }>();

/**
 * Hears of a document's live changes once per animation frame at most, the latest only: for texts of the page that
 * follow the hand. All texts of a document share one frame. Gives back a function that stops it.
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
  document.onLive((fit, report) => {
    const waiting = latest !== null;
    latest = { fit, report };
    if (waiting) return;
    requestAnimationFrame(() => {
      const now = latest!;
      latest = null;
      for (const listener of listeners) listener(now.fit, now.report);
    });
  });
  return { listeners };
}
