import { useMemo } from 'react';
import type { Format } from '../../../app/language/format.ts';
import type { Translator } from '../../../app/language/translator.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { type ShownFit, type ShowStory, showStory } from '../../../core/show/show-story.ts';
import { whyNot } from '../../language/why-not.ts';

/** A fit with its report and hull; a text says why its boat cannot be drawn. */
type Solved = (ShownFit & { readonly hull: Hull }) | string;

/** What is shown of a seat: the words, and the scene now and before (null where nothing is before). */
export interface Shown {
  readonly story: ShowStory;
  readonly now: ShowScene;
  readonly before: ShowScene | null;
  readonly hull: Hull;
}

function solved(fit: Fit): Solved {
  try {
    return { fit, report: evaluateFit(fit), hull: hullOfBoat(fit.boat) };
  } catch (error) {
    return whyNot(error);
  }
}

/** Solves one or two states of a fit for showing. A text says why not; null where nobody kneels in the seat. */
export function useShown(
  fits: { now: Fit; before: Fit | null },
  { seat, format, words }: { seat: number; format: Format; words: Translator },
): Shown | string | null {
  const now = useMemo(() => solved(fits.now), [fits.now]);
  const before = useMemo(() => fits.before && solved(fits.before), [fits.before]);
  return useMemo(() => {
    if (typeof now === 'string') return now;
    const earlier = before && typeof before !== 'string' ? before : null;
    const scene = showScene(now.fit, now.report, seat);
    const was = earlier && showScene(earlier.fit, earlier.report, seat);
    const story = showStory(now, { index: seat, before: was ? earlier : null, format, words });
    return scene && story && { story, now: scene, before: was, hull: now.hull };
  }, [now, before, seat, format, words]);
}
