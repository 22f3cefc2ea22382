import type { HullDrawing } from './hull-drawing.ts';
import { type Breadth, seatBox } from './picture.ts';
import type { Picture } from './scene.ts';
import { CARD, type CardSize, layOutSheet, type SheetLayout } from './sheet-layout.ts';
import { COCKPIT_SCALE, cockpitCamera, type ViewCamera } from './view-geometry.ts';

/** The first view of a seat: how the sheet is divided, and what its views look at. */
export interface CockpitView {
  readonly layout: SheetLayout;
  readonly camera: ViewCamera;
}

/**
 * The cockpit of a seat on a sheet of this size, CSS pixels: across the whole beam where a pixel is 3 mm or less even so, else
 * as broad as what is worked on.
 */
export function cockpitView(
  size: { width: number; height: number },
  shown: { picture: Picture; lines: HullDrawing; seat: number },
  card: CardSize | null = CARD,
): CockpitView {
  const view = (breadth: Breadth): CockpitView => {
    const box = seatBox(shown, breadth);
    const layout = layOutSheet(size, box, card);
    return { layout, camera: cockpitCamera(layout.windows, box) };
  };
  const whole = view('beam');
  return whole.camera.pixelsPerMetre >= COCKPIT_SCALE ? whole : view('worked');
}
