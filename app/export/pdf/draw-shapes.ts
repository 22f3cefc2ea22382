import { dimensionLines } from '../../../core/setout/dimension-lines.ts';
import type {
  MillimetrePoint,
  PlainShape,
  TemplateLayer,
  TemplateShape,
} from '../../../core/setout/template-drawing.ts';
import { LAYER_STYLES } from '../layer-styles.ts';
import { CAPITALS_OVER_SIZE, type SheetPdf } from './sheet-pdf.ts';

/** Where a drawing comes to lie on a page. */
export interface Placement {
  /** Paper over full size: 1 for templates, 0.1 for 1:10. */
  readonly scale: number;
  /** The drawing's origin, millimetres from the page's top left corner. */
  readonly origin: MillimetrePoint;
  /** Fills of closed shapes by layer; without one a shape is a line. */
  readonly fills?: Partial<Readonly<Record<TemplateLayer, string>>>;
}

/** A point of a drawing (x right, y up, full size) on the page (x right, y down), millimetres. */
export function onPage([x, y]: MillimetrePoint, { scale, origin }: Placement): MillimetrePoint {
  return [origin[0] + x * scale, origin[1] - y * scale];
}

/** Draws shapes in their layers' inks. Lettering and dimensions keep their size on the paper at every scale. */
export function drawShapes(pdf: SheetPdf, shapes: readonly TemplateShape[], placement: Placement): void {
  for (const shape of shapes) {
    if (shape.kind === 'dimension') {
      for (const part of dimensionLines(shape, placement.scale)) drawPlain(pdf, part, placement);
    } else {
      drawPlain(pdf, shape, placement);
    }
  }
}

/** Points on a turn of an arc. */
const ARC_STEP_DEG = 2;

function drawPlain(pdf: SheetPdf, shape: PlainShape, placement: Placement): void {
  const { ink: stroke, width, dash } = LAYER_STYLES[shape.layer];
  const ink = { stroke, width, dash };
  switch (shape.kind) {
    case 'polyline':
      pdf.path(
        shape.points.map((point) => onPage(point, placement)),
        { ...ink, closed: shape.closed, ...(shape.closed ? { fill: placement.fills?.[shape.layer] } : {}) },
      );
      return;
    case 'circle':
      pdf.circle(onPage(shape.centre, placement), shape.radius * placement.scale, ink);
      return;
    case 'arc': {
      const sweep = (((shape.toDeg - shape.fromDeg) % 360) + 360) % 360;
      const steps = Math.max(1, Math.ceil(sweep / ARC_STEP_DEG));
      const points = Array.from({ length: steps + 1 }, (_, k): MillimetrePoint => {
        const turn = ((shape.fromDeg + (sweep * k) / steps) * Math.PI) / 180;
        return [
          shape.centre[0] + shape.radius * Math.cos(turn),
          shape.centre[1] + shape.radius * Math.sin(turn),
        ];
      });
      pdf.path(
        points.map((point) => onPage(point, placement)),
        ink,
      );
      return;
    }
    case 'text':
      pdf.text(shape.text, onPage(shape.at, placement), {
        size: shape.height / CAPITALS_OVER_SIZE,
        colour: stroke,
        anchor: shape.anchor,
        turnDeg: shape.turnDeg,
      });
  }
}
