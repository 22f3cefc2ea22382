import type { z } from 'zod';
import type { Message } from '../../core/document/message.ts';
import type { Problem } from '../contract/result.ts';
import type { MessageKey } from '../language/messages.ts';
import { say, sayMessage, words } from '../shell/say.ts';
import { boundsOfSchema, fieldFormat, namesIn, schemaAt } from './field-bounds.ts';

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
  if (rest > 0) problems.push({ path: '', message: say('problem.kinds-left', { count: rest }) });
  return problems;
}

/** A problem as one line: `boat.massKg: 900 is too large; at most 200 kg`. */
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
      return notWhat(kindName(issue.format), value);
    case 'custom':
      return sayMessage({ key: issue.message, ...(issue.params as Pick<Message, 'values'> | undefined) });
    default:
      return say('input.not-allowed', { value: quoted(value) });
  }
}

/** Missing, or not what is needed. */
function notWhat(what: string, value: unknown): string {
  return value === undefined
    ? say('input.missing', { what })
    : say('input.not-read', { text: typeof value === 'string' ? short(value) : quoted(value), what });
}

function wrongKind(expected: string, schema: z.ZodType | null, value: unknown): string {
  const format = fieldFormat(schema);
  return notWhat(format && format in KINDS ? kindName(format) : inRange(kindName(expected), schema), value);
}

function outside(
  issue: Extract<Issue, { code: 'too_big' | 'too_small' }>,
  schema: z.ZodType | null,
  value: unknown,
): string {
  const big = issue.code === 'too_big';
  const limit = Number(big ? issue.maximum : issue.minimum);
  const [most, least] = [limit, limit];
  if (issue.origin === 'string') {
    if (!big && limit === 1) return say('input.empty');
    const count = String(value).length;
    return big ? say('input.too-long', { count, most }) : say('input.too-short', { count, least });
  }
  if (issue.origin === 'array') {
    const count = Array.isArray(value) ? value.length : 0;
    return big ? say('input.list-long', { count, most }) : say('input.list-short', { count, least });
  }
  const text = withUnit(limit, schema);
  return big
    ? say('input.too-large', { value: quoted(value), most: text })
    : say('input.too-small', { value: quoted(value), least: text });
}

function notOneOf(allowed: readonly string[], value: unknown): string {
  const list = words().row(allowed);
  return value === undefined
    ? say('input.missing', { what: allowed.length > 1 ? say('input.kind.one-of', { allowed: list }) : list })
    : say('input.choice', { value: quoted(value), allowed: list });
}

function unknownNames(names: readonly string[], known: readonly string[]): string {
  const keys = words().row(names.map((name) => `"${short(name)}"`));
  const count = names.length;
  return known.length > 0
    ? say('input.keys.allowed', { count, keys, allowed: words().row(known) })
    : say('input.keys', { count, keys });
}

/** A kind with the limits of its schema: "a number from 0.5 to 2 m". */
function inRange(what: string, schema: z.ZodType | null): string {
  const { min, max } = boundsOfSchema(schema);
  if (min !== null && max !== null) return say('input.between', { what, min, max: withUnit(max, schema) });
  if (min !== null) return say('input.at-least', { what, min: withUnit(min, schema) });
  return max === null ? what : say('input.at-most', { what, max: withUnit(max, schema) });
}

function withUnit(limit: number, schema: z.ZodType | null): string {
  const { unit } = boundsOfSchema(schema);
  if (unit === 'deg') return `${limit}°`;
  return unit ? `${limit} ${unit}` : String(limit);
}

const KINDS: Readonly<Record<string, MessageKey>> = {
  number: 'input.kind.number',
  int: 'input.kind.whole',
  string: 'input.kind.text',
  boolean: 'input.kind.boolean',
  array: 'input.kind.list',
  tuple: 'input.kind.list',
  object: 'input.kind.object',
  record: 'input.kind.object',
  uuid: 'input.kind.id',
  base64: 'input.kind.file',
  date: 'input.kind.date',
  datetime: 'input.kind.instant',
};

function kindName(expected: string): string {
  const key = KINDS[expected];
  return key ? say(key) : expected;
}

function quoted(value: unknown): string {
  if (Array.isArray(value)) return '[…]';
  if (typeof value === 'object' && value !== null) return '{…}';
  if (typeof value === 'number') return String(value);
  return typeof value === 'string' ? `"${short(value)}"` : String(value);
}

function short(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '\u{FFFD}');
  return plain.length > QUOTED_LENGTH ? `${plain.slice(0, QUOTED_LENGTH)}...` : plain;
}
