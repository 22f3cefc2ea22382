import type { Pixel } from '../../../core/photograph/camera.ts';
import type { ProposedJoint } from '../../../core/photograph/joints-from-landmarks.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { MARK_ORDER, type MarkedJoint, type PhotoMarkName } from './mark-order.ts';

/** A proposal for a joint that is marked. */
export type MarkedProposal = ProposedJoint & { readonly joint: MarkedJoint };

/** Where a mark stands; undefined where it is not set. */
export function markOf({ boat, joints }: PhotoStudy, name: PhotoMarkName): Pixel | undefined {
  const [kind, own] = partsOf(name);
  return kind === 'joint' ? joints[own as keyof typeof joints] : boat[own];
}

/** The study with a mark set, or taken away by null. What was read off the picture before no longer counts; a joint that was proposed is looked at. */
export function withMark(study: PhotoStudy, name: PhotoMarkName, at: Pixel | null): PhotoStudy {
  const [kind, own] = partsOf(name);
  const part = kind === 'joint' ? 'joints' : 'boat';
  const { [own]: _, ...rest } = study[part] as Record<string, Pixel>;
  const marks = at ? { ...rest, [own]: rounded(at) } : rest;
  const { result: _result, ...open } = study;
  const proposed = kind === 'joint' ? without(study.proposed, own) : study.proposed;
  return { ...open, [part]: marks, proposed, confirmed: false };
}

/** The study with another moment. What was read off the picture before no longer counts. */
export function withMoment({ result: _, ...open }: PhotoStudy, moment: PhotoStudy['moment']): PhotoStudy {
  return { ...open, moment, confirmed: false };
}

/** Those of a pose model's joints that may be proposed: a joint that somebody has marked or looked at stays where it is. */
export function openProposals(study: PhotoStudy, joints: readonly MarkedProposal[]): MarkedProposal[] {
  return joints.filter(({ joint }) => !study.joints[joint] || study.proposed[joint] !== undefined);
}

/** The study with joints that a pose model proposes, each with how sure it is. */
export function withProposals(study: PhotoStudy, joints: readonly MarkedProposal[]): PhotoStudy {
  const marked = joints.reduce((so, { joint, pixel }) => withMark(so, `joint.${joint}`, pixel), study);
  const sure = joints.map(({ joint, confidence }) => [joint, Math.round(100 * confidence) / 100] as const);
  return { ...marked, proposed: { ...study.proposed, ...Object.fromEntries(sure) } };
}

/** The study with a proposed joint looked at and left where it is; all of them without a name. */
export function confirmed(study: PhotoStudy, name?: PhotoMarkName): PhotoStudy {
  return { ...study, proposed: name ? without(study.proposed, partsOf(name)[1]) : {} };
}

/** How sure the pose model is of a joint that nobody has looked at; undefined for every other mark. */
export function proposedShare({ proposed }: PhotoStudy, name: PhotoMarkName): number | undefined {
  const [kind, own] = partsOf(name);
  return kind === 'joint' ? proposed[own as MarkedJoint] : undefined;
}

function without(record: PhotoStudy['proposed'], name: string): PhotoStudy['proposed'] {
  const { [name as MarkedJoint]: _, ...rest } = record;
  return rest;
}

/** A tenth of a pixel is finer than any mark. */
const rounded = ({ u, v }: Pixel): Pixel => ({ u: Math.round(10 * u) / 10, v: Math.round(10 * v) / 10 });

/** The mark so many places further in the guided order; after the last comes the first. */
export function markBeside(name: PhotoMarkName, by: number): PhotoMarkName {
  const at = MARK_ORDER.indexOf(name) + by;
  return MARK_ORDER.at(at % MARK_ORDER.length)!;
}

/** The next mark in the guided order that is not set; the same one where all are. */
export function nextMark(study: PhotoStudy, after: PhotoMarkName): PhotoMarkName {
  const at = MARK_ORDER.indexOf(after);
  const later = [...MARK_ORDER.slice(at + 1), ...MARK_ORDER.slice(0, at)];
  return later.find((name) => !markOf(study, name)) ?? after;
}

function partsOf(name: PhotoMarkName): [string, string] {
  const at = name.indexOf('.');
  return [name.slice(0, at), name.slice(at + 1)];
}
