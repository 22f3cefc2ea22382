import type { z } from 'zod';
import { say } from '../../language/messages.ts';

/** What is wrong in a form, by the path of the value: `name`, `limits.0.reason`. */
export type Problems = Readonly<Record<string, string>>;

/** How the values of a form become a document. */
export interface FormRules<V, Out> {
  /** Says what a document may hold. */
  readonly schema: z.ZodType<Out>;
  /** What the fields may hold, where the form's values are not named as the document's; left out, the schema. */
  readonly fields?: z.ZodType;
  /** The path in the form's values of a path in the document; left out, the same. */
  readonly fieldOf?: (path: string) => string;
  /** The document as the schema reads it; left out, the values are the document. */
  readonly documentOf?: (values: V) => unknown;
  /** Checks beyond the schema, by path; null where the value is right. */
  readonly check?: (values: V) => Readonly<Record<string, string | null>>;
  /** Words for a path that the schema refuses; left out, that it is needed. */
  readonly wordsFor?: (path: string) => string | null;
}

/** The result of reading a form. */
export type ReadForm<Out> =
  | { readonly ok: true; readonly document: Out }
  | { readonly ok: false; readonly problems: Problems };

/** The document that the values describe, or everything that is still wrong with them. */
export function readForm<V, Out>(rules: FormRules<V, Out>, values: V): ReadForm<Out> {
  const found: Record<string, string> = {};
  for (const [at, text] of Object.entries(rules.check?.(values) ?? {})) if (text !== null) found[at] = text;
  const parsed = rules.schema.safeParse(rules.documentOf ? rules.documentOf(values) : values);
  if (parsed.success && Object.keys(found).length === 0) return { ok: true, document: parsed.data };
  for (const { path } of parsed.error?.issues ?? []) {
    const at = rules.fieldOf?.(path.join('.')) ?? path.join('.');
    found[at] ??= rules.wordsFor?.(at) ?? say('field.needed');
  }
  return { ok: false, problems: found };
}

/** The problems without those of a value that has just changed, of its parts, and of what it is part of. */
export function withoutPath(problems: Problems, path: string): Problems {
  const touches = (other: string) =>
    other === path || other.startsWith(`${path}.`) || path.startsWith(`${other}.`);
  return Object.fromEntries(Object.entries(problems).filter(([other]) => !touches(other)));
}
