import type { Fit } from '../document/fit-schema.ts';
import { DEFAULT_RATE_PER_MIN } from '../document/stroke-defaults.ts';
import type { Report } from '../evaluation/report.ts';
import { strokeAt } from '../stroke/stroke-clock.ts';
import { strokeRow } from '../stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../stroke/stroke-of-fit.ts';
import { type ShowScene, showScene } from './show-scene.ts';

/** One stroke of a seat at the athlete's own rate, as scenes at even times from ready on. */
export interface StrokeScenes {
  readonly scenes: readonly ShowScene[];
  /** Seconds. */
  readonly period: number;
}

/** So many scenes of a seat through one stroke; null when the seat does not exist or is empty. */
export function strokeScenes(
  { fit, report }: { fit: Fit; report: Report },
  index: number,
  count: number,
): StrokeScenes | null {
  if (!fit.seats[index]?.athlete || !report.seats[index]) return null;
  const rate = fit.seats[index].stroke.ratePerMin ?? DEFAULT_RATE_PER_MIN;
  const period = 60 / rate;
  const crew = strokeOfFit(fit, report);
  const scenes = Array.from({ length: count }, (_, k) => {
    const at = strokeAt((period * k) / count, rate);
    return showScene(fit, reportAt(fit, report, strokeRow(crew, at)), index)!;
  });
  return { scenes, period };
}
