/**
 * Lets a long piece of work have the store to itself while it gives way to the event loop: everything else waits at
 * the gate, so that no other call's write falls into its transaction.
 */
export interface Gate {
  /** Resolves when no work holds the gate. */
  open(): Promise<void>;
  /** Runs `work` alone, after all that held the gate before. */
  alone<T>(work: () => Promise<T>): Promise<T>;
}

export function createGate(): Gate {
  let last: Promise<unknown> = Promise.resolve();
  return {
    async open() {
      await last;
    },
    alone(work) {
      const next = last.then(work);
      last = next.catch(() => {
        // Whoever asked for the work hears of its failure; the gate only opens again.
      });
      return next;
    },
  };
}
