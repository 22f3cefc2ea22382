import { describe, expect, it } from 'vitest';
import { clearDifferences } from '../../../core/photograph/clear-differences.ts';
import { markGuide } from '../../../core/photograph/mark-guide.ts';
import { type PhotoStudy, photoStudySchema } from '../../../core/photograph/photo-study-schema.ts';
import { seenStroke, withSeenRate } from '../../../core/photograph/seen-stroke.ts';
import { STANCE_ANGLES, type StanceAngle } from '../../../core/posture/stance.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

function study(moment: PhotoStudy['moment'], pitch: number, more: object = {}): PhotoStudy {
  return photoStudySchema.parse({
    seat: 0,
    moment,
    image: { width: 100, height: 100 },
    confirmed: true,
    result: { angles: { trunkPitch: { value: pitch, sd: 0.03 } }, topHandOver: { value: 0.3, sd: 0.02 } },
    ...more,
  });
}

describe('the stroke from applied pictures', () => {
  it('has the trunk’s range from catch to exit, and the top hand of the drive', () => {
    const seen = seenStroke(
      [study('catch', 0.9), study('catch', 0.7), study('exit', 0.2), study('drive', 0.4)],
      0,
    );
    expect(seen.trunkRange!.value).toBeCloseTo(0.5, 12);
    expect(seen.trunkRange!.sd).toBeCloseTo(0.03 * Math.SQRT2, 12);
    expect(seen.topHandOver).toEqual({ value: 0.3, sd: 0.02 });
  });

  it('counts nothing that was not applied, or is of another seat', () => {
    const studies = [
      study('catch', 0.7, { confirmed: false }),
      study('exit', 0.2),
      study('drive', 0, { seat: 1 }),
    ];
    expect(seenStroke(studies, 0)).toEqual({ trunkRange: null, topHandOver: null });
  });

  it('sets the rate of the whole crew', () => {
    const pair = withSeenRate(exampleFit([exampleSeat(), exampleSeat()]), { perMin: 66.4 });
    expect(pair.seats.map(({ stroke }) => stroke.ratePerMin)).toEqual([66, 66]);
  });
});

describe('differences from the plan', () => {
  const all = (value: number) =>
    Object.fromEntries(STANCE_ANGLES.map((name) => [name, value])) as Record<StanceAngle, number>;

  it('are told where they are clear, the largest first', () => {
    const seen = { ...all(0), trunkPitch: 0.1, frontKnee: -0.3, thighRoll: 0.02, trunkRoll: 0.2 };
    const sd = { ...all(0.01), trunkRoll: 0.15 };
    expect(clearDifferences(all(0), seen, sd).map(({ angle, by }) => [angle, by])).toEqual([
      ['frontKnee', -0.3],
      ['trunkPitch', 0.1],
    ]);
  });
});

describe('the guide to the marks', () => {
  it('has every joint in its window, and none where nobody kneels', () => {
    const { joints, boat, window } = markGuide(exampleFit(), 0, 'side')!;
    for (const [right, up] of [joints.kneelingKnee, joints.headTop, joints.topHand, boat.padForePort]) {
      expect(right).toBeGreaterThan(window.from[0]);
      expect(right).toBeLessThan(window.from[0] + window.width);
      expect(up).toBeGreaterThan(window.from[1]);
      expect(up).toBeLessThan(window.from[1] + window.height);
    }
    expect(markGuide(exampleFit([{ ...exampleSeat(), athlete: null }]), 0, 'side')).toBeNull();
  });
});
