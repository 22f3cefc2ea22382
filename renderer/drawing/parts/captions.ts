import { say } from '../../language/messages.ts';
import { LETTERING, type Pen } from '../pen.ts';
import type { Part, Scene } from '../scene.ts';
import type { ScreenRect } from '../screen-point.ts';

/** Names of the views, in the corner of each. */
export const captions: Part = {
  layer: 'labels',
  paint(pen, scene) {
    for (const { words, rect } of captionsOf(pen, scene)) {
      const ink = { lettering: 'caption', colour: 'ink-faint', baseline: 'top', rim: 'paper' } as const;
      pen.text(words, { x: rect.left, y: rect.top }, ink);
    }
  },
};

/** The captions with the room they take, which no label may cover. */
export function captionsOf(
  pen: Pen,
  { layout: { windows } }: Scene,
): readonly { readonly words: string; readonly rect: ScreenRect }[] {
  return (['plan', 'profile', 'section'] as const).map((view) => {
    const words = say(CAPTION[view]).toUpperCase();
    const { left, top } = windows[view];
    const width = pen.widthOf(words, 'caption');
    return { words, rect: { left: left + 2, top: top + 3, width, height: LETTERING.caption.height } };
  });
}

const CAPTION = {
  plan: 'drawing.from-above',
  profile: 'drawing.from-side',
  section: 'drawing.from-behind',
} as const;
