import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';

/** What undo brings back of a study: its marks, and the moment that they show. */
type Marking = Pick<PhotoStudy, 'boat' | 'joints' | 'proposed' | 'moment'>;

/** One step of undo: its name, and the marks before it. */
export interface MarkStep {
  readonly name: string;
  readonly marking: Marking;
}

/** Steps that can be undone and done again, the newest last. */
export interface MarkSteps {
  readonly past: readonly MarkStep[];
  readonly future: readonly MarkStep[];
}

export const NO_STEPS: MarkSteps = { past: [], future: [] };

const markingOf = ({ boat, joints, proposed, moment }: PhotoStudy): Marking => ({
  boat,
  joints,
  proposed,
  moment,
});

/** The steps with one more, from the study before it. What could be done again is dropped. */
export function recorded({ past }: MarkSteps, name: string, before: PhotoStudy): MarkSteps {
  return { past: [...past, { name, marking: markingOf(before) }], future: [] };
}

/** The study before the last step; null where there is none. What was read off the marks no longer counts. */
export function undone({ past, future }: MarkSteps, now: PhotoStudy) {
  const step = past.at(-1);
  if (!step) return null;
  const steps = { past: past.slice(0, -1), future: [...future, { ...step, marking: markingOf(now) }] };
  return { study: withMarking(now, step.marking), steps };
}

/** The study after the step that was undone last; null where there is none. */
export function redone({ past, future }: MarkSteps, now: PhotoStudy) {
  const step = future.at(-1);
  if (!step) return null;
  const steps = { past: [...past, { ...step, marking: markingOf(now) }], future: future.slice(0, -1) };
  return { study: withMarking(now, step.marking), steps };
}

function withMarking({ result: _, ...open }: PhotoStudy, marking: Marking): PhotoStudy {
  return { ...open, ...marking, confirmed: false };
}
