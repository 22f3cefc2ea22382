import { say } from './say.ts';

/**
 * Control characters that no text may hold: all but tab and line break, of which only free text makes use. A name with
 * a line break would begin a new entry in a DXF.
 */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/u;
/** Fields of one line: what things are called. */
const ONE_LINE = /^(name|caption|boatName|fitName)$/;

/** A text that may not come in: where it stands in a value, and why not. */
export interface OddText {
  /** As `seats[0].athlete.name`; empty for the value itself. */
  readonly path: string;
  readonly message: string;
}

/** The first text in a value that holds a control character or half a character; null if there is none. */
export function oddText(value: unknown, path = ''): OddText | null {
  if (typeof value === 'string') return oddString(value, path);
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, inside] of Object.entries(value)) {
    const at = Array.isArray(value) ? `${path}[${key}]` : path ? `${path}.${key}` : key;
    const odd = oddText(inside, at);
    if (odd) return odd;
  }
  return null;
}

function oddString(text: string, path: string): OddText | null {
  const field = /[^.[\]]+$/.exec(path)?.[0] ?? '';
  if (!text.isWellFormed()) return { path, message: say('input.half-character') };
  if (CONTROL.test(text)) return { path, message: say('input.control-character') };
  return ONE_LINE.test(field) && /[\r\n\t\u2028\u2029]/.test(text)
    ? { path, message: say('input.one-line') }
    : null;
}

/** A text as it may stand on one line of any file: control characters and line breaks are blanks, half characters �. */
export function onOneLine(text: string): string {
  return text.toWellFormed().replaceAll(/[\p{Cc}\u2028\u2029]+/gu, ' ');
}
