import fc from 'fast-check';
import type { z } from 'zod';
import { waitingValue } from '../../../app/store/record-versions.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { fitSchema } from '../../../core/document/fit-schema.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';

type Def = { readonly type: string } & Record<string, unknown>;
type Rule = { check: string; value?: number; minimum?: number; maximum?: number; format?: string };

/** Sound documents to start from: few random ones would pass the rules that hold between their fields. */
const SOUND = new Map<z.ZodType, () => unknown>([
  [athleteSchema, inventedAthlete],
  [boatSchema, inventedBoat],
  [fitSchema, inventedFit],
  [waitingValue, () => '"61"'],
]);

/** Longest list that is made up. */
const LONGEST = 3;

/**
 * Inputs that a schema accepts, or nearly: right in shape, within the limits of each field. `identifiers` are ones that
 * are known, so that some calls reach something.
 */
export function arbitraryOf(schema: z.ZodType, identifiers: () => readonly string[]): fc.Arbitrary<unknown> {
  const of = (inner: unknown) => arbitraryOf(inner as z.ZodType, identifiers);
  const sound = SOUND.get(schema);
  if (sound) return fc.constant(null).map(() => sound());
  const def = schema._zod.def as unknown as Def;
  switch (def.type) {
    case 'object': {
      const shape = def.shape as Record<string, z.ZodType>;
      return fc.record(Object.fromEntries(Object.entries(shape).map(([name, inner]) => [name, of(inner)])));
    }
    case 'array':
      return fc.array(of(def.element), {
        minLength: Math.min(limit(def, 'min_length', 0), 5),
        maxLength: Math.max(limit(def, 'min_length', 0), LONGEST),
      });
    case 'tuple':
      return fc.tuple(...(def.items as unknown[]).map(of));
    case 'record':
      return fc.dictionary(fc.constantFrom(...namesOf(def.keyType as z.ZodType)), of(def.valueType), {
        maxKeys: LONGEST,
      });
    case 'union':
      return fc.oneof(...(def.options as unknown[]).map(of));
    case 'nullable':
      return fc.option(of(def.innerType), { nil: null });
    case 'optional':
    case 'default':
    case 'prefault':
      return fc.option(of(def.innerType), { nil: undefined });
    case 'pipe':
      return of(def.in);
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries as Record<string, string>));
    case 'literal':
      return fc.constantFrom(...(def.values as unknown[]));
    case 'boolean':
      return fc.boolean();
    case 'number':
      return numberOf(def);
    case 'string':
      return stringOf(def, identifiers);
    default:
      return fc.anything();
  }
}

/** As `arbitraryOf`, for the fields of an object each by itself, whatever sound document it is otherwise taken from. */
export function arbitraryObjectOf(schema: z.ZodType): fc.Arbitrary<object> {
  const def = schema._zod.def as unknown as Def;
  const shape = def.shape as Record<string, z.ZodType>;
  const fields = Object.entries(shape).map(([name, inner]) => [name, arbitraryOf(inner, () => [])] as const);
  return fc.record(Object.fromEntries(fields), { requiredKeys: [] });
}

function rules(def: Def): Rule[] {
  const checks = (def.checks ?? []) as { _zod: { def: Rule } }[];
  return checks.map((check) => check._zod.def);
}

function limit(def: Def, check: string, otherwise: number): number {
  const rule = rules(def).find((one) => one.check === check);
  return rule?.value ?? rule?.minimum ?? rule?.maximum ?? otherwise;
}

function numberOf(def: Def): fc.Arbitrary<number> {
  const min = limit(def, 'greater_than', -1e6);
  const max = limit(def, 'less_than', 1e6);
  const whole = def.format === 'safeint' || rules(def).some((rule) => rule.format === 'safeint');
  return whole
    ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
    : fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

function stringOf(def: Def, identifiers: () => readonly string[]): fc.Arbitrary<string> {
  if (def.format === 'uuid') {
    return fc.oneof(
      fc.uuid(),
      fc.nat().map((n) => {
        const known = identifiers();
        return known[n % Math.max(known.length, 1)] ?? crypto.randomUUID();
      }),
    );
  }
  const day = fc.date({ min: new Date(0), max: new Date('2100-01-01'), noInvalidDate: true });
  if (def.format === 'date') return day.map((date) => date.toISOString().slice(0, 10));
  if (def.format === 'datetime') return day.map((date) => date.toISOString());
  const minLength = limit(def, 'min_length', 0);
  return fc.string({
    unit: 'grapheme',
    minLength,
    maxLength: Math.min(limit(def, 'max_length', 20), minLength + 20),
  });
}

function namesOf(keys: z.ZodType): string[] {
  return [...(keys._zod.values ?? ['any'])].map(String);
}

/** What a hand, a fault or an attacker might put in the place of a value. */
const STRANGE: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    '',
    ' ',
    0,
    -1,
    1e308,
    -1e308,
    2 ** 53,
    5e-324,
    true,
    [],
    {},
    [[]],
    '\u0000',
    '../../etc/passwd',
  ),
  fc.constantFrom<unknown>(
    '__proto__',
    'constructor',
    "'; DROP TABLE fits; --",
    '%_\\',
    '\uD800',
    '\u202E',
    'NaN',
    '1e5',
  ),
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.constant('x'.repeat(20_000)),
  fc.json({ maxDepth: 4 }).map((text) => JSON.parse(text) as unknown),
  fc.double(),
);

/** A value changed in a few places: parts put out, doubled, put in the wrong place or replaced by something strange. */
export function disturbed(sound: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const change = fc.record({
    at: fc.array(fc.nat({ max: 40 }), { minLength: 0, maxLength: 7 }),
    how: fc.constantFrom('replace', 'remove', 'add', 'double', 'proto'),
    by: STRANGE,
  });
  return fc.tuple(sound, fc.array(change, { maxLength: 3 })).map(([value, changes]) => {
    let text = JSON.stringify(value) ?? 'null';
    for (const { at, how, by } of changes) text = changedText(JSON.parse(text), at, { how, by });
    return JSON.parse(text) as unknown;
  });
}

/** As text, since only text can carry a key named `__proto__` of its own. */
function changedText(
  root: unknown,
  at: readonly number[],
  { how, by }: { how: string; by: unknown },
): string {
  const strange = JSON.stringify(by) ?? 'null';
  let here = root;
  for (const [depth, step] of at.entries()) {
    if (typeof here !== 'object' || here === null) break;
    const names = Object.keys(here);
    const name = names[step % Math.max(names.length, 1)];
    if (name === undefined) break;
    const held = here as Record<string, unknown>;
    if (depth === at.length - 1) {
      if (how === 'remove') delete held[name];
      else if (how === 'add') held[`${name}x`] = by;
      else if (how === 'double') held[name] = [held[name], held[name]];
      else if (how === 'replace') held[name] = by;
      else held[name] = '\u0001proto\u0001';
      break;
    }
    here = held[name];
  }
  if (at.length === 0 && how === 'replace') return strange;
  return (JSON.stringify(root) ?? 'null').replaceAll(
    '"\\u0001proto\\u0001"',
    `{"__proto__":${strange},"constructor":{"prototype":${strange}}}`,
  );
}
