import { pointsOf } from '../../../core/graphics/shape.ts';
import type { PaperShape } from '../../../core/setout/paper-marks.ts';
import type {
  Dimension,
  MillimetrePoint,
  TemplateLayer,
  TemplateShape,
} from '../../../core/setout/template-drawing.ts';
import { plainSpaces } from '../../english.ts';

/** A line of a drawing as its points. */
export interface ReadLine {
  readonly layer: string;
  readonly points: readonly MillimetrePoint[];
  readonly closed: boolean;
}

/** Every line of some shapes, each as its points. */
export function allLines(shapes: readonly (TemplateShape | PaperShape)[]): ReadLine[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'line'
      ? shape.lines.map((line) => ({
          layer: shape.role,
          points: pointsOf(line),
          closed: shape.closed ?? false,
        }))
      : [],
  );
}

export function linesOn(shapes: readonly TemplateShape[], layer: TemplateLayer): ReadLine[] {
  return allLines(shapes).filter((line) => line.layer === layer);
}

/** Every circle of some shapes. */
export function allCircles(shapes: readonly TemplateShape[]) {
  return shapes.flatMap((shape) =>
    shape.kind === 'disc' ? [{ layer: shape.role, centre: shape.at, radius: shape.radius }] : [],
  );
}

export function circlesOn(shapes: readonly TemplateShape[], layer: TemplateLayer) {
  return allCircles(shapes).filter((round) => round.layer === layer);
}

export function dimensionsOf(shapes: readonly TemplateShape[]): Dimension[] {
  return shapes.filter((shape) => shape.kind === 'dimension');
}

export function lettersOf(shapes: readonly TemplateShape[]) {
  return shapes.filter((shape) => shape.kind === 'text');
}

export function textsOf(shapes: readonly TemplateShape[]): string[] {
  return lettersOf(shapes).map(({ text }) => plainSpaces(text));
}

/** Words among shapes on the paper. */
export function wordsOn(shapes: readonly PaperShape[]): string[] {
  return shapes.flatMap((shape) => (shape.kind === 'text' ? [plainSpaces(shape.text)] : []));
}

/** Filled rings of a role among shapes on the paper, each as its points. */
export function fillsOf(shapes: readonly PaperShape[], role: string): MillimetrePoint[][] {
  return shapes.flatMap((shape) =>
    shape.kind === 'area'
      ? shape.fills.filter((fill) => fill.role === role).flatMap(({ rings }) => rings.map(pointsOf))
      : [],
  );
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
