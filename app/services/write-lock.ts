/**
 * Lets a long piece of work have the store to itself while it gives way to the event loop, or while a worker does it:
 * everything else waits, so that no other call's write falls into its transaction.
 */
export interface WriteLock {
  /** Resolves when no work holds the lock. */
  free(): Promise<void>;
  /** Runs `work` alone, after all that held the lock before. */
  alone<T>(work: () => Promise<T>): Promise<T>;
}

export function createWriteLock(): WriteLock {
  let last: Promise<unknown> = Promise.resolve();
  let holding = 0;
  // The caller receives the failure; here the lock only becomes free again.
  const over = () => {
    holding -= 1;
  };
  return {
    async free() {
      // Other work may have come in line meanwhile.
      while (holding > 0) await last;
    },
    alone(work) {
      holding += 1;
      const next = last.then(work);
      last = next.then(over, over);
      return next;
    },
  };
}
