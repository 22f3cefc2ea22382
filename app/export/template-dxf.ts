import {
  DxfWriter,
  LWPolylineFlags,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import { type Line, pointsOf, ringsOf, roleOf, type Text } from '../../core/graphics/shape.ts';
import { withTrueArcs } from '../../core/graphics/true-arcs.ts';
import { dimensionLines } from '../../core/setout/dimension-lines.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import {
  type FullSizeDrawing,
  type PlainShape,
  TEMPLATE_LAYERS,
  type TemplateLayer,
} from '../../core/setout/template-drawing.ts';
import type { Words } from '../../core/text/words.ts';
import { onOneLine } from '../shell/plain-text.ts';
import { LAYER_STYLES } from './layer-styles.ts';
import { withTitleAndBars } from './title-and-bars.ts';

const ALIGNMENT = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

/** Line types by layer: dashes as lengths, gaps as negative lengths, drawing units. */
const CHAIN = 'CHAIN';
const DASHED = 'DASHED';

/**
 * A template as DXF (2007, UTF-8), full size in millimetres, layers named in the words of the trade. Where a line is a true arc it
 * is one in the file; an ellipse stays a fine line of chords.
 */
export function templateDxf(drawing: FullSizeDrawing, stamp: SheetStamp, words: Words): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  dxf.setVariable('$LASTSAVEDBY', { 1: 'Kneelwright' });
  dxf.addLType(CHAIN, 'chain line ____ _ ____', [9, -1.5, 1, -1.5]);
  dxf.addLType(DASHED, 'dashed line __ __ __', [3, -1.5]);
  const shapes = eachOnce(
    withTitleAndBars(drawing, stamp, words).flatMap((shape) =>
      shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape],
    ),
  );
  for (const layer of TEMPLATE_LAYERS) {
    const inLayer = shapes.filter((shape) => roleOf(shape) === layer);
    if (inLayer.length === 0) continue;
    const { name, colourIndex, dash } = LAYER_STYLES[layer];
    dxf.addLayer(name, colourIndex, dash.length > 2 ? CHAIN : dash.length > 0 ? DASHED : 'Continuous');
    dxf.setCurrentLayerName(name);
    for (const shape of inLayer) add(dxf, shape);
  }
  dxf.setZeroLayerAsCurrent();
  return dxf.stringify();
}

/** Shapes without those that lie just on one another: dimensions in a chain share a line, and a machine would run it twice. */
function eachOnce(shapes: readonly PlainShape[]): PlainShape[] {
  const kept = new Map<string, PlainShape>();
  for (const shape of shapes) {
    const key = keyOf(shape);
    if (!kept.has(key)) kept.set(key, shape);
  }
  return [...kept.values()];
}

function keyOf(shape: PlainShape): string {
  if (shape.kind !== 'line') return JSON.stringify(shape);
  const texts = shape.lines.flatMap(pointsOf).map(([x, y]) => `${x.toFixed(4)},${y.toFixed(4)}`);
  const ways = [texts.join(' '), texts.toReversed().join(' ')].sort();
  return `${shape.role} ${shape.closed} ${ways[0]}`;
}

function add(dxf: DxfWriter, shape: PlainShape): void {
  switch (shape.kind) {
    case 'area':
      addLines(dxf, ringsOf([shape]), LWPolylineFlags.Closed);
      return;
    case 'line':
      addLines(dxf, shape.lines, shape.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None);
      return;
    case 'disc':
      dxf.addCircle(point3d(shape.at[0], shape.at[1], 0), shape.radius);
      return;
    case 'text':
      addText(dxf, shape);
  }
}

function addLines(dxf: DxfWriter, lines: readonly Line[], flags: LWPolylineFlags): void {
  for (const line of lines) {
    const corners = withTrueArcs(pointsOf(line));
    dxf.addLWPolyline(
      corners.map(({ at: [x, y], bulge }) => ({ point: { x, y }, ...(bulge === 0 ? {} : { bulge }) })),
      { flags },
    );
  }
}

/** Spaces that end no line. Lettering of CAD programs often lacks them. */
const NO_BREAK = /[\u{a0}\u{202f}]/gu;

/** DXF places aligned text by its second point, and wants both. */
function addText(dxf: DxfWriter, { at, height, text, anchor, turnDeg }: Text<TemplateLayer>): void {
  const point = point3d(at[0], at[1], 0);
  dxf.addText(point, height, onOneLine(text).replaceAll(NO_BREAK, ' '), {
    rotation: turnDeg,
    ...(anchor === 'start'
      ? {}
      : {
          horizontalAlignment: ALIGNMENT[anchor],
          verticalAlignment: TextVerticalAlignment.BaseLine,
          secondAlignmentPoint: point,
        }),
  });
}
