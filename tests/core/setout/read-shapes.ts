import type { PaperMark } from '../../../core/setout/paper-marks.ts';
import type {
  Circle,
  Dimension,
  Lettering,
  MillimetrePoint,
  Polyline,
  TemplateLayer,
  TemplateShape,
} from '../../../core/setout/template-drawing.ts';

/** Lines of a layer, each as its points. */
export function linesOn(shapes: readonly TemplateShape[], layer: TemplateLayer): Polyline[] {
  return shapes.filter((shape) => shape.kind === 'polyline').filter((line) => line.layer === layer);
}

export function circlesOn(shapes: readonly TemplateShape[], layer: TemplateLayer): Circle[] {
  return shapes.filter((shape) => shape.kind === 'circle').filter((round) => round.layer === layer);
}

export function dimensionsOf(shapes: readonly TemplateShape[]): Dimension[] {
  return shapes.filter((shape) => shape.kind === 'dimension');
}

export function lettersOf(shapes: readonly TemplateShape[]): Lettering[] {
  return shapes.filter((shape) => shape.kind === 'text');
}

export function textsOf(shapes: readonly TemplateShape[]): string[] {
  return lettersOf(shapes).map(({ text }) => text);
}

/** Words among marks on the paper. */
export function wordsOn(marks: readonly PaperMark[]): string[] {
  return marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []));
}

export const distance = (a: MillimetrePoint, b: MillimetrePoint) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Signed area by the shoelace formula: positive counter-clockwise. */
export function areaOf(ring: readonly MillimetrePoint[]): number {
  return ring.reduce((sum, [x, y], k) => {
    const [nextX, nextY] = ring[(k + 1) % ring.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Least and greatest of each coordinate. */
export function boxOf(points: readonly MillimetrePoint[]) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}
