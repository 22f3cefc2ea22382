import type { Fit } from '../document/fit-schema.ts';
import { strokeSchema } from '../document/seat-schema.ts';
import type { PhotoStudy } from './photo-study-schema.ts';
import type { SeenMoment } from './seen-moment.ts';
import type { SeenRate } from './stroke-rate.ts';

/** A value and its standard deviation: radians or metres. */
export interface SeenValue {
  /** As the picture shows it. */
  readonly value: number;
  /** One standard deviation, same unit. */
  readonly sd: number;
}

/** What the applied pictures of one seat tell of the stroke. Null where the pictures for it are missing. */
export interface SeenStroke {
  /** How far the trunk comes up from the catch to the exit, radians. */
  readonly trunkRange: SeenValue | null;
  /** Top hand over mid-shoulder with the shaft upright, metres. */
  readonly topHandOver: SeenValue | null;
}

/** The stroke as the newest applied pictures of its instants show it; `studies` from the oldest to the newest. */
export function seenStroke(studies: readonly PhotoStudy[], seat: number): SeenStroke {
  const resultOf = (moment: SeenMoment) =>
    studies.findLast((study) => study.seat === seat && study.moment === moment && study.confirmed)?.result;
  const first = resultOf('catch')?.angles.trunkPitch;
  const last = resultOf('exit')?.angles.trunkPitch;
  return {
    trunkRange: first && last ? { value: first.value - last.value, sd: Math.hypot(first.sd, last.sd) } : null,
    topHandOver: resultOf('drive')?.topHandOver ?? null,
  };
}

/** The fit with a rate that was seen, strokes per minute: the whole crew's, for it paddles together. */
export function withSeenRate(fit: Fit, { perMin }: Pick<SeenRate, 'perMin'>): Fit {
  const { minValue, maxValue } = strokeSchema.shape.ratePerMin.unwrap();
  const ratePerMin = Math.min(maxValue!, Math.max(minValue!, Math.round(perMin)));
  return { ...fit, seats: fit.seats.map((seat) => ({ ...seat, stroke: { ...seat.stroke, ratePerMin } })) };
}
