import type { BenchCanvas } from './bench-canvas.ts';
import { middleOf } from './screen-point.ts';
import { panBy, zoomAbout } from './view-geometry.ts';

const KEY_ZOOM = 1.25;
const KEY_PAN = 48;

/** One step closer (+1) or farther (−1) about the middle of the profile. */
export function zoomStep(canvas: BenchCanvas, way: 1 | -1): void {
  const { geometry } = canvas;
  if (!geometry) return;
  const screen = middleOf(geometry.windows.profile);
  canvas.look(zoomAbout(geometry, 'profile', { screen, factor: KEY_ZOOM ** way }));
}

interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  preventDefault(): void;
}

/** Plus and minus zoom, 0 shows it all; on a crew's boat 0 goes to and fro between the seat and the whole boat. */
export function lookWithKey(canvas: BenchCanvas, event: Key, { crew }: { crew: boolean }): void {
  if (event.ctrlKey || event.metaKey) return;
  if (event.key === '+' || event.key === '=') zoomStep(canvas, 1);
  else if (event.key === '-' || event.key === '−') zoomStep(canvas, -1);
  else if (event.key === '0')
    canvas.showAll(crew && canvas.isFitted && canvas.shows === 'seat' ? 'boat' : 'seat');
  else return;
  event.preventDefault();
}

/** Arrow keys push the paper, while the view's own buttons have the focus. */
export function panWithKey(canvas: BenchCanvas, event: Key): void {
  const pushes: Record<string, [number, number]> = {
    ArrowLeft: [KEY_PAN, 0],
    ArrowRight: [-KEY_PAN, 0],
    ArrowUp: [0, KEY_PAN],
    ArrowDown: [0, -KEY_PAN],
  };
  const push = pushes[event.key];
  const { geometry } = canvas;
  if (!push || !geometry) return;
  event.preventDefault();
  canvas.look(panBy(geometry.camera, 'profile', { x: push[0], y: push[1] }));
}
