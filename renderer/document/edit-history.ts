import type { Fit } from '../../core/document/fit-schema.ts';

/** One step of the hand: what it was called, and the fit as it stood before it. */
interface Step {
  readonly name: string;
  readonly fit: Fit;
}

/** Undo and redo by whole gestures, unlimited within a session. Fits share their untouched parts, so steps are light. */
export interface EditHistory {
  /** The fit has left `before` by the gesture `name`; what could be redone is forgotten. */
  record(name: string, before: Fit): void;
  /** Gives back the fit before the last step, given the one that stands now; null when there is none. */
  undo(now: Fit): Step | null;
  redo(now: Fit): Step | null;
  clear(): void;
  readonly undoName: string | null;
  readonly redoName: string | null;
}

export function createEditHistory(): EditHistory {
  let past: Step[] = [];
  let future: Step[] = [];
  return {
    record(name, before) {
      past.push({ name, fit: before });
      future = [];
    },
    undo(now) {
      const step = past.pop();
      if (!step) return null;
      future.push({ name: step.name, fit: now });
      return step;
    },
    redo(now) {
      const step = future.pop();
      if (!step) return null;
      past.push({ name: step.name, fit: now });
      return step;
    },
    clear() {
      past = [];
      future = [];
    },
    get undoName() {
      return past.at(-1)?.name ?? null;
    },
    get redoName() {
      return future.at(-1)?.name ?? null;
    },
  };
}
