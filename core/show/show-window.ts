import { paddleShape } from '../figure/paddle-shape.ts';
import { inView, type ViewPoint } from '../graphics/view.ts';
import { SHOWN_IN, type ShowView } from './show-picture.ts';
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
/** What is shown beyond a blade on every side, metres. */
const BESIDE_BLADE = 0.05;
/** White over the head or the top hand, metres. */
const OVER_HEAD = 0.08;
/** Half of what is shown across the boat from above, metres. */
const ACROSS = 0.62;

/** The window through which scenes are seen, the same for all of them, so that nothing jumps between before and now. */
export function showWindow(scenes: readonly ShowScene[], view: ShowView): ShowWindow {
  const { left, width } = WIDE[view];
  const station = view === 'behind' ? 0 : (scenes[0]?.frame.stationX ?? 0);
  const blades = scenes.flatMap((scene) => bladeIn(scene, view));
  const rights = blades.map(([right]) => right);
  const ups = blades.map(([, up]) => up);
  const first = Math.min(station + left, ...rights.map((right) => right - BESIDE_BLADE));
  const last = Math.max(station + left + width, ...rights.map((right) => right + BESIDE_BLADE));
  const tops = scenes.flatMap(({ points }) => [points.headTop.z, points.topHand.z]);
  const above = view === 'above';
  const low = Math.min(above ? -ACROSS : -UNDER, ...ups.map((up) => up - BESIDE_BLADE));
  const most = above ? ACROSS : Math.max(0, ...tops) + OVER_HEAD;
  const high = Math.max(most, ...ups.map((up) => up + BESIDE_BLADE));
  return { from: [first, low], width: last - first, height: high - low };
}

/** The outline of a paddle's blade in a view; empty where the hands hold none. */
function bladeIn({ seat, points }: ShowScene, view: ShowView): ViewPoint[] {
  const paddle = paddleShape(seat.paddle, { top: points.topHand, lower: points.lowerHand });
  return (paddle?.blade ?? []).map((point) => inView(SHOWN_IN[view], point));
}
