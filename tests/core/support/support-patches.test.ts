import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { supportPatches } from '../../../core/support/support-patches.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { frame } from '../posture/plausible.ts';

const seat = exampleSeat();
const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const stance = solveStance({ body, seat, frame });
const { kneelingAnkle, rearBall } = stance.points;

/** The patch of the toes with the ankle this far (metres, plan) from standing straight over them. */
const toesWith = (x: number, y: number) =>
  supportPatches(
    {
      ...stance,
      points: { ...stance.points, kneelingAnkle: { ...kneelingAnkle, x: rearBall.x + x, y: rearBall.y + y } },
    },
    seat,
  ).rearFoot;

describe('the patch of the toes', () => {
  it('lies across the lower leg, 7 cm broad', () => {
    const [a, b] = supportPatches(stance, seat).rearFoot;
    expect(Math.hypot(a!.x - b!.x, a!.y - b!.y)).toBeCloseTo(0.07, 9);
    const { kneelingKnee } = stance.points;
    const along =
      (a!.x - b!.x) * (kneelingKnee.x - rearBall.x) + (a!.y - b!.y) * (kneelingKnee.y - rearBall.y);
    expect(along).toBeCloseTo(0, 9);
  });

  it('does not turn with an ankle that stands over the toes, whichever way it leans by a millimetre', () => {
    const upright = toesWith(0, 0);
    for (const [x, y] of [
      [0.001, 0],
      [0, 0.001],
      [-0.001, -0.001],
    ] as const)
      expect(toesWith(x, y)).toEqual(upright);
  });
});

describe('the patch of the knee', () => {
  it.each([
    ['flat and hard', 7, { recessDepthM: 0, foamGiveM: 0 }],
    ['deep', 10, { recessDepthM: 0.05, foamGiveM: 0.01 }],
  ])('on a %s pad is %i cm across: 7 to 10 cm, our own estimate', (_, across, pad) => {
    const { knee } = supportPatches(stance, { ...seat, kneePad: { ...seat.kneePad, ...pad } });
    const xs = knee.map(({ x }) => x);
    expect(100 * (Math.max(...xs) - Math.min(...xs))).toBeCloseTo(across, 9);
  });
});
