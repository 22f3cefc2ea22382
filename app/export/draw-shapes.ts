import {
  type Line,
  pointsOf,
  type Role,
  ringsOf,
  type Shape,
  type Weight,
} from '../../core/graphics/shape.ts';
import type { ViewPoint } from '../../core/graphics/view.ts';
import type { SheetBox } from '../../core/setout/sheet-layout.ts';
import type { MillimetrePoint } from '../../core/setout/template-drawing.ts';
import type { SheetPdf } from './pdf/sheet-pdf.ts';

/** Colours on white paper: soft graphite for the paddler, the farther paler; told apart in grey too. */
const COLOURS: Readonly<Record<Role, string>> = {
  skin: '#dcd6ca',
  skinFar: '#ebe7df',
  top: '#b6bbba',
  topFar: '#d5d8d4',
  shorts: '#8f989c',
  shortsFar: '#bbc1bf',
  hair: '#727372',
  figureLine: '#3f464a',
  shaft: '#b98b4f',
  blade: '#c99a5b',
  paddleLine: '#5d421f',
  water: '#dde9e7',
  waterLine: '#7fa6a4',
  hull: '#f3e8cf',
  hullLine: '#1f2a33',
  board: '#e4d2a8',
  wood: '#d0a56a',
  recess: '#b98b52',
  woodLine: '#5d421f',
  strap: '#6e5b3f',
};
/** Widths of lines on paper, millimetres. */
const WIDTHS: Readonly<Record<Weight, number>> = { contour: 0.2, detail: 0.14 };
const BEFORE = { edge: '#1f5f73', fill: '#f7fbfb', width: 0.36, dash: [1.4, 1] };

/** Where a view comes to lie: its box on the page, the point of the view at the box's lower left, millimetres to the metre. */
export interface ViewPlacement {
  readonly box: SheetBox;
  readonly from: ViewPoint;
  readonly perMetre: number;
}

function placed(line: Line, { box, from, perMetre }: ViewPlacement): MillimetrePoint[] {
  return pointsOf(line).map(([right, up]) => [
    box.left + (right - from[0]) * perMetre,
    box.top + box.height - (up - from[1]) * perMetre,
  ]);
}

/** Draws shapes in their box, from the far to the near. */
export function drawShapes(pdf: SheetPdf, shapes: readonly Shape[], placement: ViewPlacement): void {
  pdf.within(placement.box, () => {
    for (const shape of shapes) drawShape(pdf, shape, placement);
  });
}

/** An area's outline is stroked first and filled over, so that it runs round the union of its rings. */
function drawShape(pdf: SheetPdf, shape: Shape, placement: ViewPlacement): void {
  if (shape.kind === 'line') {
    const ink = { stroke: COLOURS[shape.role], width: WIDTHS[shape.weight] };
    for (const line of shape.lines) pdf.path(placed(line, placement), ink);
    return;
  }
  const drawn = shape.fills.map(({ role, rings }) => ({
    role,
    rings: rings.map((ring) => placed(ring, placement)),
  }));
  if (shape.outline) {
    const ink = { stroke: COLOURS[shape.outline.role], width: 2 * WIDTHS[shape.outline.weight] };
    pdf.shape(
      drawn.flatMap(({ rings }) => rings),
      ink,
    );
  }
  for (const { role, rings } of drawn) pdf.shape(rings, { fill: COLOURS[role] });
}

/** Draws what stands out of an earlier picture: a pale shape with a dashed edge. */
export function drawBefore(pdf: SheetPdf, shapes: readonly Shape[], placement: ViewPlacement): void {
  const rings = ringsOf(shapes).map((ring) => placed(ring, placement));
  pdf.within(placement.box, () => {
    pdf.shape(rings, { stroke: BEFORE.edge, width: BEFORE.width, dash: BEFORE.dash });
    pdf.shape(rings, { fill: BEFORE.fill });
  });
}
