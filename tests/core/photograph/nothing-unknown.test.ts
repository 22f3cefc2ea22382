import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { measuredFit } from '../../../core/photograph/measured-fit.ts';
import { postureFromMarks } from '../../../core/photograph/posture-from-marks.ts';
import type { PostureView } from '../../../core/photograph/posture-problem.ts';
import { solveCamera } from '../../../core/photograph/solve-camera.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import { cases } from '../../cases.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import {
  drawnStance,
  IMAGE,
  markedBoat,
  markedJoints,
  randomCamera,
  type Seeded,
  seeded,
} from './synthetic-picture.ts';

/** A person of any size and side, on fittings that grow with the person. */
function anybody(random: Seeded) {
  const side = random.uniform() < 0.5 ? 'left' : 'right';
  const sex = random.uniform() < 0.5 ? 'female' : 'male';
  const statureM = random.between(1.5, 1.95);
  const massKg = random.between(19, 25) * statureM ** 2;
  const seat = exampleSeat({ side, athlete: exampleAthlete({ sex, side, statureM, massKg }) });
  const share = statureM / 1.8;
  return exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: seat.kneePad.aftM * share },
      rearRest: { ...seat.rearRest, aftM: seat.rearRest.aftM * share },
      frontFoot: { ...seat.frontFoot, forwardM: seat.frontFoot.forwardM * share },
    },
  ]);
}

/** A picture of the stance by a camera that had to be solved, with noise in every mark. */
function pictured(stance: Stance, rear: boolean, random: Seeded): PostureView {
  for (;;) {
    const camera = randomCamera(random, { oblique: 15, rear });
    const points = markedBoat(camera, random);
    const marks = markedJoints(camera, stance, random);
    if (points.length < 6 || Object.keys(marks).length < 10) continue;
    const solved = solveCamera({ points, image: IMAGE });
    if (solved.kind === 'solved') return { camera: solved.camera, marks };
  }
}

describe('a person photographed from the side and from behind', () => {
  it('leaves no finding unknown, whoever it is', () => {
    const random = seeded(99);
    for (let i = 0; i < cases(1, 60); i++) {
      const fit = anybody(random);
      const stance = drawnStance(fit, 'ready', random);
      const side = pictured(stance, false, random);
      const rear = pictured(stance, true, random);
      const input = { fit, seat: 0, phase: 'ready' as const, jointSdM: 0.01 };
      const posture = postureFromMarks({ ...input, ...side, others: [rear] });
      if (posture.kind !== 'measured') throw new Error(posture.kind);
      expect(evaluateFit(fit).unknowns.length).toBeGreaterThan(0);
      const { unknowns } = evaluateFit(measuredFit(fit, { seat: 0, phase: 'ready', posture }));
      expect(unknowns.map(({ id }) => id)).toEqual([]);
    }
  });
});
