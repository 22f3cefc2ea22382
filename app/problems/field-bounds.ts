import type { z } from 'zod';

/** What a schema allows at one place, as far as its own rules say. */
export interface FieldBounds {
  readonly min: number | null;
  readonly max: number | null;
  readonly unit: string | null;
}

type Def = { readonly type: string } & { readonly [rule: string]: unknown };

/** The schema that a path leads to; null where the path leaves what the schema knows. */
export function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): z.ZodType | null {
  const here = unwrapped(schema);
  const [step, ...rest] = path;
  if (step === undefined) return here;
  for (const next of children(here, step)) {
    const found = schemaAt(next, rest);
    if (found) return found;
  }
  return null;
}

/** The limits and the unit that a number schema carries. */
export function boundsOfSchema(schema: z.ZodType | null): FieldBounds {
  if (!schema) return { min: null, max: null, unit: null };
  const limit = (kind: string) => {
    const rule = rulesOf(schema).find(({ check }) => check === kind);
    return typeof rule?.value === 'number' ? rule.value : null;
  };
  const unit = (schema.meta() as { unit?: string } | undefined)?.unit ?? null;
  return { min: limit('greater_than'), max: limit('less_than'), unit };
}

function rulesOf(schema: z.ZodType): { check: string; value?: unknown }[] {
  const checks = (defOf(schema).checks ?? []) as { _zod: { def: { check: string; value?: unknown } } }[];
  return checks.map((check) => check._zod.def);
}

/** The name of the form that a text must have, `date` or `uuid` say; null if any text will do. */
export function fieldFormat(schema: z.ZodType | null): string | null {
  const format = schema && defOf(schema).format;
  return typeof format === 'string' ? format : null;
}

/** The names an object or a record may hold; empty where anything else stands. */
export function namesIn(schema: z.ZodType | null): string[] {
  if (!schema) return [];
  const def = defOf(schema);
  if (def.type === 'object') return Object.keys(def.shape as object);
  if (def.type !== 'record') return [];
  return [...((def.keyType as z.ZodType)._zod.values ?? [])].map(String);
}

function defOf(schema: z.ZodType): Def {
  return schema._zod.def as Def;
}

/** Steps through defaults, optionals, nullables and pipes to the schema that holds the rules. */
function unwrapped(schema: z.ZodType): z.ZodType {
  const def = defOf(schema);
  if (def.innerType) return unwrapped(def.innerType as z.ZodType);
  if (def.type === 'pipe') return unwrapped(def.in as z.ZodType);
  return schema;
}

function children(schema: z.ZodType, step: PropertyKey): z.ZodType[] {
  const def = defOf(schema);
  const one = (child: unknown) => (child ? [child as z.ZodType] : []);
  switch (def.type) {
    case 'object':
      return one((def.shape as Record<PropertyKey, unknown>)[step]);
    case 'array':
      return one(def.element);
    case 'tuple':
      return one((def.items as unknown[])[Number(step)]);
    case 'record':
      return one(def.valueType);
    case 'union':
      return (def.options as z.ZodType[]).flatMap((option) => children(unwrapped(option), step));
    default:
      return [];
  }
}
