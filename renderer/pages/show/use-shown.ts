import { useMemo } from 'react';
import type { Format } from '../../../app/language/format.ts';
import type { Translator } from '../../../app/language/translator.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { type ShowStory, showStory } from '../../../core/show/show-story.ts';
import { solveFit } from '../../document/solved-fit.ts';

/** What is shown of a seat: the words, and the scene now and before (null where nothing is before). */
export interface Shown {
  readonly story: ShowStory;
  readonly now: ShowScene;
  readonly before: ShowScene | null;
  readonly hull: Hull;
}

/** Solves one or two states of a fit for showing. A text says why not; null where nobody kneels in the seat. */
export function useShown(
  fits: { now: Fit; before: Fit | null },
  { seat, format, words }: { seat: number; format: Format; words: Translator },
): Shown | string | null {
  const now = useMemo(() => solveFit(fits.now), [fits.now]);
  const before = useMemo(() => fits.before && solveFit(fits.before), [fits.before]);
  return useMemo(() => {
    if (typeof now === 'string') return now;
    const earlier = before && typeof before !== 'string' ? before : null;
    const scene = showScene(now.fit, now.report, seat);
    const was = earlier && showScene(earlier.fit, earlier.report, seat);
    const story = showStory(now, { index: seat, before: was ? earlier : null, format, words });
    return scene && story && { story, now: scene, before: was, hull: now.hull };
  }, [now, before, seat, format, words]);
}
