import type { Fit } from '../../core/document/fit-schema.ts';

/** The result of one attempt to save a draft. */
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

interface AutosaveOptions {
  readonly fitId: string;
  readonly savedAt: string | null;
  readonly keep: Keep;
  readonly tell: (state: KeepingState) => void;
}

/** Saves the newest state of one fit to the disk, one call at a time, and tries again if it fails. */
export class Autosave {
  private readonly options: AutosaveOptions;
  private waiting: Fit | null = null;
  private savedAt: string | null;
  /** The draft on the disk that the next one follows; null when there is none. */
  private base: string | null;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private sending: Promise<void> | null = null;
  private failures = 0;

  constructor(options: AutosaveOptions) {
    this.options = options;
    this.savedAt = options.savedAt;
    this.base = options.savedAt;
  }

  keep(fit: Fit): void {
    this.waiting = fit;
    if (this.failures > 0) return;
    this.tell('keeping');
    this.later(PAUSE_MS);
  }

  /** The fit as it stands was kept as a revision at this instant, and its draft is gone from the disk. */
  keptAsRevision(at: string): void {
    this.savedAt = at;
    this.base = null;
    this.tell('kept');
  }

  /**
   * Sends at once what is still waiting (the page is going away, or a person asks to try again). The instant of the draft that is on
   * the disk then; null where there is none, as after a revision.
   */
  async flush(): Promise<string | null> {
    this.stopTimer();
    await this.send();
    if (this.waiting && this.failures === 0) await this.send();
    return this.base;
  }

  /** Forgets what is waiting; nothing is sent any more. */
  stop(): void {
    this.stopTimer();
    this.waiting = null;
  }

  private tell(keeping: Keeping, problem: { message: string; retrying: boolean } | null = null): void {
    const { message: keepProblem = null, retrying = false } = problem ?? {};
    this.options.tell({ keeping, savedAt: this.savedAt, keepProblem, retrying });
  }

  private stopTimer(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
  }

  private later(ms: number): void {
    this.stopTimer();
    this.timer = setTimeout(() => {
      this.timer = null;
      void this.send();
    }, ms);
  }

  private async send(): Promise<void> {
    if (this.sending) return this.sending;
    if (!this.waiting) return;
    const fit = this.waiting;
    this.waiting = null;
    this.sending = this.attempt(fit).then((outcome) => {
      this.sending = null;
      this.settle(outcome, fit);
    });
    return this.sending;
  }

  private async attempt(fit: Fit): Promise<KeepOutcome> {
    const { keep, fitId } = this.options;
    try {
      return await keep({ id: fitId, fit, basedOn: this.base });
    } catch (error) {
      return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
    }
  }

  private settle(outcome: KeepOutcome, fit: Fit): void {
    if (outcome.kind === 'kept') {
      this.failures = 0;
      this.savedAt = outcome.savedAt;
      this.base = outcome.savedAt;
      this.tell(this.waiting ? 'keeping' : 'kept');
      if (this.waiting) this.later(PAUSE_MS);
      return;
    }
    this.waiting ??= fit;
    const retrying = outcome.kind === 'failed';
    this.tell('failed', { message: outcome.message, retrying });
    if (retrying) {
      this.later(RETRY_MS[Math.min(this.failures, RETRY_MS.length - 1)]!);
      this.failures += 1;
    }
  }
}
