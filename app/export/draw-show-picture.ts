import type { SheetBox } from '../../core/setout/sheet-layout.ts';
import type { MillimetrePoint } from '../../core/setout/template-drawing.ts';
import type { ShowShape, ShowTone, ViewPoint } from '../../core/show/show-picture.ts';
import type { SheetPdf } from './pdf/sheet-pdf.ts';

/** Colours of the picture on white paper; the limbs are soft graphite, the near ones darker. */
const TONES: Readonly<Record<ShowTone, string>> = {
  water: '#dde9e7',
  hull: '#f3e8cf',
  board: '#e4d2a8',
  wood: '#d0a56a',
  limbFar: '#e3e1dc',
  trunk: '#cbc9c3',
  limbNear: '#bab8b2',
  shaft: '#8a6a3a',
  blade: '#c99a5b',
  joint: '#ffffff',
  hullLine: '#1f2a33',
  waterLine: '#7fa6a4',
};
const OUTLINE = '#4a5257';
const LINE_MM = 0.18;
const BEFORE_EDGE = '#1f5f73';
const BEFORE_FILL = '#f7fbfb';

/** Where a view comes to lie: its box on the page, the point of the view at the box's lower left, millimetres to the metre. */
export interface ShowPlacement {
  readonly box: SheetBox;
  readonly from: ViewPoint;
  readonly perMetre: number;
}

function placed([right, up]: ViewPoint, { box, from, perMetre }: ShowPlacement): MillimetrePoint {
  return [box.left + (right - from[0]) * perMetre, box.top + box.height - (up - from[1]) * perMetre];
}

/**
 * Draws a picture in its box, from the far to the near. `before` is an earlier picture of the same paddler: what stands
 * out of it behind the present one is seen as a pale shape with a dashed edge.
 */
export function drawShowPicture(
  pdf: SheetPdf,
  shapes: readonly ShowShape[],
  { placement, before }: { placement: ShowPlacement; before: readonly ShowShape[] | null },
): void {
  const ground = shapes.filter(({ tone }) => GROUND.includes(tone));
  const person = shapes.filter(({ tone }) => !GROUND.includes(tone));
  pdf.within(placement.box, () => {
    for (const shape of ground) drawShape(pdf, shape, placement);
    for (const shape of before ?? []) {
      if (!GROUND.includes(shape.tone) && shape.tone !== 'joint') drawBefore(pdf, shape, placement);
    }
    for (const shape of person) drawShape(pdf, shape, placement);
  });
}

const GROUND: readonly ShowTone[] = ['water', 'waterLine', 'hull', 'hullLine', 'board'];

/** Rings of one shape get one outline around them all: stroked first, then filled over. */
function drawShape(pdf: SheetPdf, { tone, kind, rings }: ShowShape, placement: ShowPlacement): void {
  const drawn = rings.map((ring) => ring.map((point) => placed(point, placement)));
  if (kind === 'line') {
    for (const points of drawn) pdf.path(points, { stroke: TONES[tone], width: 0.3 });
    return;
  }
  if (!GROUND.includes(tone)) pdf.shape(drawn, { stroke: OUTLINE, width: 2 * LINE_MM });
  pdf.shape(drawn, { fill: TONES[tone] });
}

function drawBefore(pdf: SheetPdf, { rings }: ShowShape, placement: ShowPlacement): void {
  const drawn = rings.map((ring) => ring.map((point) => placed(point, placement)));
  pdf.shape(drawn, { stroke: BEFORE_EDGE, width: 2 * LINE_MM, dash: [1.4, 1] });
  pdf.shape(drawn, { fill: BEFORE_FILL });
}
