import type { Pins, Seat } from '../fit/seat-schema.ts';
import type { Finding } from './finding.ts';

/** Where a camera sees an angle of the trunk straight on: from behind the boat, or from beside it. */
export type Camera = 'behind' | 'beside';

/** Angles whose doubt is how this athlete holds the back: no tape narrows it, only looking. */
const SEEN_FROM: Readonly<Record<string, { readonly camera: Camera; readonly pin: keyof Pins }>> = {
  trunkRoll: { camera: 'behind', pin: 'trunkRollDeg' },
  trunkPitch: { camera: 'beside', pin: 'trunkPitchDeg' },
};

/**
 * Where a photograph would tell more of a finding's value than the model does: the trunk's angles, while the seat has none
 * held as measured; undefined for every other finding and where nothing is in doubt.
 */
export function cameraFor(
  { quantity, severity }: Pick<Finding, 'quantity' | 'severity'>,
  { pins }: Pick<Seat, 'pins'>,
): Camera | undefined {
  const seen = SEEN_FROM[quantity];
  if (!seen || severity === 'good') return undefined;
  return pins[seen.pin] === undefined ? seen.camera : undefined;
}

/** What to do about a doubt that a photograph from there would narrow; one sentence for the coach. */
export const CAMERA_SENTENCES: Readonly<Record<Camera, string>> = {
  behind: 'A photograph from straight behind tells more: hold the lean at what it shows.',
  beside: 'A photograph from straight beside tells more: hold the trunk at what it shows.',
};
