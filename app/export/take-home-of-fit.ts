import type { Fit } from '../../core/document/fit-schema.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import type { Hull } from '../../core/hull/hull.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { type ShowView, showPicture } from '../../core/show/show-picture.ts';
import { showScene } from '../../core/show/show-scene.ts';
import { type ShownFit, showStory } from '../../core/show/show-story.ts';
import { showWindow } from '../../core/show/show-window.ts';
import { strokeRow } from '../../core/stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../../core/stroke/stroke-of-fit.ts';
import type { SheetUnits } from '../../core/text/sheet-length.ts';
import { formatFor } from '../language/format.ts';
import type { MessageKey } from '../language/messages.ts';
import type { Translator } from '../language/translator.ts';
import type { TakeHome } from './take-home-pdf.ts';

const VIEWS: readonly { view: ShowView; caption: MessageKey }[] = [
  { view: 'side', caption: 'athlete-page.side' },
  { view: 'behind', caption: 'athlete-page.behind' },
];

/** How body mass is written on a page, or that it is kept off it. */
export type ShownMass = 'hidden' | 'kg' | 'lb';

/** Everything on the take-home page of seat `index` of a fit, against an earlier one if given. Null when nobody kneels there. */
export function takeHomeOf(
  fit: Fit,
  options: {
    index: number;
    before: Fit | null;
    reason: string;
    said: TakeHome['said'];
    mass: ShownMass;
    units: SheetUnits;
    words: Translator;
    /** JPEGs as Base64. */
    photographs?: readonly { readonly data: string; readonly caption: string }[];
  },
): TakeHome | null {
  const { index, reason, units, words } = options;
  const format = formatFor(
    { length: units === 'in' ? 'in' : 'cm', mass: 'kg', decimal: 'system' },
    words.language,
  );
  const now: ShownFit = { fit, report: evaluateFit(fit) };
  const before: ShownFit | null = options.before && {
    fit: options.before,
    report: evaluateFit(options.before),
  };
  const story = showStory(now, { index, before, format, words });
  const scene = showScene(now.fit, now.report, index);
  if (!story || !scene) return null;
  const earlier = before && showScene(before.fit, before.report, index);
  const hull = hullOfBoat(fit.boat);
  const scenes = earlier ? [scene, earlier] : [scene];
  return {
    story,
    words,
    reason,
    said: options.said,
    massText: massText(fit.seats[index]?.athlete?.massKg ?? 0, options),
    stroke: strokeOf(now, { index, hull, words }),
    photographs: (options.photographs ?? []).map(({ data, caption }) => ({
      jpeg: Buffer.from(data, 'base64'),
      caption,
    })),
    pictures: VIEWS.map(({ view, caption }) => ({
      caption: words.say(caption),
      ...showWindow(scenes, view),
      picture: showPicture(scene, hull, view),
      before: earlier && story.changes.length > 0 ? showPicture(earlier, hull, view).person : null,
    })),
  };
}

/** Places along the stroke that are shown in a strip, in legs of its cycle. */
const INSTANTS: readonly { at: number; caption: MessageKey }[] = [
  { at: 0, caption: 'athlete-page.stroke.ready' },
  { at: 1, caption: 'term.catch' },
  { at: 1.5, caption: 'athlete-page.stroke.drive' },
  { at: 2, caption: 'term.exit' },
  { at: 2.5, caption: 'athlete-page.stroke.recovery' },
];

/** At the catch the blade reaches farther ahead than at ready, metres. */
const CATCH_BEYOND = 0.25;

/** Five pictures of the stroke from the side, seen through one window. */
function strokeOf(
  { fit, report }: ShownFit,
  { index, hull, words }: { index: number; hull: Hull; words: Translator },
): TakeHome['stroke'] {
  const crew = strokeOfFit(fit, report);
  const scenes = INSTANTS.flatMap(
    ({ at }) => showScene(fit, reportAt(fit, report, strokeRow(crew, at)), index) ?? [],
  );
  const window = showWindow(scenes, 'side');
  return scenes.map((scene, k) => ({
    caption: words.say(INSTANTS[k]!.caption),
    ...window,
    width: window.width + CATCH_BEYOND,
    picture: showPicture(scene, hull, 'side'),
    before: null,
  }));
}

function massText(massKg: number, { mass, words }: { mass: ShownMass; words: Translator }): string | null {
  if (mass === 'hidden') return null;
  const written = formatFor({ length: 'cm', mass, decimal: 'system' }, words.language).mass(massKg);
  return words.say('athlete-page.mass', { mass: written });
}
