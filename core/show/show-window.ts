import type { ShowView, ViewPoint } from './show-picture.ts';
import type { ShowScene } from './show-scene.ts';

/** What of a view is shown, metres in the view: from its lower left corner. */
export interface ShowWindow {
  readonly from: ViewPoint;
  readonly width: number;
  readonly height: number;
}

/** Left end and width of each view: the paddler with the blade, and the water under the boat. Metres. */
const WIDE = {
  side: { left: -1.12, width: 2.2 },
  behind: { left: -0.58, width: 1.16 },
  above: { left: -1.12, width: 2.2 },
} as const;
/** Lowest that is shown of the water, metres under the hull's lowest point. */
const UNDER = 0.36;
/** White over the head or the top hand, metres. */
const OVER_HEAD = 0.08;
/** Half of what is shown across the boat from above, metres. */
const ACROSS = 0.62;

/** The window through which scenes are seen, the same for all of them, so that nothing jumps between before and now. */
export function showWindow(scenes: readonly ShowScene[], view: ShowView): ShowWindow {
  const { left, width } = WIDE[view];
  if (view === 'above') return { from: [left, -ACROSS], width, height: 2 * ACROSS };
  const tops = scenes.flatMap(({ points }) => [points.headTop.z, points.topHand.z]);
  return { from: [left, -UNDER], width, height: Math.max(0, ...tops) + OVER_HEAD + UNDER };
}
