/** A unit that people write: the names it goes by, and how many SI units one of it is. */
export interface WrittenUnit {
  readonly names: readonly string[];
  /** SI units in one of it: 0.01 for a centimetre. */
  readonly factor: number;
}

/** Why a text could not be read as a measure, as a code. */
export type MeasureProblem =
  | { readonly code: 'empty' }
  /** No number where one must stand; `text` is the part that was not understood. */
  | { readonly code: 'not-a-number'; readonly text: string }
  | { readonly code: 'unknown-unit'; readonly text: string }
  /** 1.234,5.6 or 1,2,3: the decimal mark is not clear. */
  | { readonly code: 'unclear-separator'; readonly text: string };

/** The value in SI, or why the text is no measure. */
export type ParsedMeasure =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: MeasureProblem };

/** Vulgar fractions as Unicode has them. */
const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * A number at the head of a text: a whole with a fraction, a fraction, or decimal digits with points and commas; digits
 * may be grouped by spaces, three by three.
 */
const NUMBER =
  /^(?:(\d+)[ -]+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d{1,3}(?: \d{3})+(?![\d/])(?:[.,]\d*)?|\d[\d.,]*|[.,]\d[\d.,]*))/;

/**
 * Reads a measure as a person writes it: `17.5`, `17,5`, `175 mm`, `6 7/8 in`, `5' 10½"`, `1 m 75`. A bare number is in
 * `bare` units (a factor to SI); in a compound (`1 m 75`, `5 ft 10`) a bare last part is in the unit that `below` names
 * for the one before it. Result in SI. `parseMeasure('175 mm', { units, bare: 0.01 })` gives 0.175.
 */
export function parseMeasure(
  text: string,
  options: {
    units: readonly WrittenUnit[];
    bare: number;
    below?: (factor: number) => number | undefined;
  },
): ParsedMeasure {
  let rest = tidy(text);
  if (rest === '') return refuse({ code: 'empty' });
  const sign = rest.startsWith('-') ? -1 : 1;
  rest = rest.replace(/^[+-]\s*/, '');
  let sum = 0;
  let last: number | null = null;
  while (rest !== '') {
    const part = readPart(rest, options.units);
    if ('problem' in part) return refuse(part.problem);
    const bare: number | undefined = last === null ? options.bare : options.below?.(last);
    const factor: number | undefined = part.factor ?? (part.rest === '' ? bare : undefined);
    if (factor === undefined || (last !== null && factor >= last)) {
      return refuse({ code: 'not-a-number', text: rest });
    }
    sum += part.number * factor;
    last = factor;
    rest = part.rest;
  }
  return { ok: true, value: sign * sum };
}

function refuse(problem: MeasureProblem): ParsedMeasure {
  return { ok: false, problem };
}

/** Lower case, plain spaces, ASCII minus, fractions written out, typographic primes as ' and ". */
function tidy(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s\u{00a0}\u{2009}\u{202f}]+/gu, ' ')
    .replace(/[\u{2212}\u{2013}]/gu, '-')
    .replace(/[\u{2044}\u{2215}]/gu, '/')
    .replace(/[′’‘]/g, "'")
    .replace(/''|[″”“]/g, '"')
    .replace(/(\d?)([½¼¾⅓⅔⅛⅜⅝⅞])/g, (_, digit: string, mark: string) =>
      digit ? `${digit} ${FRACTIONS[mark]}` : FRACTIONS[mark]!,
    )
    .trim();
}

/** One number with its unit (null factor when it has none), and what is left of the text. */
function readPart(
  text: string,
  units: readonly WrittenUnit[],
): { number: number; factor: number | null; rest: string } | { problem: MeasureProblem } {
  const found = NUMBER.exec(text);
  if (!found) return { problem: { code: 'not-a-number', text } };
  const number = numberOf(found);
  if (number === null) return { problem: { code: 'unclear-separator', text: found[0] } };
  if (!Number.isFinite(number)) return { problem: { code: 'not-a-number', text: found[0] } };
  const after = text.slice(found[0].length).trimStart();
  const name = /^[^\d.,\s/+-]+/.exec(after)?.[0];
  if (name === undefined) {
    return after === '' || /^\d/.test(after)
      ? { number, factor: null, rest: after }
      : { problem: { code: 'not-a-number', text: after } };
  }
  const unit = units.find(({ names }) => names.includes(name.replace(/\.$/, '')));
  if (!unit) return { problem: { code: 'unknown-unit', text: name } };
  return { number, factor: unit.factor, rest: after.slice(name.length).replace(/^\.?\s*/, '') };
}

function numberOf(found: RegExpExecArray): number | null {
  const [, whole, over, under, over2, under2, digits] = found;
  if (whole !== undefined) return Number(whole) + Number(over) / Number(under);
  if (over2 !== undefined) return Number(over2) / Number(under2);
  return decimalOf(digits!.replaceAll(' ', ''));
}

/**
 * Decimal digits with a point or a comma. Both together: the last is the decimal mark and the other groups by three. One kind
 * twice or more groups by three. A single mark is the decimal mark: `1,234` is 1.234, never a thousand, because nothing
 * measured here is that long in its unit.
 */
function decimalOf(digits: string): number | null {
  const marks = digits.match(/[.,]/g) ?? [];
  if (marks.length <= 1) return Number(digits.replace(',', '.'));
  const last = marks.at(-1)!;
  const once = marks.filter((mark) => mark === last).length === 1;
  const grouping = last === '.' ? ',' : '.';
  const pattern = once ? /^\d{1,3}([.,]\d{3})+[.,]\d*$/ : /^\d{1,3}([.,]\d{3})+$/;
  if (!pattern.test(digits) || (!once && marks.some((mark) => mark !== last))) return null;
  return once
    ? Number(digits.replaceAll(grouping, '').replace(',', '.'))
    : Number(digits.replaceAll(last, ''));
}
