import PDFDocument from 'pdfkit';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { scriptRuns } from '../../language/script-runs.ts';
import { onOneLine } from '../../shell/plain-text.ts';
import { type FontWeight, fontBytes, fontRuns, fontsOf, type Glyphs } from './font-shelf.ts';
import { createTags, type Tag, type Tags } from './tags.ts';

/** PDF points in a millimetre. */
const POINTS = 72 / 25.4;

/** How something is inked. Widths and dashes in millimetres; `fill` and `stroke` as #rrggbb. */
export interface PdfInk {
  readonly stroke?: string;
  readonly fill?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly opacity?: number;
}

/** How words are set: size in millimetres of type (not of capitals). */
export interface Type {
  readonly size: number;
  readonly weight?: FontWeight;
  readonly colour?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Counter-clockwise about the anchor, degrees. */
  readonly turnDeg?: number;
  /** What the words are to a reader who does not see the page; a paragraph unless said. */
  readonly tag?: Tag;
}

/**
 * A PDF in millimetres from the top left corner of each page. The same calls give the same bytes: dates come from
 * outside, and the file's identity is made from them.
 */
export interface SheetPdf {
  addPage(size: { width: number; height: number }): void;
  path(points: readonly MillimetrePoint[], ink: PdfInk & { closed?: boolean }): void;
  /** Several rings as one shape. */
  shape(rings: readonly (readonly MillimetrePoint[])[], ink: PdfInk): void;
  circle(centre: MillimetrePoint, radius: number, ink: PdfInk): void;
  rect(box: { left: number; top: number; width: number; height: number }, ink: PdfInk): void;
  /** Words on a baseline; gives their width. */
  text(words: string, at: MillimetrePoint, type: Type): number;
  widthOf(words: string, type: Pick<Type, 'size' | 'weight'>): number;
  /** Breaks words into lines no wider than `width`. */
  lines(words: string, width: number, type: Pick<Type, 'size' | 'weight'>): string[];
  /** Draws with everything outside a rectangle cut off. */
  within(box: { left: number; top: number; width: number; height: number }, draw: () => void): void;
  /** Draws a figure: read by its alternative text alone. */
  figure(alt: string, draw: () => void): void;
  /** Draws pieces that are read together: a row of a table, its cells. */
  group: Tags['group'];
  /** A JPEG as large as a box has room for, in its middle; gives the height it takes. */
  picture(jpeg: Uint8Array, box: { left: number; top: number; width: number; height: number }): number;
  /** Letters that no font has, seen so far. */
  readonly missing: ReadonlySet<string>;
  /** Ends the document. Nothing may be drawn after. */
  bytes(): Uint8Array;
}

/** Begins a document. Every date in it is `keptAt`. */
export function createSheetPdf(about: {
  title: string;
  subject: string;
  keptAt: string;
  /** Language of the words, BCP 47. Names in other scripts are marked with their own. */
  lang: string;
}): SheetPdf {
  const date = new Date(about.keptAt);
  const { title: Title, subject: Subject } = about;
  const doc = new PDFDocument({
    autoFirstPage: false,
    // No standard font: every font of the file is embedded.
    font: '',
    pdfVersion: '1.7',
    lang: about.lang,
    tagged: true,
    info: {
      Title,
      Subject,
      Creator: 'Kneelwright',
      Producer: 'Kneelwright',
      CreationDate: date,
      ModDate: date,
    },
  });
  // Tells a viewer not to fit the pages to its paper.
  const preferences = { PrintScaling: 'None', DisplayDocTitle: true };
  doc._root.data.ViewerPreferences = doc.ref(preferences);
  const tags = createTags(doc);
  const fonts = new Map<string, Glyphs>();
  const missing = new Set<string>();

  function glyphsOf(font: string): Glyphs {
    const known = fonts.get(font);
    if (known) return known;
    doc.registerFont(font, fontBytes(font));
    doc.font(font);
    const glyphs = doc._font.font;
    fonts.set(font, glyphs);
    return glyphs;
  }

  const runsOf = (words: string, weight: FontWeight = 'regular') =>
    fontRuns(words, fontsOf(weight), { glyphsOf, missing });

  function widthOf(words: string, { size, weight }: Pick<Type, 'size' | 'weight'>): number {
    return runsOf(words, weight).reduce((sum, { font, text }) => {
      doc.font(font).fontSize(size * POINTS);
      return sum + doc.widthOfString(text) / POINTS;
    }, 0);
  }

  function inked({ stroke, fill, width = 0.25, dash = [], opacity = 1 }: PdfInk): void {
    doc
      .lineWidth(width * POINTS)
      .lineJoin('round')
      .lineCap('butt');
    if (dash.length > 0)
      doc.dash(
        dash.map((length) => length * POINTS),
        {},
      );
    if (opacity !== 1) doc.opacity(opacity);
    if (fill && stroke) doc.fillAndStroke(fill, stroke);
    else if (fill) doc.fill(fill);
    else doc.stroke(stroke ?? '#000000');
    if (dash.length > 0) doc.undash();
    if (opacity !== 1) doc.opacity(1);
  }

  function trace(points: readonly MillimetrePoint[], closed: boolean): void {
    points.forEach(([x, y], index) => {
      if (index === 0) doc.moveTo(x * POINTS, y * POINTS);
      else doc.lineTo(x * POINTS, y * POINTS);
    });
    if (closed) doc.closePath();
  }

  return {
    missing,
    addPage: ({ width, height }) => void doc.addPage({ size: [width * POINTS, height * POINTS], margin: 0 }),
    path(points, { closed = false, ...ink }) {
      tags.artifact(() => {
        trace(points, closed);
        inked(ink);
      });
    },
    shape(rings, ink) {
      tags.artifact(() => {
        for (const ring of rings) trace(ring, true);
        inked(ink);
      });
    },
    circle([x, y], radius, ink) {
      tags.artifact(() => {
        doc.circle(x * POINTS, y * POINTS, radius * POINTS);
        inked(ink);
      });
    },
    rect({ left, top, width, height }, ink) {
      tags.artifact(() => {
        doc.rect(left * POINTS, top * POINTS, width * POINTS, height * POINTS);
        inked(ink);
      });
    },
    figure: (alt, draw) => tags.leaf('Figure', draw, alt),
    group: tags.group,
    widthOf,
    text(said, [x, y], type) {
      const words = onOneLine(said);
      const { size, weight, colour = '#1f2a33', anchor = 'start', turnDeg = 0, tag = 'P' } = type;
      const width = widthOf(words, type);
      const back = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
      tags.leaf(tag, () => {
        doc.save().fillColor(colour);
        doc.translate(x * POINTS, y * POINTS);
        if (turnDeg !== 0) doc.rotate(-turnDeg);
        let at = -back * POINTS;
        for (const { text: part, lang } of scriptRuns(words, about.lang)) {
          tags.foreign(lang, () => {
            for (const { font, text } of runsOf(part, weight)) {
              doc.font(font).fontSize(size * POINTS);
              doc.text(text, at, 0, { lineBreak: false, baseline: 'alphabetic' });
              at += doc.widthOfString(text);
            }
          });
        }
        doc.restore();
      });
      return width;
    },
    lines(words, width, type) {
      return brokenLines(words, (line) => widthOf(line, type) <= width);
    },
    within({ left, top, width, height }, draw) {
      doc.save();
      doc.rect(left * POINTS, top * POINTS, width * POINTS, height * POINTS).clip();
      draw();
      doc.restore();
    },
    picture(jpeg, { left, top, width, height }) {
      const image = doc.openImage(Buffer.from(jpeg));
      const scale = Math.min(width / image.width, height / image.height);
      const [wide, tall] = [image.width * scale, image.height * scale];
      tags.leaf('Figure', () => {
        doc.image(image, (left + (width - wide) / 2) * POINTS, top * POINTS, {
          width: wide * POINTS,
          height: tall * POINTS,
        });
      });
      return tall;
    },
    bytes() {
      tags.end();
      doc.end();
      return doc.read() as Uint8Array;
    },
  };
}

/** Plain spaces that no line is broken at: inside `5 15/16`, between a figure and its unit, beside a ±. */
const INSIDE_MEASURE = /(?<=\d) (?=\d+\/\d|(?:mm|in|N|kg)\b|°)|(?<=\d) (?=±)|(?<=±) /g;

/** Where a line of Chinese may end: beside any character, but not before a closing mark or after an opening one. */
const BESIDE_HAN =
  /(?<=[\p{Script=Han}，。；：、！？）])(?![，。；：、！？）])|(?<!（)(?=[\p{Script=Han}（])/u;

/** No word of a language is longer, letters: a pasted address or a held key is. */
const LONGEST_WORD = 40;

/** What is longer than a word, and wider than a line, in pieces that are not. A word stays whole. */
function narrowPieces(word: string, fits: (line: string) => boolean): string[] {
  if (word.length <= LONGEST_WORD || fits(word)) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece);
      piece = letter;
    } else {
      piece += letter;
    }
  }
  return [...pieces, piece];
}

/** Words broken where they no longer fit; a single word that is too wide stands alone. A measure with its doubt is one word. */
function brokenLines(words: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  // Not `\s`: it takes spaces that do not break, too.
  const parts = words.replace(INSIDE_MEASURE, '\u{00a0}').split(/[ \t\r\n]+/);
  for (const word of parts.filter(Boolean)) {
    const pieces = word.split(BESIDE_HAN).flatMap((piece) => narrowPieces(piece, fits));
    for (const [index, piece] of pieces.entries()) {
      const space = index === 0 && line !== '' ? ' ' : '';
      const longer = `${line}${space}${piece}`;
      if (line !== '' && !fits(longer)) {
        lines.push(line);
        line = piece;
      } else {
        line = longer;
      }
    }
  }
  return line === '' ? lines : [...lines, line];
}
