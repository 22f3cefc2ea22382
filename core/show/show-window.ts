import { paddleShape } from '../figure/paddle-shape.ts';
import type { ViewPoint } from '../graphics/view.ts';
import type { ShowView } from './show-picture.ts';
import type { ShowScene } from './show-scene.ts';

/** What of a view is shown, metres in the view: from its lower left corner. */
export interface ShowWindow {
  /** Lower left corner. */
  readonly from: ViewPoint;
  /** To the right. */
  readonly width: number;
  /** Up. */
  readonly height: number;
}

/** Left end and width of each view: the paddler with the blade, and the water under the boat. Metres. */
const WIDE = {
  side: { left: -1.12, width: 2.2 },
  behind: { left: -0.58, width: 1.16 },
  above: { left: -1.12, width: 2.2 },
} as const;
/** Water that is shown at least, metres under the hull's lowest point, and under a blade that reaches deeper. */
const UNDER = 0.36;
/** Water shown under a blade's tip, metres. */
const UNDER_BLADE = 0.05;
/** White over the head or the top hand, metres. */
const OVER_HEAD = 0.08;
/** Half of what is shown across the boat from above, metres. */
const ACROSS = 0.62;

/** The window through which scenes are seen, the same for all of them, so that nothing jumps between before and now. */
export function showWindow(scenes: readonly ShowScene[], view: ShowView): ShowWindow {
  const { left, width } = WIDE[view];
  const station = view === 'behind' ? 0 : (scenes[0]?.frame.stationX ?? 0);
  if (view === 'above') return { from: [station + left, -ACROSS], width, height: 2 * ACROSS };
  const tops = scenes.flatMap(({ points }) => [points.headTop.z, points.topHand.z]);
  const low = Math.min(-UNDER, ...scenes.map(bladeTip).map((z) => z - UNDER_BLADE));
  return { from: [station + left, low], width, height: Math.max(0, ...tops) + OVER_HEAD - low };
}

/** Lowest point of a paddle's blade; 0 where the hands hold none. */
function bladeTip({ seat, points }: ShowScene): number {
  const paddle = paddleShape(seat.paddle, { top: points.topHand, lower: points.lowerHand });
  return Math.min(0, ...(paddle?.blade ?? []).map(({ z }) => z));
}
