import { instantName } from '../../language/instant-name.ts';
import { say } from '../../language/messages.ts';
import { LETTERING } from '../view/pen.ts';
import type { Scene, ScenePart } from '../view/scene.ts';
import type { ScreenRect } from '../view/screen-point.ts';
import { isShown } from '../view/sheet-layout.ts';
import { VIEWS } from '../view/view-geometry.ts';

/** Names of the views, in the corner of each; with the instant of the stroke where another than ready is drawn. */
export const captions: ScenePart = {
  layer: 'labels',
  paint(pen, scene) {
    for (const { words, rect } of captionsOf(scene, (text) => pen.widthOf(text, 'caption'))) {
      const ink = { lettering: 'caption', colour: 'ink-faint', baseline: 'top', rim: 'paper' } as const;
      pen.text(words, { x: rect.left, y: rect.top }, ink);
    }
  },
};

/** The captions with the room they take, which no label may cover. */
export function captionsOf(
  { layout, stroke: { at } }: Scene,
  widthOf: (text: string) => number,
): readonly { readonly words: string; readonly rect: ScreenRect }[] {
  return VIEWS.filter((view) => isShown(layout, view)).map((view) => {
    const named = say(CAPTION[view]);
    const words = (
      at > 0 ? say('stroke.caption', { view: named, instant: instantName(at) }) : named
    ).toUpperCase();
    const { left, top } = layout.windows[view];
    const width = widthOf(words);
    const { height } = LETTERING.caption;
    // A narrow section is all figure, and a plan's corner has the boat's side in it: their names stand over them.
    const isOver =
      (view === 'section' && layout.cardPlace === 'beside') ||
      (view === 'plan' && layout.cardPlace !== 'foot');
    return { words, rect: { left: left + 2, top: isOver ? top - height - 3 : top + 3, width, height } };
  });
}

const CAPTION = {
  plan: 'athlete-page.above',
  profile: 'athlete-page.side',
  section: 'athlete-page.behind',
} as const;
