import type { Fit } from '../../core/document/fit-schema.ts';
import type { PhotoStudy } from '../../core/photograph/photo-study-schema.ts';
import { type ReadPicture, readPicture } from '../../core/photograph/read-picture.ts';
import type { JobTools } from './job.ts';

/** The picture in hand, and others of the same moment that are joined with it. */
export interface PictureQuestion {
  readonly fit: Fit;
  readonly study: PhotoStudy;
  readonly others: readonly PhotoStudy[];
}

/** What the marks in a picture say of camera and posture. */
// biome-ignore lint/correctness/useYield: it is over in one step
export function* readingOfPicture(
  { fit, study, others }: PictureQuestion,
  _: JobTools<never>,
): Generator<never, ReadPicture, void> {
  return readPicture(fit, study, others);
}
