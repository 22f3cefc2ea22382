import { describe, expect, it } from 'vitest';
import { BANDS } from '../../../core/evaluation/bands.ts';
import { LIMITS, NEUTRAL, STROKE_POSTURE } from '../../../core/posture/neutral-posture.ts';

const deg = (r: number) => (r * 180) / Math.PI;

describe('the neutral posture', () => {
  it.each(['frontKnee', 'kneelingHip', 'frontHip', 'trunkPitch', 'trunkRoll'] as const)(
    '%s lies inside its band: a body with every joint at ease is found fault with nowhere',
    (name) => {
      const { min, max } = BANDS.find((b) => b.quantity === name)!;
      expect(NEUTRAL[name].at).toBeGreaterThan(min ?? Number.NEGATIVE_INFINITY);
      expect(NEUTRAL[name].at).toBeLessThan(max ?? Number.POSITIVE_INFINITY);
    },
  );

  it('lies inside the limits of anatomy', () => {
    expect(NEUTRAL.kneelingHip.at).toBeLessThan(LIMITS.kneelingHipMost);
    expect(NEUTRAL.frontHip.at).toBeGreaterThan(LIMITS.frontHipLeast);
    expect(NEUTRAL.frontKnee.at).toBeGreaterThan(LIMITS.frontKneeLeast);
    expect(Math.abs(NEUTRAL.trunkPitch.at)).toBeLessThan(LIMITS.trunkPitchMost);
  });

  it('has a source beside every value', () => {
    for (const { source } of Object.values(NEUTRAL)) expect(source.length).toBeGreaterThan(10);
  });
});

describe('the stroke', () => {
  it('reaches as far forward at the catch as young canoeists’ pelves do: 37.6 ± 6.3° (López-Miñarro et al. 2011)', () => {
    expect(Math.abs(deg(STROKE_POSTURE.catchPitch) - 37.6)).toBeLessThan(6.3);
  });

  it('has come back at the exit near the ready’s 15.2 ± 4.3° (same source)', () => {
    expect(Math.abs(deg(STROKE_POSTURE.exitPitch) - 15.2)).toBeLessThan(4.3);
    expect(Math.abs(deg(NEUTRAL.trunkPitch.at) - 15.2)).toBeLessThan(4.3);
  });
});
