import { type Line, pointsOf, ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import type { PaperShape } from '../../../core/setout/paper-marks.ts';
import { CAPITALS_OVER_SIZE } from '../../../core/setout/sheet-inks.ts';
import type { SheetBox } from '../../../core/setout/sheet-layout.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { FIGURE_LOOK, type PaperLook, SHEET_LOOK } from './looks.ts';
import type { SheetPdf, Type } from './sheet-pdf.ts';

/** Inks of an earlier posture. */
const BEFORE = { edge: '#1f5f73', fill: '#f7fbfb', width: 0.36, dash: [1.4, 1] };

/**
 * Where a view is drawn: its box on the page, the point of the view at the box's lower left, and its scale in millimetres per
 * metre.
 */
export interface ViewPlacement {
  readonly box: SheetBox;
  readonly from: ViewPoint;
  readonly perMetre: number;
}

/** How a point of a list of shapes comes onto the page, and how it is drawn. */
interface Drawn<R extends string> {
  readonly look: PaperLook<R>;
  place(point: ViewPoint): MillimetrePoint;
}

/** Draws figure, boat and fittings in their box, from the far to the near. */
export function drawView(pdf: SheetPdf, shapes: readonly Shape[], placement: ViewPlacement): void {
  pdf.within(placement.box, () => drawShapes(pdf, shapes, { look: FIGURE_LOOK, place: into(placement) }));
}

/** Draws what is placed on the page already. */
export function drawPaper(pdf: SheetPdf, shapes: readonly PaperShape[]): void {
  drawShapes(pdf, shapes, { look: SHEET_LOOK, place: (point) => point });
}

/** Draws an earlier posture behind the present one: a pale shape with a dashed edge. */
export function drawBefore(pdf: SheetPdf, shapes: readonly Shape[], placement: ViewPlacement): void {
  const rings = ringsOf(shapes).map((ring) => pointsOf(ring).map(into(placement)));
  pdf.within(placement.box, () => {
    pdf.shape(rings, { stroke: BEFORE.edge, width: BEFORE.width, dash: BEFORE.dash });
    pdf.shape(rings, { fill: BEFORE.fill });
  });
}

function into({ box, from, perMetre }: ViewPlacement): Drawn<string>['place'] {
  return ([right, up]) => [
    box.left + (right - from[0]) * perMetre,
    box.top + box.height - (up - from[1]) * perMetre,
  ];
}

function drawShapes<R extends string>(
  pdf: SheetPdf,
  shapes: readonly Shape<R>[],
  { look, place }: Drawn<R>,
): void {
  const placed = (line: Line) => pointsOf(line).map(place);
  for (const shape of shapes) {
    switch (shape.kind) {
      case 'area':
        drawArea(pdf, shape, { look, placed });
        break;
      case 'line': {
        const ink = { ...look.line(shape.role, shape.weight), stroke: look.colour(shape.role) };
        for (const line of shape.lines) pdf.path(placed(line), { ...ink, closed: shape.closed ?? false });
        break;
      }
      case 'disc': {
        const colour = look.colour(shape.role);
        const ink = shape.filled ? { fill: colour } : { ...look.line(shape.role, 'contour'), stroke: colour };
        pdf.circle(place(shape.at), shape.radius, ink);
        break;
      }
      case 'text': {
        const { text, height, strong, role, anchor, turnDeg } = shape;
        const weight = strong ? 'strong' : 'regular';
        const size = height / CAPITALS_OVER_SIZE;
        const [at, type] = [place(shape.at), { size, weight, anchor, turnDeg } as const];
        if (shape.clear) clearGround(pdf, text, { at, type, height });
        pdf.text(text, at, { ...type, colour: look.colour(role) });
      }
    }
  }
}

/** White round letters that lines would run through, millimetres. */
const AROUND_LETTERS_MM = 0.5;
const GROUND = { fill: '#ffffff', opacity: 0.85 };

/** A pale ground behind words. */
function clearGround(
  pdf: SheetPdf,
  text: string,
  {
    at: [x, y],
    type,
    height,
  }: { at: MillimetrePoint; type: Required<Omit<Type, 'colour' | 'tag'>>; height: number },
): void {
  const wide = pdf.widthOf(text, type);
  const start = type.anchor === 'start' ? 0 : type.anchor === 'middle' ? -wide / 2 : -wide;
  const [cos, sin] = [Math.cos((type.turnDeg * Math.PI) / 180), Math.sin((type.turnDeg * Math.PI) / 180)];
  const [left, right] = [start - AROUND_LETTERS_MM, start + wide + AROUND_LETTERS_MM];
  const [low, high] = [-AROUND_LETTERS_MM, height + AROUND_LETTERS_MM];
  const corner = (along: number, up: number): MillimetrePoint => [
    x + along * cos - up * sin,
    y - along * sin - up * cos,
  ];
  const corners = [corner(left, low), corner(right, low), corner(right, high), corner(left, high)];
  pdf.path(corners, { ...GROUND, closed: true });
}

/** An area's outline is stroked first and filled over, so that it runs round the union of its rings. */
function drawArea<R extends string>(
  pdf: SheetPdf,
  { fills, outline }: Extract<Shape<R>, { kind: 'area' }>,
  { look, placed }: { look: PaperLook<R>; placed: (line: Line) => MillimetrePoint[] },
): void {
  const drawn = fills.map(({ role, rings }) => ({ role, rings: rings.map(placed) }));
  if (outline) {
    const { width } = look.line(outline.role, outline.weight);
    pdf.shape(
      drawn.flatMap(({ rings }) => rings),
      { stroke: look.colour(outline.role), width: 2 * width },
    );
  }
  for (const { role, rings } of drawn) pdf.shape(rings, { fill: look.colour(role) });
}
