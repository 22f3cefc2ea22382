import type { z } from 'zod';

/** One object of a document: where it stands and what its fields are called. */
export interface SchemaPart {
  /** As `seats[].kneePad`; empty for the document itself. */
  readonly path: string;
  /** Names of fields; a fixed value stands behind its name, a choice too. */
  readonly fields: readonly string[];
}

/** What is read of a schema's definition. */
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

/** A schema's definition, which zod keeps from its types. */
const defOf = (schema: z.core.$ZodType): Def => schema._zod.def as Def;

/** Every object within a schema, the outermost first; the fields are those that the schema itself knows. */
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
