import { stripPlace } from '../layers/strip.ts';
import type { Scene } from '../view/scene.ts';
import { isWithin, type ScreenPoint } from '../view/screen-point.ts';
import { viewAt } from '../view/view-geometry.ts';
import { isOnFigure } from './on-figure.ts';

/** How near a seat's mark in the strip must be pressed, pixels. */
const NEAR_MARK = 22;

/** The seat of a crew's boat that a screen point picks: another paddler's figure, or a seat's mark in the strip. */
export function pointedSeat(scene: Scene, screen: ScreenPoint): number | null {
  const { seats } = scene.picture.fit.boat;
  if (seats.length === 1) return null;
  if (isWithin(screen, scene.layout.strip)) {
    const place = stripPlace(scene);
    const near = seats.findIndex(({ stationM }) => Math.abs(place.along(stationM) - screen.x) < NEAR_MARK);
    return near < 0 ? null : near;
  }
  const view = viewAt(scene.layout.windows, screen);
  if (view !== 'plan' && view !== 'profile') return null;
  const hits = (index: number) => isOnFigure(scene, { index, view }, screen);
  if (hits(scene.seat)) return scene.seat;
  const other = seats.findIndex((_, index) => hits(index));
  return other < 0 ? null : other;
}
