import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import type { Phase } from '../../../core/posture/stance.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { pictureOf } from './picture.ts';
import type { Picture } from './scene.ts';

/** The fit where the stroke's slider stands: `at` counts legs of the cycle from the ready stance. */
export function strokePicture({ fit, report }: { fit: Fit; report: Report }, at: number): Picture {
  if (at <= 0) return pictureOf(fit, report);
  return pictureOf(fit, reportAt(fit, report, strokeRow(strokeOfFit(fit, report), at)));
}

/** Everybody at the catch or the exit, on the boat as it lies when ready. */
export function phasePicture({ fit, report }: Picture, phase: Phase): Picture {
  const seats = report.seats.map(
    (seat) => seat && { ...seat, stances: { ...seat.stances, ready: seat.stances[phase] } },
  );
  return pictureOf(fit, { ...report, seats });
}
