import type { z } from 'zod';
import { documentOf, leavesOf } from '../changes/leaves.ts';
import { RECORD_SHAPES, type RecordKind } from '../changes/record-shapes.ts';

/**
 * A person's changes to a document, on top of what others have changed in it meanwhile: field by field, as between two
 * computers. Where both make no sound document, the person's own is taken. `opened` is the document as the person had it before
 * the change, `made` with the change, `now` as it stands. `unseen`: paths of what others have changed.
 */
export function onTop<D extends object>(
  { kind, schema }: { kind: RecordKind; schema: z.ZodType<D> },
  { opened, made, now }: { opened: D | undefined; made: D; now: D | null | undefined },
): { written: D; unseen: Set<string> } {
  if (!opened || !now) return { written: made, unseen: new Set() };
  const shape = RECORD_SHAPES[kind];
  const [was, is, fields] = [leavesOf(opened, shape), leavesOf(made, shape), leavesOf(now, shape)];
  const unseen = new Set(
    [...was.keys(), ...fields.keys()].filter((path) => was.get(path) !== fields.get(path)),
  );
  if (unseen.size === 0) return { written: made, unseen };
  for (const path of new Set([...was.keys(), ...is.keys()])) {
    const value = is.get(path);
    if (value === was.get(path)) continue;
    if (value === undefined) fields.delete(path);
    else fields.set(path, value);
  }
  const both = schema.safeParse(documentOf(fields, shape));
  return { written: both.success ? both.data : made, unseen };
}
