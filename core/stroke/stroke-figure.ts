import type { SeatInput, SeatState } from '../evaluation/seat-state.ts';
import { midDrive } from '../paddle/mid-drive.ts';
import { solveStance } from '../posture/solve-stance.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import { toDegrees } from '../units/angle.ts';
import { blendStances } from './blend-stances.ts';
import { clearBlade } from './clear-blade.ts';

/** The three legs of a stroke: from ready to the catch, the drive to the exit, and back to ready. */
export const STROKE_LEGS = [
  { from: 'ready', to: 'catch' },
  { from: 'catch', to: 'exit' },
  { from: 'exit', to: 'ready' },
] as const satisfies readonly { from: Phase; to: Phase }[];

/**
 * The figure a share (0–1) of the way along one leg: the trunk pitches evenly from one instant's angle to the other's, in the
 * drive through that of its middle, which the paddle's length is found at (`midDrive`), the
 * legs and hips are solved at that pitch, and hands and shoulders go from one hold to the other; outside the drive the blade is
 * carried clear of the water. The ends are the solved
 * stances themselves, so that a slider is smooth and agrees with them.
 */
export function strokeFigure(state: SeatState, leg: { from: Phase; to: Phase }, share: number): Stance {
  const { stances } = state;
  if (share <= 0) return stances[leg.from];
  if (share >= 1) return stances[leg.to];
  const pitch = pitchAt(state, leg, share);
  const between = blendStances(solvedAt(state, leg.from, pitch), solvedAt(state, leg.to, pitch), share);
  return leg.from === 'catch' ? between : clearBlade(between, share);
}

/** The trunk's pitch, radians: a parabola through catch, middle and exit in the drive, evenly from one to the other elsewhere. */
function pitchAt(state: SeatState, { from, to }: { from: Phase; to: Phase }, share: number): number {
  const { stances } = state;
  const [first, last] = [stances[from].angles.trunkPitch, stances[to].angles.trunkPitch];
  const even = first + share * (last - first);
  if (from !== 'catch') return even;
  const { trunkPitch } = midDrive(state);
  return even + 4 * share * (1 - share) * (trunkPitch - (first + last) / 2);
}

/** One phase's hold with the trunk pinned at a pitch, radians. */
function solvedAt({ seat, body, frame }: SeatInput, phase: Phase, pitch: number): Stance {
  const trunkPitchDeg = toDegrees(pitch);
  const pinned = {
    ...seat,
    pins: { ...seat.pins, trunkPitchDeg },
    stroke: { ...seat.stroke, catchPitchDeg: trunkPitchDeg, exitPitchDeg: trunkPitchDeg },
  };
  return solveStance({ seat: pinned, body, frame, phase });
}
