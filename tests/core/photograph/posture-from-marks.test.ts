import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { NEUTRAL_TERMS } from '../../../core/document/neutral-schema.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { axesOf, type Camera, projectPoint } from '../../../core/photograph/camera.ts';
import { type PostureResult, postureFromMarks } from '../../../core/photograph/posture-from-marks.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { type FigurePoint, STANCE_UNKNOWNS, type Stance } from '../../../core/posture/stance.ts';
import { cases } from '../../cases.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import {
  drawnStance,
  IMAGE,
  JOINTS,
  type Marks,
  markedJoints,
  seeded,
  UNCHECKED,
} from './synthetic-picture.ts';

const camera: Camera = {
  ...axesOf({ azimuth: Math.PI / 2, pitch: -0.05, roll: 0 }),
  position: { x: 0, y: -6, z: 0.9 },
  focalPx: 6000,
  radial: 0,
  centre: { u: 2000, v: 1500 },
  image: IMAGE,
};
const behind: Camera = {
  ...camera,
  ...axesOf({ azimuth: 0, pitch: -0.05, roll: 0 }),
  position: { x: -6, y: 0, z: 0.9 },
};

const marksOf = (stance: Stance, by: Camera = camera): Marks =>
  Object.fromEntries(JOINTS.map((joint) => [joint, projectPoint(by, stance.points[joint])]));

function measured(result: PostureResult) {
  if (result.kind !== 'measured') throw new Error(`not measured: ${result.kind}`);
  return result;
}

const fit = exampleFit();
const input = { fit, seat: 0, phase: 'ready' as const, camera };
const degrees = (r: number) => (r * 180) / Math.PI;

describe('a posture from marks', () => {
  it('gives the stance back that the model itself takes', () => {
    const seat = fit.seats[0]!;
    const stance = solveStance({
      body: bodyOfAthlete(seat.athlete!),
      seat,
      frame: seatFrame(fit.boat, seat, 0),
    });
    const seen = measured(postureFromMarks({ ...input, marks: marksOf(stance) }));
    for (const name of STANCE_UNKNOWNS)
      expect(Math.abs(degrees(seen.angles[name] - stance.angles[name]))).toBeLessThan(0.5);
    expect(Math.max(...Object.values(seen.residuals))).toBeLessThan(2);
    expect(seen.bad).toEqual([]);
    expect(seen.contradictions).toEqual([]);
  });

  it('takes nothing that was learnt from earlier pictures: it is the same with an own neutral posture and without', () => {
    const marks = marksOf(drawnStance(fit, 'ready', seeded(3)));
    const [seat] = fit.seats;
    const neutral = {
      learntOn: '2026-05-01',
      pictures: 3,
      strays: Array.from({ length: NEUTRAL_TERMS }, () => 2),
      roots: Array.from({ length: NEUTRAL_TERMS ** 2 }, (_, k) => (k % (NEUTRAL_TERMS + 1) === 0 ? 0.2 : 0)),
      setAside: false,
    };
    const athlete = { ...seat!.athlete!, neutral };
    const learnt = { ...fit, seats: [{ ...seat!, athlete }] };
    const alone = measured(postureFromMarks({ ...input, marks }));
    expect(measured(postureFromMarks({ ...input, fit: learnt, marks })).angles).toEqual(alone.angles);
  });

  it('finds a person who kneels otherwise than the model takes, and is surer of it', () => {
    const seat = exampleSeat({ pins: { trunkPitchDeg: 24, trunkRollDeg: -5, thighPitchDeg: 14 } });
    const stance = solveStance({
      body: bodyOfAthlete(seat.athlete!),
      seat,
      frame: seatFrame(fit.boat, seat, 0),
    });
    const seen = measured(postureFromMarks({ ...input, marks: marksOf(stance) }));
    expect(degrees(seen.angles.trunkPitch)).toBeCloseTo(24, 0);
    expect(degrees(seen.sd.trunkPitch)).toBeLessThan(1);
    expect(degrees(seen.angles.thighPitch)).toBeCloseTo(14, 0);
    expect(seen.measuredSd.trunkPitch).toBeGreaterThanOrEqual(seen.sd.trunkPitch);
  });

  it('is not drawn back to everybody’s posture by the doubt of a far camera', () => {
    // Eleven degrees more upright than everybody is taken to be: two and a half spreads.
    const seat = exampleSeat({ pins: { trunkPitchDeg: 0 } });
    const stance = solveStance({
      body: bodyOfAthlete(seat.athlete!),
      seat,
      frame: seatFrame(fit.boat, seat, 0),
    });
    const random = seeded(31);
    const far = { ...camera, position: { x: 0, y: -14, z: 0.9 }, focalPx: 2700 };
    const drawn = Array.from({ length: cases(3, 60) }, () => {
      const seen = measured(
        postureFromMarks({ ...input, camera: far, marks: markedJoints(far, stance, random) }),
      );
      return (seen.angles.trunkPitch - stance.angles.trunkPitch) / seen.sd.trunkPitch;
    });
    const mean = drawn.reduce((sum, z) => sum + z, 0) / drawn.length;
    // By 0.4 of the stated spread; with the posture's own spreads as they are, by 1.1.
    expect(mean).toBeLessThan(0.7);
  });

  it('is the same for somebody on the other side, seen from the other side', () => {
    const seat = exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) });
    const mirrored = exampleFit([seat]);
    const stance = drawnStance(fit, 'ready', seeded(3));
    const marks = marksOf(stance);
    const seen = measured(postureFromMarks({ ...input, marks }));
    const opposite: Camera = {
      ...camera,
      position: { ...camera.position, y: -camera.position.y },
      ...axesOf({ azimuth: -Math.PI / 2, pitch: -0.05, roll: 0 }),
    };
    const flipped = Object.fromEntries(
      Object.entries(marks).map(([joint, { u, v }]) => [joint, { u: IMAGE.width - u, v }]),
    );
    const other = measured(postureFromMarks({ ...input, fit: mirrored, camera: opposite, marks: flipped }));
    for (const name of STANCE_UNKNOWNS) expect(other.angles[name]).toBeCloseTo(seen.angles[name], 5);
  });

  it('leaves a bad mark out and names it', () => {
    const stance = drawnStance(fit, 'ready', seeded(5));
    const marks = marksOf(stance);
    const off = { ...marks, midShoulder: { u: marks.midShoulder!.u + 150, v: marks.midShoulder!.v } };
    const seen = measured(postureFromMarks({ ...input, marks: off }));
    expect(seen.bad.map(({ joint }) => joint)).toEqual(['midShoulder']);
    expect(seen.bad[0]!.px).toBeGreaterThan(120);
    expect(degrees(Math.abs(seen.angles.trunkPitch - stance.angles.trunkPitch))).toBeLessThan(1);
  });

  it('names what disagrees where more marks do than may be left out, and the doubt is large', () => {
    const marks = marksOf(drawnStance(fit, 'ready', seeded(5)));
    const agreed = measured(postureFromMarks({ ...input, marks }));
    expect(agreed.unsettled).toEqual([]);
    // Somebody took one leg for the other: six marks of seventeen.
    const legs = { ...marks };
    for (const [front, rear] of [
      ['frontHip', 'kneelingHip'],
      ['frontKnee', 'kneelingKnee'],
      ['frontAnkle', 'kneelingAnkle'],
      ['frontToe', 'rearBall'],
    ] as const)
      [legs[front], legs[rear]] = [marks[rear], marks[front]];
    const swapped = measured(postureFromMarks({ ...input, marks: legs }));
    expect(swapped.unsettled.length).toBeGreaterThan(0);
    expect(swapped.unsettled.every(({ joint }) => swapped.bad.every((bad) => bad.joint !== joint))).toBe(
      true,
    );
    expect(swapped.sd.thighPitch).toBeGreaterThan(3 * agreed.sd.thighPitch);
    // Of three marks none is left out, for two tell too little; the one that is off is named.
    const { midShoulder, frontKnee, kneelingHip } = marks;
    const few = { frontKnee: frontKnee!, kneelingHip: kneelingHip! };
    const three = measured(
      postureFromMarks({
        ...input,
        marks: { ...few, midShoulder: { u: midShoulder!.u, v: midShoulder!.v + 900 } },
      }),
    );
    expect(three.bad).toEqual([]);
    expect(three.unsettled.map(({ joint }) => joint)).toContain('midShoulder');
  });

  it('tells a thigh 12 % longer than taped, and does not blame a mark for it', () => {
    const tape = {
      kneeToHipLength: { valueM: 0.47, sdM: 0.003 },
      buttockKneeLength: { valueM: 0.61, sdM: 0.003 },
    };
    const taped = exampleSeat({ athlete: exampleAthlete({ tape }) });
    const own = exampleFit([taped]);
    const body = bodyOfAthlete(taped.athlete!);
    const thigh = { ...body.lengths.thigh, value: body.lengths.thigh.value * 1.12 };
    const long = { ...body, lengths: { ...body.lengths, thigh } };
    const stance = solveStance({ body: long, seat: taped, frame: seatFrame(own.boat, taped, 0) });
    const seen = measured(postureFromMarks({ ...input, fit: own, marks: marksOf(stance) }));
    const told = seen.contradictions.find(({ length }) => length === 'thigh');
    expect(told?.share).toBeGreaterThan(0.08);
    expect(told?.share).toBeLessThan(0.16);
    expect(seen.bad).toEqual([]);
  });

  it('joins two pictures of one moment: what neither shows alone is seen', () => {
    const stance = drawnStance(fit, 'ready', seeded(8));
    const side = measured(postureFromMarks({ ...input, marks: marksOf(stance) }));
    const rear = measured(postureFromMarks({ ...input, camera: behind, marks: marksOf(stance, behind) }));
    const both = measured(
      postureFromMarks({
        ...input,
        marks: marksOf(stance),
        others: [{ camera: behind, marks: marksOf(stance, behind) }],
      }),
    );
    for (const name of STANCE_UNKNOWNS) {
      expect(both.sd[name]).toBeLessThanOrEqual(1.0001 * Math.min(side.sd[name], rear.sd[name]));
      expect(Math.abs(both.angles[name] - stance.angles[name])).toBeLessThan(3 * both.sd[name] + 1e-3);
    }
    expect(degrees(both.sd.trunkRoll)).toBeLessThan(1);
    expect(degrees(both.sd.trunkPitch)).toBeLessThan(1);
  });

  it('reads trunk, top hand and shoulders at the catch', () => {
    const own = exampleFit([exampleSeat({ stroke: { catchPitchDeg: 46, catchRotationDeg: 28 } })]);
    const seat = own.seats[0]!;
    const stance = solveStance({
      body: bodyOfAthlete(seat.athlete!),
      seat,
      frame: seatFrame(own.boat, seat, 0),
      phase: 'catch',
    });
    const seen = measured(postureFromMarks({ ...input, phase: 'catch', marks: marksOf(stance) }));
    expect(degrees(seen.angles.trunkPitch)).toBeCloseTo(46, 0);
    expect(Math.abs(degrees(seen.shoulderTurn.value) - 28)).toBeLessThan(4);
    const { topHand, midShoulder } = stance.points;
    expect(Math.abs(seen.topHandOver.value - (topHand.z - midShoulder.z))).toBeLessThan(0.01);
  });

  it('widens with the doubt of the camera and of the joints under the marks', () => {
    const stance = drawnStance(fit, 'ready', seeded(9));
    const marks = marksOf(stance);
    const exact = measured(postureFromMarks({ ...input, marks }));
    const felt = measured(postureFromMarks({ ...input, marks, jointSdM: 0.01 }));
    const covariance = Array.from({ length: 8 }, (_, i) =>
      Array.from({ length: 8 }, (_, j) =>
        i === j ? [4e-4, 4e-4, 4e-4, 0.01, 0.01, 0.01, 1e-3, 1e-6][i]! : 0,
      ),
    );
    const loose = measured(postureFromMarks({ ...input, camera: { ...camera, covariance }, marks }));
    expect(felt.sd.trunkPitch).toBeGreaterThan(1.2 * exact.sd.trunkPitch);
    expect(loose.sd.trunkPitch).toBeGreaterThan(1.2 * exact.sd.trunkPitch);
  });

  it('is in much more doubt where one shoulder mark alone shows the trunk: nothing else would tell that it is bad', () => {
    const marks = marksOf(drawnStance(fit, 'ready', seeded(11)));
    const sdOf = (joints: readonly FigurePoint[]) => {
      const only = Object.fromEntries(joints.map((joint) => [joint, marks[joint]]));
      return measured(postureFromMarks({ ...input, marks: only })).sd.trunkPitch;
    };
    const checked = sdOf([...UNCHECKED, 'lowerShoulder', 'topShoulder', 'headTop']);
    expect(sdOf(UNCHECKED)).toBeGreaterThan(2.5 * checked);
  });

  it('says why there is none', () => {
    const empty = exampleFit([{ ...exampleSeat(), athlete: null }]);
    const midHip = { u: 1, v: 1 };
    expect(postureFromMarks({ ...input, fit: empty, marks: { midHip } })).toEqual({ kind: 'emptySeat' });
    expect(postureFromMarks({ ...input, marks: { midHip } })).toEqual({
      kind: 'tooFew',
      marks: 1,
      needed: 3,
    });
    const marks = { midHip: { u: Number.NaN, v: 0 }, frontKnee: midHip, headTop: midHip };
    expect(postureFromMarks({ ...input, marks })).toEqual({ kind: 'invalid' });
  });
});
