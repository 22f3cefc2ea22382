import type { z } from 'zod';

/** One object of a document: where it stands and what its fields are called. */
export interface SchemaPart {
  /** Such as `seats[].kneePad`; empty for the document itself. */
  readonly path: string;
  /** Names of fields, each followed by its fixed value or its choices. */
  readonly fields: readonly string[];
}

/** The parts of a schema's definition that are read here. */
type Def = {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  readonly element?: z.core.$ZodType;
  readonly innerType?: z.core.$ZodType;
  readonly in?: z.core.$ZodType;
  readonly options?: readonly z.core.$ZodType[];
  readonly values?: readonly unknown[];
  readonly entries?: Readonly<Record<string, unknown>>;
};

/** A schema's definition, which zod's types hide. */
const defOf = (schema: z.core.$ZodType): Def => schema._zod.def as Def;

/** Every object within a schema, the outermost first, with the fields of the schema itself. */
export function schemaParts(schema: z.core.$ZodType, path = ''): SchemaPart[] {
  const def = defOf(schema);
  if (def.shape) {
    const fields = Object.entries(def.shape);
    return [
      { path, fields: fields.map(([name, field]) => name + fixedValue(field)) },
      ...fields.flatMap(([name, field]) => schemaParts(field, path ? `${path}.${name}` : name)),
    ];
  }
  if (def.element) return schemaParts(def.element, `${path}[]`);
  if (def.options) return def.options.flatMap((option) => schemaParts(option, path));
  const inner = def.innerType ?? def.in;
  return inner ? schemaParts(inner, path) : [];
}

/** What a field may hold, where that is fixed. */
function fixedValue(field: z.core.$ZodType): string {
  const { type, values, entries, innerType } = defOf(field);
  if (type === 'literal' && values) return `: ${JSON.stringify(values[0])}`;
  if (entries) return ` (${Object.keys(entries).join(' | ')})`;
  return innerType ? fixedValue(innerType) : '';
}
