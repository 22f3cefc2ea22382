import type { Surface } from './pen.ts';

/** One mark of a vector drawing: a path or a piece of lettering, with how it is inked. CSS pixels, colours as CSS texts. */
export interface VectorMark {
  readonly path?: string;
  readonly words?: { readonly text: string; readonly x: number; readonly y: number };
  readonly style: Readonly<Record<string, string | number>>;
  /** Index of the window that it is seen through; null for the whole sheet. */
  readonly window: number | null;
}

const ANCHOR: Partial<Record<CanvasTextAlign, string>> = { center: 'middle', right: 'end', end: 'end' };
const BASELINE: Partial<Record<CanvasTextBaseline, string>> = { middle: 'central', top: 'text-before-edge' };

/** Written to a tenth of a pixel: far finer than a printer's dot at the sizes used. */
const written = (value: number) => String(Math.round(value * 10) / 10);

interface Ink {
  fillStyle: Surface['fillStyle'];
  strokeStyle: Surface['strokeStyle'];
  lineWidth: number;
  globalAlpha: number;
  dash: readonly number[];
  window: number | null;
}

/**
 * A sheet of vectors that the drawing's pens draw on like on a canvas, so that print shows the same drawing. A clip
 * opens a window; windows are not cut against one another. Turns and scales are not needed by any part.
 */
export class VectorSurface implements Surface {
  readonly marks: VectorMark[] = [];
  /** Outlines of the windows, as paths. */
  readonly windows: string[] = [];
  fillStyle: Surface['fillStyle'] = '#000';
  strokeStyle: Surface['strokeStyle'] = '#000';
  lineWidth = 1;
  lineJoin: CanvasLineJoin = 'round';
  lineCap: CanvasLineCap = 'round';
  globalAlpha = 1;
  font = '14px sans-serif';
  letterSpacing = '0px';
  textAlign: CanvasTextAlign = 'left';
  textBaseline: CanvasTextBaseline = 'alphabetic';
  private path = '';
  private dash: readonly number[] = [];
  private window: number | null = null;
  private readonly kept: Ink[] = [];

  beginPath(): void {
    this.path = '';
  }

  moveTo(x: number, y: number): void {
    this.path += `M${written(x)} ${written(y)}`;
  }

  lineTo(x: number, y: number): void {
    this.path += `L${written(x)} ${written(y)}`;
  }

  /** A whole circle, which is all that a pen asks for. */
  arc(x: number, y: number, radius: number): void {
    const [left, right, r] = [written(x - radius), written(x + radius), written(radius)];
    this.path += `M${right} ${written(y)}A${r} ${r} 0 1 1 ${left} ${written(y)}A${r} ${r} 0 1 1 ${right} ${written(y)}`;
  }

  rect(x: number, y: number, width: number, height: number): void {
    this.path += `M${written(x)} ${written(y)}h${written(width)}v${written(height)}h${written(-width)}Z`;
  }

  closePath(): void {
    this.path += 'Z';
  }

  fill(): void {
    this.mark({ path: this.path }, { fill: String(this.fillStyle), stroke: 'none' });
  }

  stroke(): void {
    this.mark({ path: this.path }, { fill: 'none', ...this.line() });
  }

  clip(): void {
    this.windows.push(this.path);
    this.window = this.windows.length - 1;
  }

  save(): void {
    const { fillStyle, strokeStyle, lineWidth, globalAlpha, dash, window } = this;
    this.kept.push({ fillStyle, strokeStyle, lineWidth, globalAlpha, dash, window });
  }

  restore(): void {
    Object.assign(this, this.kept.pop());
  }

  fillText(text: string, x: number, y: number): void {
    this.mark(
      { words: { text, x, y } },
      { fill: String(this.fillStyle), stroke: 'none', ...this.lettering() },
    );
  }

  strokeText(text: string, x: number, y: number): void {
    this.mark({ words: { text, x, y } }, { fill: 'none', ...this.line(), ...this.lettering() });
  }

  measureText(text: string): TextMetrics {
    const context = document.createElement('canvas').getContext('2d')!;
    context.font = this.font;
    return context.measureText(text);
  }

  setLineDash(dash: readonly number[]): void {
    this.dash = [...dash];
  }

  private line() {
    return {
      stroke: String(this.strokeStyle),
      strokeWidth: this.lineWidth,
      strokeLinejoin: this.lineJoin,
      strokeLinecap: this.lineCap,
      strokeDasharray: this.dash.length > 0 ? this.dash.join(' ') : 'none',
    };
  }

  private lettering() {
    return {
      font: this.font,
      letterSpacing: this.letterSpacing,
      textAnchor: ANCHOR[this.textAlign] ?? 'start',
      dominantBaseline: BASELINE[this.textBaseline] ?? 'auto',
    };
  }

  private mark(what: Pick<VectorMark, 'path' | 'words'>, style: VectorMark['style']): void {
    this.marks.push({ ...what, style: { ...style, opacity: this.globalAlpha }, window: this.window });
  }
}
