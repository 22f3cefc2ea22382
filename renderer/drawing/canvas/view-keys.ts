import { middleOf } from '../view/screen-point.ts';
import { panBy, zoomAbout } from '../view/view-geometry.ts';
import type { BenchCanvas } from './bench-canvas.ts';

const ZOOM_STEP = 1.25;
const PAN_STEP = 48;

/** One step closer (+1) or farther (−1), about the middle of the profile. */
export function zoomStep(canvas: BenchCanvas, direction: 1 | -1): void {
  const { geometry } = canvas;
  if (!geometry) return;
  const screen = middleOf(geometry.windows.profile);
  canvas.look(zoomAbout(geometry, 'profile', { screen, factor: ZOOM_STEP ** direction }));
}

/** Shows the cockpit of the seat worked on; where that is fitted already, the whole boat. */
export function fitAgain(canvas: BenchCanvas): void {
  canvas.showAll(canvas.isFitted && canvas.shows === 'seat' ? 'boat' : 'seat');
}

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'preventDefault'>;

/** Plus and minus zoom, 0 fits to view (again: the whole boat), wherever the focus is in the drawing. */
export function zoomWithKey(canvas: BenchCanvas, event: Key): void {
  if (event.ctrlKey || event.metaKey) return;
  if (event.key === '+' || event.key === '=') zoomStep(canvas, 1);
  else if (event.key === '-' || event.key === '−') zoomStep(canvas, -1);
  else if (event.key === '0') fitAgain(canvas);
  else return;
  event.preventDefault();
}

const PUSHES: Readonly<Record<string, { x: number; y: number }>> = {
  ArrowLeft: { x: PAN_STEP, y: 0 },
  ArrowRight: { x: -PAN_STEP, y: 0 },
  ArrowUp: { x: 0, y: PAN_STEP },
  ArrowDown: { x: 0, y: -PAN_STEP },
};

/** Arrow keys pan the views while the view's own buttons have the focus. */
export function panWithKey(canvas: BenchCanvas, event: Key): void {
  const push = PUSHES[event.key];
  const { geometry } = canvas;
  if (!push || !geometry) return;
  event.preventDefault();
  canvas.look(panBy(geometry.camera, 'profile', push));
}
