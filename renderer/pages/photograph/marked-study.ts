import type { Pixel } from '../../../core/photograph/camera.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { MARK_ORDER, type MarkName } from './mark-order.ts';

/** Where a mark stands; undefined where it is not set. */
export function markOf({ boat, joints }: PhotoStudy, name: MarkName): Pixel | undefined {
  const [kind, own] = partsOf(name);
  return kind === 'boat' ? boat[own] : joints[own as keyof typeof joints];
}

/** The study with a mark set, or taken away by null. What was read off the picture before no longer counts. */
export function withMark(study: PhotoStudy, name: MarkName, at: Pixel | null): PhotoStudy {
  const [kind, own] = partsOf(name);
  const part = kind === 'boat' ? 'boat' : 'joints';
  const { [own]: _, ...rest } = study[part] as Record<string, Pixel>;
  const marks = at ? { ...rest, [own]: rounded(at) } : rest;
  const { result: _result, ...open } = study;
  return { ...open, [part]: marks, confirmed: false };
}

/** A tenth of a pixel is finer than any mark. */
const rounded = ({ u, v }: Pixel): Pixel => ({ u: Math.round(10 * u) / 10, v: Math.round(10 * v) / 10 });

/** The next mark in the guided order that is not set; the same one where all are. */
export function nextMark(study: PhotoStudy, after: MarkName): MarkName {
  const at = MARK_ORDER.indexOf(after);
  const later = [...MARK_ORDER.slice(at + 1), ...MARK_ORDER.slice(0, at)];
  return later.find((name) => !markOf(study, name)) ?? after;
}

function partsOf(name: MarkName): [string, string] {
  const at = name.indexOf('.');
  return [name.slice(0, at), name.slice(at + 1)];
}
