import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import { useJobOn } from '../../jobs/use-job.ts';
import type { PhotoMarkName } from './mark-order.ts';

/** What the marks say so far: still being worked on, or read. */
export type PictureReading =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'read'; readonly answer: ReadPicture };

/** Reads the picture again whenever a mark has moved; the reading before is kept in sight meanwhile by its caller. */
export function useReading(
  fit: Fit,
  study: PhotoStudy | null,
  others: readonly PhotoStudy[],
): PictureReading {
  const question = useMemo(() => (study ? { fit, study, others } : null), [fit, study, others]);
  const state = useJobOn('readingOfPicture', question);
  return state.kind === 'done' ? { kind: 'read', answer: state.result } : { kind: 'waiting' };
}

/** Names of the marks that do not agree with the others. */
export function badMarks(reading: PictureReading): ReadonlySet<string> {
  if (reading.kind !== 'read') return new Set();
  const { camera, points, posture } = reading.answer;
  const ofBoat = camera.kind === 'solved' ? camera.bad.map(({ index }) => `boat.${points[index]}`) : [];
  const ofJoints =
    posture?.kind === 'measured'
      ? posture.bad.filter(({ view }) => view === 0).map(({ joint }) => `joint.${joint}`)
      : [];
  return new Set<PhotoMarkName | string>([...ofBoat, ...ofJoints]);
}
