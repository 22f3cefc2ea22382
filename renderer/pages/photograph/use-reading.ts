import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import { useJobOn } from '../../jobs/use-job.ts';
import { MARK_ORDER, type PhotoMarkName } from './mark-order.ts';

/** What the marks say so far: still being worked on, or read. */
export type PictureReading =
  | { readonly kind: 'waiting' }
  | {
      readonly kind: 'read';
      readonly answer: ReadPicture;
      /** What was read. */
      readonly of: { readonly study: PhotoStudy; readonly others: readonly PhotoStudy[] };
    };

/** Reads the picture again whenever a mark has moved; the reading before is kept in sight meanwhile by its caller. */
export function useReading(
  fit: Fit,
  study: PhotoStudy | null,
  others: readonly PhotoStudy[],
): PictureReading {
  const question = useMemo(() => (study ? { fit, study, others } : null), [fit, study, others]);
  const state = useJobOn('readingOfPicture', question);
  return state.kind === 'done'
    ? { kind: 'read', answer: state.result, of: state.input }
    : { kind: 'waiting' };
}

/** Whether a reading is of the marks as they stand: the one before stays in sight while they move, and is not to be applied. */
export function isReadingOf(
  reading: PictureReading,
  { boat, joints, moment }: PhotoStudy,
  others: readonly PhotoStudy[],
): boolean {
  if (reading.kind !== 'read') return false;
  const { study, others: joined } = reading.of;
  const isSame = study.boat === boat && study.joints === joints && study.moment === moment;
  return isSame && joined.length === others.length;
}

/** A mark that does not agree with the others, and how far it lies off. */
export interface DisagreeingMark {
  readonly name: PhotoMarkName;
  readonly mm: number;
  /** In the picture that is read, not in one that is joined with it. */
  readonly isHere: boolean;
}

/** The marks that do not agree with the others: those that were left out of the reading, and those that could not be. */
export function disagreeingMarks(reading: PictureReading): DisagreeingMark[] {
  if (reading.kind !== 'read') return [];
  const { camera, points, posture } = reading.answer;
  const ofBoat =
    camera.kind === 'solved'
      ? camera.bad.map(({ index, mm }) => ({ name: `boat.${points[index]!}`, mm, isHere: true }))
      : [];
  const ofJoints =
    posture?.kind === 'measured'
      ? [...posture.bad, ...posture.unsettled].map(({ view, joint, mm }) => ({
          name: `joint.${joint}`,
          mm,
          isHere: view === 0,
        }))
      : [];
  return [...ofBoat, ...ofJoints].flatMap((one) => {
    const name = MARK_ORDER.find((known) => known === one.name);
    return name ? [{ ...one, name }] : [];
  });
}
