import { say } from '../../language/messages.ts';
import type { Part } from '../scene.ts';

/** Names of the views, in the corner of each. */
export const captions: Part = {
  layer: 'labels',
  paint(pen, { layout: { windows } }) {
    const ink = { lettering: 'caption', colour: 'ink-faint', baseline: 'top', rim: 'paper' } as const;
    for (const [view, words] of [
      ['plan', say('drawing.from-above')],
      ['profile', say('drawing.from-side')],
      ['section', say('drawing.from-behind')],
    ] as const) {
      pen.text(words.toUpperCase(), { x: windows[view].left + 2, y: windows[view].top + 3 }, ink);
    }
  },
};
