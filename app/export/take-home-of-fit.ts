import { evaluateFit } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import type { SheetUnits } from '../../core/setout/sheet-length.ts';
import { showLength } from '../../core/show/show-length.ts';
import { type ShowView, showPicture } from '../../core/show/show-picture.ts';
import { showScene } from '../../core/show/show-scene.ts';
import { type ShownFit, showStory } from '../../core/show/show-story.ts';
import { SHOW_WORDS } from '../../core/show/show-words.ts';
import type { TakeHome } from './take-home-pdf.ts';

/** What of each view a page shows, metres: from its lower left. */
const VIEWS: readonly { view: ShowView; caption: string; from: readonly [number, number]; width: number }[] =
  [
    { view: 'side', caption: SHOW_WORDS.fromTheSide, from: [-1.12, -0.36], width: 2.2 },
    { view: 'behind', caption: SHOW_WORDS.fromBehind, from: [-0.58, -0.36], width: 1.16 },
  ];
/** Above the head that much is white, metres. */
const OVER_HEAD = 0.08;

/** How body mass is written on a page, or that it is kept off it. */
export type ShownMass = 'hidden' | 'kg' | 'lb';

const KG_PER_LB = 0.45359237;

/** Everything on the take-home page of seat `index` of a fit, against an earlier one if given. Null when nobody kneels there. */
export function takeHomeOf(
  fit: Fit,
  options: { index: number; before: Fit | null; reason: string; mass: ShownMass; units: SheetUnits },
): TakeHome | null {
  const { index, reason, units } = options;
  const now: ShownFit = { fit, report: evaluateFit(fit) };
  const before: ShownFit | null = options.before && {
    fit: options.before,
    report: evaluateFit(options.before),
  };
  const story = showStory(now, { index, before, write: (length) => showLength(length, units) });
  const scene = showScene(now.fit, now.report, index);
  if (!story || !scene) return null;
  const earlier = before && showScene(before.fit, before.report, index);
  const hull = hullOfBoat(fit.boat);
  const top = Math.max(scene.points.headTop.z, scene.points.topHand.z) + OVER_HEAD;
  return {
    story,
    reason,
    massText: massText(fit.seats[index]?.athlete?.massKg ?? 0, options.mass),
    pictures: VIEWS.map(({ view, caption, from, width }) => ({
      caption,
      shapes: showPicture(scene, hull, view),
      before: earlier && story.changes.length > 0 ? showPicture(earlier, hull, view) : null,
      from,
      width,
      height: top - from[1],
    })),
  };
}

function massText(massKg: number, mass: ShownMass): string | null {
  if (mass === 'hidden') return null;
  return mass === 'kg'
    ? `Body mass ${massKg.toFixed(1)} kg`
    : `Body mass ${(massKg / KG_PER_LB).toFixed(0)} lb`;
}
