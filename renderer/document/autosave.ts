import type { Fit } from '../../core/document/fit-schema.ts';

/** What became of one attempt to keep a draft. */
export type KeepOutcome =
  | { readonly kind: 'kept'; readonly savedAt: string }
  /** Worth trying again: the program did not answer, the disk was full. */
  | { readonly kind: 'failed'; readonly message: string }
  /** Another window has kept a newer draft; trying again would not help. */
  | { readonly kind: 'conflict'; readonly message: string };

/** Keeps one fit as a draft. `basedOn` is the instant of the draft last seen, null for none. */
export type Keep = (draft: { id: string; fit: Fit; basedOn: string | null }) => Promise<KeepOutcome>;

export type Keeping = 'kept' | 'keeping' | 'failed';

export interface KeepingState {
  readonly keeping: Keeping;
  readonly savedAt: string | null;
  /** Why it could not be kept, in plain words; null unless `failed`. */
  readonly keepProblem: string | null;
  /** Whether it will be tried again by itself; false where another window has kept a newer draft. */
  readonly retrying: boolean;
}

/** A drag that ends is kept after this pause, milliseconds; short, so that a crash within a second loses nothing. */
const PAUSE_MS = 250;
/** Waits between tries, milliseconds; the last one repeats. */
const RETRY_MS = [1000, 2000, 4000, 8000, 15000] as const;

/** Brings the newest state of one fit to the disk, one call at a time, and tries again when it fails. */
export interface Autosave {
  keep(fit: Fit): void;
  /** The fit as it stands was kept as a revision at this instant, and its draft is gone from the disk. */
  keptAsRevision(savedAt: string): void;
  /** Sends at once what is still waiting (the page is going away, or a person asks to try again). */
  flush(): Promise<void>;
  /** Forgets what is waiting; nothing is sent any more. */
  stop(): void;
}

export function createAutosave(options: {
  fitId: string;
  savedAt: string | null;
  keep: Keep;
  tell: (state: KeepingState) => void;
}): Autosave {
  let waiting: Fit | null = null;
  let savedAt = options.savedAt;
  /** The draft on the disk that the next one follows; null when there is none. */
  let base = options.savedAt;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let sending: Promise<void> | null = null;
  let failures = 0;

  function later(ms: number): void {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      void send();
    }, ms);
  }

  async function send(): Promise<void> {
    if (sending) return sending;
    if (!waiting) return;
    const fit = waiting;
    waiting = null;
    sending = attempt(fit).then((outcome) => {
      sending = null;
      settle(outcome, fit);
    });
    return sending;
  }

  async function attempt(fit: Fit): Promise<KeepOutcome> {
    try {
      return await options.keep({ id: options.fitId, fit, basedOn: base });
    } catch (error) {
      return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
    }
  }

  function settle(outcome: KeepOutcome, fit: Fit): void {
    if (outcome.kind === 'kept') {
      failures = 0;
      savedAt = outcome.savedAt;
      base = outcome.savedAt;
      options.tell({ keeping: waiting ? 'keeping' : 'kept', savedAt, keepProblem: null, retrying: false });
      if (waiting) later(PAUSE_MS);
      return;
    }
    waiting ??= fit;
    const retrying = outcome.kind === 'failed';
    options.tell({ keeping: 'failed', savedAt, keepProblem: outcome.message, retrying });
    if (retrying) {
      later(RETRY_MS[Math.min(failures, RETRY_MS.length - 1)]!);
      failures += 1;
    }
  }

  return {
    keep(fit) {
      waiting = fit;
      if (failures > 0) return;
      options.tell({ keeping: 'keeping', savedAt, keepProblem: null, retrying: false });
      later(PAUSE_MS);
    },
    keptAsRevision(at) {
      savedAt = at;
      base = null;
      options.tell({ keeping: 'kept', savedAt, keepProblem: null, retrying: false });
    },
    async flush() {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      await send();
      if (waiting && failures === 0) await send();
    },
    stop() {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      waiting = null;
    },
  };
}
