import { useEffect, useRef, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import type { CallError } from '../../../app/contract/result.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { call } from '../../client/client.ts';
import { type MarkStep, NO_STEPS, recorded, redone, undone } from './mark-steps.ts';

/** Marks are kept after so long without another change, milliseconds. */
const KEEP_AFTER_MS = 400;

/** The study of a photograph: changed at once here, kept in the store a moment later. A named change can be undone. `onLeave` hears the last study. */
export function useStudy(photo: PhotoRecord, onLeave: (study: PhotoStudy) => void) {
  const [study, setStudy] = useState<PhotoStudy>(photo.study!);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const [steps, setSteps] = useState(NO_STEPS);
  const waiting = useRef<{ timer: number; study: PhotoStudy; name?: string } | null>(null);

  async function keep(next: PhotoStudy): Promise<void> {
    if (waiting.current) window.clearTimeout(waiting.current.timer);
    waiting.current = null;
    const result = await call('photos.study', { id: photo.id, study: next });
    setRefusal(result.ok ? null : result.error);
  }
  const leave = () => {
    onLeave(study);
    if (waiting.current) void keep(waiting.current.study);
  };
  const latest = useRef(leave);
  latest.current = leave;
  useEffect(() => () => latest.current(), []);

  /** Changes of one name that follow each other within `KEEP_AFTER_MS` are one step of undo; those without a name are none. */
  function change(next: PhotoStudy, name?: string): void {
    if (name !== undefined && waiting.current?.name !== name) setSteps(recorded(steps, name, study));
    show(next, name);
  }

  function show(next: PhotoStudy, name?: string): void {
    setStudy(next);
    if (waiting.current) window.clearTimeout(waiting.current.timer);
    const timer = window.setTimeout(() => void keep(next), KEEP_AFTER_MS);
    waiting.current = { timer, study: next, name };
  }

  function step(taken: { study: PhotoStudy; steps: typeof steps } | null): void {
    if (!taken) return;
    setSteps(taken.steps);
    show(taken.study);
  }
  const nameOf = (list: readonly MarkStep[]) => list.at(-1)?.name ?? null;
  const history = {
    undoName: nameOf(steps.past),
    redoName: nameOf(steps.future),
    onUndo: () => step(undone(steps, study)),
    onRedo: () => step(redone(steps, study)),
  };
  return { study, change, keep, refusal, history };
}
