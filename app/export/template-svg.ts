import { type Line, pointsOf, ringsOf, roleOf } from '../../core/graphics/shape.ts';
import { dimensionLines } from '../../core/setout/dimension-lines.ts';
import { boundsOf } from '../../core/setout/drawing-bounds.ts';
import { CAPITALS_OVER_SIZE } from '../../core/setout/sheet-inks.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import { stampLine } from '../../core/setout/sheet-stamp.ts';
import {
  type FullSizeDrawing,
  type MillimetrePoint,
  type PlainShape,
  TEMPLATE_LAYERS,
  type TemplateLayer,
} from '../../core/setout/template-drawing.ts';
import type { Words } from '../../core/text/words.ts';
import { LAYER_STYLES } from './layer-styles.ts';
import { withTitleAndBars } from './title-and-bars.ts';
import { xmlText } from './xml-text.ts';

/** White around the drawing, millimetres. */
const MARGIN_MM = 12;

/**
 * A template as SVG at full size: one user unit is one millimetre, the size in millimetres stands on the root element,
 * and each layer is a group named in the words of the trade.
 */
export function templateSvg(drawing: FullSizeDrawing, stamp: SheetStamp, words: Words): string {
  const all = withTitleAndBars(drawing, stamp, words);
  const { minX, minY, maxX, maxY } = boundsOf(all);
  const width = maxX - minX + 2 * MARGIN_MM;
  const height = maxY - minY + 2 * MARGIN_MM;
  const place = (point: MillimetrePoint): MillimetrePoint => [
    point[0] - minX + MARGIN_MM,
    maxY - point[1] + MARGIN_MM,
  ];
  const shapes = all.flatMap((shape) => (shape.kind === 'dimension' ? dimensionLines(shape, 1) : [shape]));
  const groups = TEMPLATE_LAYERS.flatMap((layer) => {
    const inLayer = shapes.filter((shape) => roleOf(shape) === layer);
    return inLayer.length === 0 ? [] : [group(layer, inLayer, place)];
  });
  const full = words.say('paper.full-size', { units: 'mm', seen: drawing.seen });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${figure(width)}mm" height="${figure(height)}mm" viewBox="0 0 ${figure(width)} ${figure(height)}">`,
    `<title>${xmlText(drawing.title)}</title>`,
    `<desc>${xmlText(words.beside([stampLine(stamp, words), full]))}</desc>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

/** A pale edge round letters that lines would run through. */
const CLEAR = 'stroke="#ffffff" stroke-width="0.8" paint-order="stroke"';

type Place = (point: MillimetrePoint) => MillimetrePoint;

function group(layer: TemplateLayer, shapes: readonly PlainShape[], place: Place): string {
  const { name, ink, width, dash } = LAYER_STYLES[layer];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return [
    `<g id="${name}" fill="none" stroke="${ink}" stroke-width="${width}"${dashes} stroke-linecap="butt" stroke-linejoin="round">`,
    ...shapes.map((shape) => element(shape, place, ink)),
    '</g>',
  ].join('\n');
}

function element(shape: PlainShape, place: Place, ink: string): string {
  switch (shape.kind) {
    case 'area':
      return polylines(ringsOf([shape]), true, place);
    case 'line':
      return polylines(shape.lines, shape.closed ?? false, place);
    case 'disc': {
      const [cx, cy] = place(shape.at).map(figure);
      return `<circle cx="${cx}" cy="${cy}" r="${figure(shape.radius)}"/>`;
    }
    case 'text': {
      const [x, y] = place(shape.at).map(figure);
      const turn = shape.turnDeg === 0 ? '' : ` transform="rotate(${figure(-shape.turnDeg)} ${x} ${y})"`;
      const size = figure(shape.height / CAPITALS_OVER_SIZE);
      return `<text x="${x}" y="${y}" font-family="'Ysabeau Office', sans-serif" font-size="${size}" text-anchor="${shape.anchor}" ${shape.clear ? CLEAR : 'stroke="none"'} fill="${ink}"${turn}>${xmlText(shape.text)}</text>`;
    }
  }
}

function polylines(lines: readonly Line[], closed: boolean, place: Place): string {
  return lines
    .map((line) =>
      pointsOf(line)
        .map((point) => place(point).map(figure).join(','))
        .join(' '),
    )
    .map((points) => `<${closed ? 'polygon' : 'polyline'} points="${points}"/>`)
    .join('\n');
}

/** A length with a ten-thousandth of a millimetre, no exponent, never −0. */
function figure(value: number): string {
  return String(Math.round(value * 1e4) / 1e4 + 0);
}
