import { z } from 'zod';

/** What a schema asks of one value of a form. */
export interface ValueRule {
  /** The least and greatest number that is taken; infinity without a bound, and for what is no number. */
  readonly min: number;
  readonly max: number;
  /** True if a document needs it. */
  readonly required: boolean;
  /** The schema takes null: the field may be emptied again. */
  readonly mayBeEmpty: boolean;
  /** Only whole numbers are taken. */
  readonly isWhole: boolean;
}

/** What a schema asks of the value at a path; no limits if the schema has no such path. */
export function valueRule(schema: z.ZodType, path: readonly PropertyKey[]): ValueRule {
  const found = schemaAt(schema, path);
  const bare = found && unwrapped(found);
  const number = bare instanceof z.ZodNumber ? bare : null;
  return {
    min: number?.minValue ?? Number.NEGATIVE_INFINITY,
    max: number?.maxValue ?? Number.POSITIVE_INFINITY,
    required: found !== null && [undefined, null, ''].every((empty) => !found.safeParse(empty).success),
    isWhole: number?.format === 'safeint',
    mayBeEmpty: found?.safeParse(null).success ?? false,
  };
}

/** The part of a schema that reads the value at a path. */
function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): z.ZodType | null {
  let here: unknown = schema;
  for (const key of path) {
    const bare = unwrapped(here);
    if (bare instanceof z.ZodObject) here = bare.shape[key as string];
    else if (bare instanceof z.ZodArray) here = bare.element;
    else if (bare instanceof z.ZodTuple) here = bare.def.items[Number(key)];
    else return null;
  }
  return here instanceof z.ZodType ? here : null;
}

/** The schema inside optional, default and transform wrappers. */
function unwrapped(schema: unknown): unknown {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault) {
    return unwrapped(schema.unwrap());
  }
  return schema instanceof z.ZodPipe ? unwrapped(schema.in) : schema;
}
