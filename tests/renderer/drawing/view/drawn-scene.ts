import { formatFor } from '../../../../app/language/format.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { READY_ALONE } from '../../../../renderer/document/bench-view.ts';
import type { MeasureText } from '../../../../renderer/drawing/layers/drawing-labels.ts';
import { type CockpitView, cockpitView } from '../../../../renderer/drawing/view/cockpit-view.ts';
import { hullDrawing } from '../../../../renderer/drawing/view/hull-drawing.ts';
import { boatBox, pictureOf } from '../../../../renderer/drawing/view/picture.ts';
import type { Scene } from '../../../../renderer/drawing/view/scene.ts';
import { layOutWholeBoat } from '../../../../renderer/drawing/view/sheet-layout.ts';
import { type BoatBox, fitCamera } from '../../../../renderer/drawing/view/view-geometry.ts';
import { valuesOf } from '../../../core/example/values-of.ts';

/** Widths of texts without a browser: a mean letter of each size. The page's own font is a little narrower. */
export const roughWidth: MeasureText = (text, lettering) =>
  text.length * { label: 8.4, note: 7, strong: 7.4, caption: 8 }[lettering];

function wholeBoat(size: { width: number; height: number }, box: BoatBox): CockpitView {
  const layout = layOutWholeBoat(size, box);
  return { layout, camera: fitCamera(layout.windows, box) };
}

/** The scene of a fit on a sheet of this size, at rest, fitted to a seat or to the whole boat. */
export function drawnScene(
  fit: Fit,
  size: { width: number; height: number },
  { seat = 0, showing = 'seat' }: { seat?: number; showing?: 'seat' | 'boat' } = {},
): Scene {
  const picture = pictureOf(fit, valuesOf(fit));
  const lines = hullDrawing(fit.boat);
  const { layout, camera } =
    showing === 'seat'
      ? cockpitView(size, { picture, lines, seat })
      : wholeBoat(size, boatBox(picture, lines));
  return {
    picture,
    ghost: null,
    seat,
    layout,
    notes: [],
    stroke: READY_ALONE,
    geometry: { windows: layout.windows, camera },
    lines,
    format: formatFor({ length: 'cm', mass: 'kg', decimal: 'point' }),
    lit: null,
    held: null,
    pointed: null,
    focused: false,
    touch: false,
  };
}
