import type { Fit } from '../../core/document/fit-schema.ts';

/** One step of undo: its name, and the fit before it. */
interface Step {
  readonly name: string;
  readonly fit: Fit;
}

/** Undo and redo by whole gestures, unlimited within a session. Fits share their untouched parts, so steps are light. */
export interface EditHistory {
  /** Records that the gesture `name` changed the fit from `before`; steps that could be redone are dropped. */
  record(name: string, before: Fit): void;
  /** Returns the fit before the last step, given the present one; null when there is none. */
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
