import type { z } from 'zod';
import type { Problem } from '../contract/result.ts';
import { boundsOf, formatOf, namesIn, schemaAt } from './field-bounds.ts';

type Issue = z.core.$ZodIssue;

/** More problems than this are not told one by one. */
const MOST_PROBLEMS = 50;
/** A value longer than this is cut when it is quoted back. */
const QUOTED_LENGTH = 40;

/**
 * What is wrong with an input, one problem each: where it is, what is wrong and what is allowed. `schema` is the one
 * that refused `input`.
 */
export function problemsOf(error: z.ZodError, schema: z.ZodType, input: unknown): Problem[] {
  const problems = error.issues.slice(0, MOST_PROBLEMS).map((issue) => ({
    path: pathText(issue.path),
    message: sentence(issue, schemaAt(schema, issue.path), valueAt(input, issue.path)),
  }));
  const rest = error.issues.length - problems.length;
  if (rest > 0) problems.push({ path: '', message: `and ${rest} more problems of the same kinds` });
  return problems;
}

/** A problem as one line: `boat.massKg: 900 is too large; allowed is 1 to 200 kg`. */
export function problemLine({ path, message }: Problem): string {
  return path ? `${path}: ${message}` : message;
}

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((step, i) => (typeof step === 'number' ? `[${step}]` : `${i > 0 ? '.' : ''}${short(String(step))}`))
    .join('');
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let here = input;
  for (const step of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[step];
  }
  return here;
}

function sentence(issue: Issue, schema: z.ZodType | null, value: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return wrongKind(issue.expected, schema, value);
    case 'too_big':
    case 'too_small':
      return outside(issue, schema, value);
    case 'invalid_value':
      return notOneOf(issue.values.map(String), value);
    case 'invalid_union':
      return notOneOf((issue as { options?: unknown[] }).options?.map(String) ?? [], value);
    case 'unrecognized_keys':
      return unknownNames(issue.keys, namesIn(schema));
    case 'invalid_format':
      return value === undefined
        ? `missing; needed is ${formatName(issue.format)}`
        : `${quoted(value)} does not read as ${formatName(issue.format)}`;
    case 'custom':
      return issue.message;
    default:
      return `${quoted(value)} is not allowed here`;
  }
}

function wrongKind(expected: string, schema: z.ZodType | null, value: unknown): string {
  const format = FORMAT_NAMES[formatOf(schema) ?? ''];
  const needed = format ?? `${kindName(expected)}${rangeText(schema)}`;
  return value === undefined ? `missing; needed is ${needed}` : `${quoted(value)} is not ${needed}`;
}

function outside(
  issue: Extract<Issue, { code: 'too_big' | 'too_small' }>,
  schema: z.ZodType | null,
  value: unknown,
): string {
  const big = issue.code === 'too_big';
  const limit = Number(big ? issue.maximum : issue.minimum);
  if (issue.origin === 'string') {
    if (!big && limit === 1) return 'empty; some text is needed';
    return `${String(value).length} characters is too ${big ? 'long' : 'short'}; allowed is ${big ? 'at most' : 'at least'} ${limit}`;
  }
  if (issue.origin === 'array') {
    const count = Array.isArray(value) ? value.length : 0;
    return `${count} entries is too ${big ? 'many' : 'few'}; allowed is ${big ? 'at most' : 'at least'} ${limit}`;
  }
  const range = rangeText(schema).trim() || `${big ? 'at most' : 'at least'} ${limit}`;
  return `${quoted(value)} is too ${big ? 'large' : 'small'}; allowed is ${range.replace(/^(from|of) /, '')}`;
}

function notOneOf(allowed: readonly string[], value: unknown): string {
  const list = allowed.length > 1 ? `one of ${allowed.join(', ')}` : (allowed[0] ?? 'something else');
  return value === undefined
    ? `missing; needed is ${list}`
    : `${quoted(value)} is not known here; allowed is ${list}`;
}

function unknownNames(names: readonly string[], allowed: readonly string[]): string {
  const list = names.map((name) => `"${short(name)}"`).join(', ');
  const known = allowed.length > 0 ? `; allowed are ${allowed.join(', ')}` : '';
  return `${list} ${names.length > 1 ? 'are' : 'is'} not known here${known}`;
}

function rangeText(schema: z.ZodType | null): string {
  const { min, max, unit } = boundsOf(schema);
  const tail = unit ? ` ${UNIT_NAMES[unit] ?? unit}` : '';
  if (min !== null && max !== null) return ` from ${min} to ${max}${tail}`;
  if (min !== null) return ` of at least ${min}${tail}`;
  if (max !== null) return ` of at most ${max}${tail}`;
  return tail && ` in${tail}`;
}

const UNIT_NAMES: Readonly<Record<string, string>> = { deg: 'degrees' };

function kindName(expected: string): string {
  return KIND_NAMES[expected] ?? expected;
}

const KIND_NAMES: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'an object with named values',
  record: 'an object with named values',
  null: 'null',
};

function formatName(format: string): string {
  return FORMAT_NAMES[format] ?? `a ${format}`;
}

const FORMAT_NAMES: Readonly<Record<string, string>> = {
  uuid: 'an identifier (UUID)',
  base64: 'a file as text (Base64)',
  date: 'a date (YYYY-MM-DD)',
  datetime: 'an instant in UTC (YYYY-MM-DDThh:mm:ssZ)',
};

function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'number') return String(value);
  return typeof value === 'string' ? `"${short(value)}"` : String(value);
}

function short(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '\u{FFFD}');
  return plain.length > QUOTED_LENGTH ? `${plain.slice(0, QUOTED_LENGTH)}...` : plain;
}
