import { describe, expect, it } from 'vitest';
import { jointsFromLandmarks, type Landmark } from '../../../core/photograph/joints-from-landmarks.ts';

/** Thirty-three landmarks, number i at (10 i, i). */
const landmarks: Landmark[] = Array.from({ length: 33 }, (_, i) => ({ u: 10 * i, v: i, visibility: 0.9 }));
const at = (joints: ReturnType<typeof jointsFromLandmarks>, name: string) =>
  joints.find(({ joint }) => joint === name)?.pixel;

describe('joints from the landmarks of a pose model', () => {
  it('are those of the kneeling and the paddling side', () => {
    const left = jointsFromLandmarks(landmarks, { side: 'left' });
    // BlazePose: 25 left knee, 26 right knee, 15 wrist, 19 left index finger.
    expect(at(left, 'kneelingKnee')).toEqual({ u: 250, v: 25 });
    expect(at(left, 'frontKnee')).toEqual({ u: 260, v: 26 });
    expect(at(left, 'lowerHand')).toEqual({ u: 190, v: 19 });
    const right = jointsFromLandmarks(landmarks, { side: 'right' });
    expect(at(right, 'kneelingKnee')).toEqual({ u: 260, v: 26 });
    const crossed = jointsFromLandmarks(landmarks, { side: 'right', kneels: 'left' });
    expect(at(crossed, 'kneelingKnee')).toEqual({ u: 250, v: 25 });
    expect(at(crossed, 'lowerHand')).toEqual({ u: 200, v: 20 });
    expect(at(left, 'midShoulder')).toEqual({ u: 115, v: 11.5 });
  });

  it('change sides where the plan’s figure lies the other way round', () => {
    const plan = { kneelingKnee: { u: 260, v: 26 }, frontKnee: { u: 250, v: 25 } };
    const joints = jointsFromLandmarks(landmarks, { side: 'left' }, plan);
    expect(at(joints, 'kneelingKnee')).toEqual({ u: 260, v: 26 });
    expect(at(joints, 'lowerHand')).toEqual({ u: 190, v: 19 });
  });

  it('leave out what the model is unsure of, and everything where it found nobody', () => {
    const hidden = landmarks.map((one, i) => (i === 25 ? { ...one, visibility: 0.1 } : one));
    expect(at(jointsFromLandmarks(hidden, { side: 'left' }), 'kneelingKnee')).toBeUndefined();
    expect(jointsFromLandmarks([], { side: 'left' })).toEqual([]);
  });
});
