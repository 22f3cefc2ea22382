import type { Area, Disc, Line, Lines, Shape } from '../../../core/graphics/shape.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';
import { keysOf, recordOf } from '../../../core/units/entries.ts';
import { type ColourName, mixedPalette, type Palette, ROLE_COLOURS } from './palette.ts';
import type { ScreenPoint, ScreenRect } from './screen-point.ts';
import { keptPaths, type Placed, roleAt, stepsOf, traceLine, traceStep } from './traced.ts';

export interface Ink {
  readonly fill?: ColourName;
  readonly stroke?: ColourName;
  /** Line width, pixels. */
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly alpha?: number;
}

/** Lettering of the drawing: sizes in pixels. Labels are figures beside what they measure, notes are small words, captions name the views. */
export const LETTERING = {
  label: { font: '600 15px', spacing: '0px', height: 18 },
  note: { font: '400 13.5px', spacing: '0px', height: 16 },
  strong: { font: '600 13.5px', spacing: '0px', height: 16 },
  caption: { font: '600 11.5px', spacing: '1px', height: 14 },
} as const;
export type LetteringName = keyof typeof LETTERING;

const OWN_FAMILY = '"Ysabeau Office"';
const FAMILY = `${OWN_FAMILY}, "Noto Sans Georgian", "Noto Sans Armenian", "Noto Sans SC", sans-serif`;

const FONT_OF = recordOf(keysOf(LETTERING), (name) => `${LETTERING[name].font} ${FAMILY}`);

/** The lettering that a canvas was set to last; forgotten by every new pen, for others may have drawn between. */
const lettered = new WeakMap<CanvasRenderingContext2D, LetteringName>();

/**
 * Fonts that must be there before anything is measured. The canvas fetches the faces of other alphabets itself, as a page does, when
 * a text first needs them; a face of all Chinese is a megabyte.
 */
export const FONTS = keysOf(LETTERING).map((name) => `${LETTERING[name].font} ${OWN_FAMILY}`);

/** Draughtsman's dashes: hidden edges, centrelines, projection lines. */
export const DASH = { hidden: [5, 3], centre: [14, 4, 2, 4], fine: [2, 3] } as const;

/** Washed palettes, each mixed once. */
const washes = new WeakMap<Palette, Map<string, Palette>>();

/** Widths already measured; measuring costs more than drawing. Forgotten when the fonts arrive. */
const widths = new Map<string, number>();
const MOST_WIDTHS = 2000;

/** Measures again from now on: the fonts have changed. */
export function forgetWidths(): void {
  widths.clear();
}

export interface LetteringInk {
  readonly lettering: LetteringName;
  readonly colour: ColourName;
  readonly align?: CanvasTextAlign;
  readonly baseline?: CanvasTextBaseline;
  /** A rim of paper around the letters, so that a line behind them does not strike them through. */
  readonly rim?: ColourName;
  readonly alpha?: number;
}

/** Draws on a canvas in CSS pixels with the theme's colours. */
export class Pen {
  readonly context: CanvasRenderingContext2D;
  readonly palette: Palette;

  constructor(context: CanvasRenderingContext2D, palette: Palette) {
    this.context = context;
    lettered.delete(context);
    this.palette = palette;
  }

  /** An open line. */
  line(points: readonly ScreenPoint[], ink: Ink): void {
    this.context.beginPath();
    this.trace(points);
    this.ink(ink);
  }

  /** A closed shape. */
  ring(points: readonly ScreenPoint[], ink: Ink): void {
    this.context.beginPath();
    this.trace(points);
    this.context.closePath();
    this.ink(ink);
  }

  /** Shapes of a view from the far to the near; see `core/graphics/shape.ts`. Lines take `ink`, if it is given. */
  shapes(shapes: readonly Shape[], placed: Placed, ink?: Ink): void {
    const kept = keptPaths(shapes, placed);
    shapes.forEach((shape, k) => {
      switch (shape.kind) {
        case 'area':
        case 'line':
          this.steps(shape, { placed, paths: kept?.[k], ink });
          break;
        case 'disc':
          this.discAt(shape, placed);
          break;
        case 'text': {
          const lettering = shape.strong ? 'strong' : 'note';
          const colour = ROLE_COLOURS[shape.role];
          this.text(shape.text, placedPoint(shape.at, placed), {
            lettering,
            colour,
            align: ALIGNED[shape.anchor],
          });
        }
      }
    });
  }

  /**
   * Paints a shape step by step. Areas have one line round their union: the same rings grown by the line's width are filled first
   * and the areas over them. Stroking them took half of a frame.
   */
  private steps(
    shape: Area | Lines,
    { placed, paths, ink }: { placed: Placed; paths?: readonly Path2D[] | null; ink?: Ink },
  ): void {
    const { context, palette } = this;
    for (let step = 0; step < stepsOf(shape); step++) {
      const path = paths?.[step];
      if (!path) {
        context.beginPath();
        traceStep(context, shape, { placed, step });
      }
      if (shape.kind === 'line') {
        this.ink(ink ?? { stroke: ROLE_COLOURS[shape.role], width: placed.widths[shape.weight] }, path);
        continue;
      }
      context.fillStyle = palette[ROLE_COLOURS[roleAt(shape, step)]];
      if (path) context.fill(path);
      else context.fill();
    }
  }

  private discAt({ at, radius, role, filled }: Disc, placed: Placed): void {
    const colour = ROLE_COLOURS[role];
    const ink = filled ? { fill: colour } : { stroke: colour, width: placed.widths.detail };
    this.disc(placedPoint(at, placed), radius * placed.scale, ink);
  }

  /** One closed ring of a view. */
  placedRing(ring: Line, placed: Placed, ink: Ink): void {
    this.context.beginPath();
    traceLine(this.context, ring, placed);
    this.context.closePath();
    this.ink(ink);
  }

  /** One open line of a view. */
  placedLine(line: Line, placed: Placed, ink: Ink): void {
    this.context.beginPath();
    traceLine(this.context, line, placed);
    this.ink(ink);
  }

  /** A path that is kept. */
  path(path: Path2D, ink: Ink): void {
    this.ink(ink, path);
  }

  disc({ x, y }: ScreenPoint, radius: number, ink: Ink): void {
    this.context.beginPath();
    this.context.arc(x, y, Math.max(0, radius), 0, 2 * Math.PI);
    this.ink(ink);
  }

  rect({ left, top, width, height }: ScreenRect, ink: Ink): void {
    this.context.beginPath();
    this.context.rect(left, top, width, height);
    this.ink(ink);
  }

  text(words: string, { x, y }: ScreenPoint, ink: LetteringInk): void {
    const { context } = this;
    this.setLettering(ink.lettering);
    context.textAlign = ink.align ?? 'left';
    context.textBaseline = ink.baseline ?? 'alphabetic';
    context.globalAlpha = ink.alpha ?? 1;
    if (ink.rim) {
      context.strokeStyle = this.palette[ink.rim];
      context.lineWidth = 3.5;
      context.lineJoin = 'round';
      context.setLineDash([]);
      context.strokeText(words, x, y);
    }
    context.fillStyle = this.palette[ink.colour];
    context.fillText(words, x, y);
    context.globalAlpha = 1;
  }

  widthOf(words: string, lettering: LetteringName): number {
    const key = `${lettering} ${words}`;
    const known = widths.get(key);
    if (known !== undefined) return known;
    this.setLettering(lettering);
    const { width } = this.context.measureText(words);
    if (widths.size > MOST_WIDTHS) widths.clear();
    widths.set(key, width);
    return width;
  }

  /** Draws with everything outside a rectangle left untouched. */
  within({ left, top, width, height }: ScreenRect, draw: () => void): void {
    const { context } = this;
    this.apart(() => {
      context.beginPath();
      context.rect(left, top, width, height);
      context.clip();
      draw();
    });
  }

  /** A pen for faint things: `share` of each colour, the rest of another. It draws opaque. */
  washed(share: number, toward: ColourName): Pen {
    const key = `${share} ${toward}`;
    const known = washes.get(this.palette) ?? new Map<string, Palette>();
    washes.set(this.palette, known);
    const palette = known.get(key) ?? mixedPalette(this.palette, share, toward);
    known.set(key, palette);
    return new Pen(this.context, palette);
  }

  /** Draws fainter. */
  faint(alpha: number, draw: () => void): void {
    this.apart(() => {
      this.context.globalAlpha = alpha;
      draw();
    });
  }

  /** Setting a font costs more than drawing a word with it, so it is set only where another was set last. */
  private setLettering(name: LetteringName): void {
    const { context } = this;
    if (lettered.get(context) === name) return;
    lettered.set(context, name);
    context.font = FONT_OF[name];
    context.letterSpacing = LETTERING[name].spacing;
  }

  /** Draws between save and restore, so that the earlier settings hold again after it. */
  private apart(draw: () => void): void {
    const { context } = this;
    context.save();
    draw();
    context.restore();
    lettered.delete(context);
  }

  private trace(points: readonly ScreenPoint[]): void {
    let first = true;
    for (const { x, y } of points) {
      if (first) this.context.moveTo(x, y);
      else this.context.lineTo(x, y);
      first = false;
    }
  }

  /** Fills and strokes the path that was traced last, or one that is kept. */
  private ink({ fill, stroke, width = 1, dash = [], alpha = 1 }: Ink, path?: Path2D): void {
    const { context, palette } = this;
    const before = context.globalAlpha;
    context.globalAlpha = before * alpha;
    if (fill) {
      context.fillStyle = palette[fill];
      if (path) context.fill(path);
      else context.fill();
    }
    if (stroke) {
      context.strokeStyle = palette[stroke];
      context.lineWidth = width;
      context.lineJoin = 'round';
      context.lineCap = dash.length > 0 ? 'butt' : 'round';
      context.setLineDash(dash);
      if (path) context.stroke(path);
      else context.stroke();
    }
    context.globalAlpha = before;
  }
}

const ALIGNED = { start: 'left', middle: 'center', end: 'right' } as const;

function placedPoint([right, up]: ViewPoint, { x, y, scale }: Placed): ScreenPoint {
  return { x: x + right * scale, y: y - up * scale };
}

/** Brings a line of one pixel onto the pixel grid. */
export function onPixelGrid(value: number): number {
  return Math.round(value - 0.5) + 0.5;
}
