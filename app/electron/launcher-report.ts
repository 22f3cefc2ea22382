/** What the desktop program tells the launcher that started it, over the channel between the two processes. */
export type LauncherReport =
  /** The page runs and has been answered. */
  | { readonly kind: 'ready' }
  /** Another window of the same data folder is open and has been brought to the front. */
  | { readonly kind: 'already-open' }
  /** The store was not opened; the sentence says why and has been shown. */
  | { readonly kind: 'refused'; readonly sentence: string }
  /** A fault before the window was ready. */
  | { readonly kind: 'failed'; readonly detail: string };

/** Reads a message from the channel; null for anything else. */
export function launcherReport(message: unknown): LauncherReport | null {
  if (typeof message !== 'object' || message === null) return null;
  const { kind, sentence, detail } = message as Record<string, unknown>;
  if (kind === 'ready' || kind === 'already-open') return { kind };
  if (kind === 'refused' && typeof sentence === 'string') return { kind, sentence };
  return kind === 'failed' && typeof detail === 'string' ? { kind, detail } : null;
}

/** Sends a report, if a launcher listens: an installed program has none. */
export function reportToLauncher(report: LauncherReport): void {
  if (process.connected) process.send?.(report);
}
