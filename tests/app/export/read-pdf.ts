import { inflateSync } from 'node:zlib';

/** What a page of a PDF says, read back from the file with nothing of the program that wrote it. Millimetres, y up. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** Every drawn path: its points (curves by their ends) and whether it was stroked, filled or used to clip. */
  readonly paths: readonly { points: [number, number][]; painted: 'stroke' | 'fill' | 'both' | 'clip' }[];
  /** Words with the place of their first letter. */
  readonly texts: readonly { text: string; at: [number, number] }[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly info: Readonly<Record<string, string>>;
  /** The trailer's and catalogue's dictionaries as text. */
  readonly trailer: string;
  readonly catalogue: string;
  /** Names of fonts, and whether each carries its font file. */
  readonly fonts: readonly { name: string; embedded: boolean }[];
}

interface Entry {
  readonly dictionary: string;
  readonly stream: Buffer | null;
}

const MM = 25.4 / 72;
type Matrix = [number, number, number, number, number, number];

/** Reads a PDF with a plain cross-reference table and Flate streams, as ISO 32000-1 describes them. */
export function readPdf(bytes: Uint8Array): ReadPdf {
  const file = Buffer.from(bytes);
  const text = file.toString('latin1');
  const objects = readObjects(file, text);
  const trailer = text.slice(text.lastIndexOf('trailer'));
  const catalogue = dictionaryOf(objects, reference(trailer, 'Root'));
  const kids = refs(dictionaryOf(objects, reference(catalogue, 'Pages')), 'Kids');
  return {
    trailer,
    catalogue: withPreferences(objects, catalogue),
    info: infoOf(objects, trailer),
    pages: kids.map((kid) => readPage(objects, kid)),
    fonts: fontsIn(objects),
  };
}

function readObjects(file: Buffer, text: string): Map<number, Entry> {
  const start = Number(/startxref\s+(\d+)/.exec(text.slice(-200))![1]);
  const table = /xref\s+0 (\d+)\s+/.exec(text.slice(start))!;
  const lines = text.slice(start + table[0].length).split('\n', Number(table[1]));
  const objects = new Map<number, Entry>();
  lines.forEach((line, number) => {
    if (!line.includes(' n')) return;
    const at = Number(line.slice(0, 10));
    const end = text.indexOf('endobj', at);
    const body = text.slice(at, end);
    if (!body.startsWith(`${number} 0 obj`)) throw new Error(`object ${number} is not where the table says`);
    objects.set(number, entryOf(file, { text, at, body }));
  });
  return objects;
}

function entryOf(file: Buffer, { text, at, body }: { text: string; at: number; body: string }): Entry {
  const length = /\/Length (\d+)/.exec(body);
  const streamAt = text.indexOf('stream\n', at);
  if (!length || streamAt < 0 || streamAt > at + body.length) return { dictionary: body, stream: null };
  const dictionary = text.slice(at, streamAt);
  const raw = file.subarray(streamAt + 7, streamAt + 7 + Number(length[1]));
  return { dictionary, stream: dictionary.includes('FlateDecode') ? inflateSync(raw) : raw };
}

function reference(dictionary: string, key: string): number {
  return Number(new RegExp(`/${key} (\\d+) 0 R`).exec(dictionary)![1]);
}

function refs(dictionary: string, key: string): number[] {
  const list = new RegExp(`/${key} \\[([^\\]]*)\\]`).exec(dictionary)![1]!;
  return [...list.matchAll(/(\d+) 0 R/g)].map((match) => Number(match[1]));
}

function dictionaryOf(objects: Map<number, Entry>, number: number): string {
  return objects.get(number)!.dictionary;
}

function withPreferences(objects: Map<number, Entry>, catalogue: string): string {
  return catalogue.includes('/ViewerPreferences')
    ? catalogue + dictionaryOf(objects, reference(catalogue, 'ViewerPreferences'))
    : catalogue;
}

function infoOf(objects: Map<number, Entry>, trailer: string): Record<string, string> {
  const info = dictionaryOf(objects, reference(trailer, 'Info'));
  return Object.fromEntries(
    [...info.matchAll(/\/(\w+) (\d+) 0 R/g)].map(([, key, number]) => {
      const body = objects.get(Number(number))!.dictionary;
      return [key!, body.slice(body.indexOf('(') + 1, body.lastIndexOf(')'))];
    }),
  );
}

function fontsIn(objects: Map<number, Entry>): { name: string; embedded: boolean }[] {
  return [...objects.values()]
    .filter(({ dictionary }) => /\/Type \/Font\b/.test(dictionary) && dictionary.includes('/Subtype /Type0'))
    .map(({ dictionary }) => {
      const child = dictionaryOf(objects, refs(dictionary, 'DescendantFonts')[0]!);
      const descriptor = dictionaryOf(objects, reference(child, 'FontDescriptor'));
      return {
        name: /\/BaseFont \/(\S+)/.exec(dictionary)![1]!,
        embedded: /\/FontFile[23]? \d+ 0 R/.test(descriptor),
      };
    });
}

function readPage(objects: Map<number, Entry>, number: number): ReadPage {
  const page = dictionaryOf(objects, number);
  const [, , width, height] = /\/MediaBox \[([^\]]*)\]/
    .exec(page)![1]!
    .trim()
    .split(/\s+/)
    .map(Number) as number[];
  const content = objects.get(reference(page, 'Contents'))!.stream!.toString('latin1');
  const resources = /\/Resources (\d+) 0 R/.exec(page)
    ? dictionaryOf(objects, reference(page, 'Resources'))
    : page;
  const fonts = new Map(
    [...resources.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, font]) => [
      name!,
      toUnicode(objects, Number(font)),
    ]),
  );
  return { width: width! * MM, height: height! * MM, ...interpret(content, fonts) };
}

/** Glyph numbers to text, from a font's ToUnicode map. */
function toUnicode(objects: Map<number, Entry>, font: number): Map<number, string> {
  const map = new Map<number, string>();
  const cmap = objects.get(reference(dictionaryOf(objects, font), 'ToUnicode'))!.stream!.toString('latin1');
  const hexText = (hex: string) => Buffer.from(hex.replaceAll(/\s/g, ''), 'hex').swap16().toString('utf16le');
  for (const [, range] of cmap.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from, , list] of range!.matchAll(/<(\w+)> <(\w+)> \[([^\]]*)\]/g)) {
      [...list!.matchAll(/<([\w\s]*)>/g)].forEach(([, hex], k) => {
        map.set(Number.parseInt(from!, 16) + k, hexText(hex!));
      });
    }
  }
  return map;
}

const TOKEN = /<[0-9A-Fa-f]*>|\[|\]|\/[^\s[\]<>()/]+|-?\d*\.?\d+(?:e-?\d+)?|[A-Za-z'"*]+/g;

/** Follows the operators that place paths and words (ISO 32000-1, annex A). */
function interpret(
  content: string,
  fonts: Map<string, Map<number, string>>,
): Pick<ReadPage, 'paths' | 'texts'> {
  const paths: { points: [number, number][]; painted: 'stroke' | 'fill' | 'both' | 'clip' }[] = [];
  const texts: { text: string; at: [number, number] }[] = [];
  const stack: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let textMatrix: Matrix = [1, 0, 0, 1, 0, 0];
  let letters = new Map<number, string>();
  let operands: string[] = [];
  let points: [number, number][][] = [];
  const at = (x: number, y: number, by = matrix): [number, number] => [
    (by[0] * x + by[2] * y + by[4]) * MM,
    (by[1] * x + by[3] * y + by[5]) * MM,
  ];
  const paint = (painted: 'stroke' | 'fill' | 'both' | 'clip') => {
    for (const part of points) paths.push({ points: part, painted });
    points = [];
  };
  for (const [token] of content.matchAll(TOKEN)) {
    if (/^[-\d.</[\]]/.test(token)) {
      operands.push(token);
      continue;
    }
    const n = operands.map(Number);
    switch (token) {
      case 'q':
        stack.push([...matrix]);
        break;
      case 'Q':
        matrix = stack.pop()!;
        break;
      case 'cm':
        matrix = times(n as Matrix, matrix);
        break;
      case 'm':
        points.push([at(n[0]!, n[1]!)]);
        break;
      case 'l':
        points.at(-1)!.push(at(n[0]!, n[1]!));
        break;
      case 'c':
        points.at(-1)!.push(at(n[4]!, n[5]!));
        break;
      case 're': {
        const [x, y, w, h] = n as [number, number, number, number];
        points.push([at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)]);
        break;
      }
      case 'h':
        points.at(-1)!.push(points.at(-1)![0]!);
        break;
      case 'S':
        paint('stroke');
        break;
      case 'f':
        paint('fill');
        break;
      case 'B':
        paint('both');
        break;
      case 'n':
        paint('clip');
        break;
      case 'Tf':
        letters = fonts.get(operands[0]!.slice(1))!;
        break;
      case 'Tm':
        textMatrix = n as Matrix;
        break;
      case 'TJ': {
        const glyphs = operands
          .filter((word) => word.startsWith('<'))
          .join('')
          .replaceAll(/[<>]/g, '');
        const text = [...glyphs.matchAll(/.{4}/g)]
          .map(([hex]) => letters.get(Number.parseInt(hex, 16)))
          .join('');
        texts.push({ text, at: at(0, 0, times(textMatrix, matrix)) });
        break;
      }
    }
    operands = [];
  }
  return { paths, texts };
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[1] * b[2],
    a[0] * b[1] + a[1] * b[3],
    a[2] * b[0] + a[3] * b[2],
    a[2] * b[1] + a[3] * b[3],
    a[4] * b[0] + a[5] * b[2] + b[4],
    a[4] * b[1] + a[5] * b[3] + b[5],
  ];
}

/** All words of a page in the order they were drawn. */
export function wordsOf(page: ReadPage): string {
  return page.texts.map(({ text }) => text).join(' ');
}
