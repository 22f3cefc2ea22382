import type { Fit } from '../../../core/document/fit-schema.ts';
import { type BoatState, boatState } from '../../../core/evaluation/boat-state.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import type { Phase } from '../../../core/posture/stance.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import type { StrokeView } from '../../document/bench-view.ts';
import { pictureOf } from './picture.ts';
import type { Picture } from './scene.ts';

/** Pictures of a fit at instants of the stroke. Keeps the boat while it is the same. */
export interface StrokePictures {
  /** The fit where the stroke's slider stands. */
  at(state: { fit: Fit; report: Report }, view: StrokeView, hull: Hull): Picture;
  /** Everybody at the catch or the exit, on the boat as it lies when ready. */
  outlined(picture: Picture, phase: Phase): Picture;
}

export function strokePictures(): StrokePictures {
  let kept: { key: Pick<Fit, 'boat' | 'water' | 'heelDeg'>; state: BoatState } | null = null;

  function boatOf(fit: Fit, hull: Hull): BoatState {
    const same =
      kept?.key.boat === fit.boat && kept.key.water === fit.water && kept.key.heelDeg === fit.heelDeg;
    if (!kept || !same) kept = { key: fit, state: boatState(fit, hull) };
    return kept.state;
  }

  return {
    at({ fit, report }, { at }, hull) {
      if (at <= 0) return pictureOf(fit, report);
      const row = strokeRow(strokeOfFit(fit, report, boatOf(fit, hull)), at);
      return pictureOf(fit, reportAt(fit, report, row));
    },
    outlined({ fit, report }, phase) {
      const seats = report.seats.map(
        (seat) => seat && { ...seat, stances: { ...seat.stances, ready: seat.stances[phase] } },
      );
      return pictureOf(fit, { ...report, seats });
    },
  };
}
