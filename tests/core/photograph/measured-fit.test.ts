import { describe, expect, it } from 'vitest';
import { fitSchema } from '../../../core/document/fit-schema.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { axesOf, type Camera } from '../../../core/photograph/camera.ts';
import { measuredFit } from '../../../core/photograph/measured-fit.ts';
import { postureFromMarks, type SeenPosture } from '../../../core/photograph/posture-from-marks.ts';
import { exampleFit } from '../example/example-fit.ts';
import { drawnStance, IMAGE, markedJoints, seeded } from './synthetic-picture.ts';

const beside: Camera = {
  ...axesOf({ azimuth: Math.PI / 2, pitch: -0.05, roll: 0 }),
  position: { x: 0, y: -6, z: 0.9 },
  focalPx: 6000,
  radial: 0,
  centre: { u: 2000, v: 1500 },
  image: IMAGE,
};
const behind: Camera = {
  ...beside,
  ...axesOf({ azimuth: 0, pitch: -0.05, roll: 0 }),
  position: { x: -6, y: 0, z: 0.9 },
};
const fit = exampleFit();
const random = seeded(21);
const stance = drawnStance(fit, 'ready', random);

function seen(phase: 'ready' | 'catch' | 'drive', person = stance, rear = true): SeenPosture {
  const result = postureFromMarks({
    fit,
    seat: 0,
    phase,
    camera: beside,
    marks: markedJoints(beside, person, random),
    ...(rear && { others: [{ camera: behind, marks: markedJoints(behind, person, random) }] }),
    jointSdM: 0.01,
  });
  if (result.kind !== 'measured') throw new Error(result.kind);
  return result;
}

const spreadsOf = (report: ReturnType<typeof evaluateFit>) =>
  new Map(report.quantities.map(({ id, seat, sd }) => [`${id}@${seat}`, sd]));

describe('a seen posture as measurements of a fit', () => {
  const taken = measuredFit(fit, { seat: 0, phase: 'ready', posture: seen('ready'), takenOn: '2026-11-24' });

  it('leaves nothing unknown once side and rear are marked', () => {
    expect(evaluateFit(fit).unknowns.length).toBeGreaterThan(0);
    const { unknowns, findings } = evaluateFit(taken);
    expect(unknowns).toEqual([]);
    expect(findings.filter(({ severity }) => severity === 'unknown')).toEqual([]);
  });

  it('holds the figure where it was seen, and widens nothing', () => {
    const before = spreadsOf(evaluateFit(fit));
    const report = evaluateFit(taken);
    for (const [name, sd] of spreadsOf(report)) {
      const was = before.get(name);
      // Angles measured elsewhere change the figure, and slopes with it: a twentieth is allowed for.
      if (sd !== null && was) expect(sd, name).toBeLessThan(1.05 * was + 1e-9);
    }
    const { ready } = report.seats[0]!.stances;
    expect(ready.angles.trunkPitch).toBeCloseTo(stance.angles.trunkPitch, 1);
    expect(ready.angles.trunkRoll).toBeCloseTo(stance.angles.trunkRoll, 1);
  });

  it('keeps each angle within its own limits in the document', () => {
    const posture = seen('ready');
    const rad = Math.PI / 180;
    const steep = {
      ...posture,
      angles: { ...posture.angles, trunkRoll: 70 * rad, thighPitch: -70 * rad },
      measuredSd: { ...posture.measuredSd, trunkRoll: rad, thighPitch: rad },
    };
    const held = measuredFit(fit, { seat: 0, phase: 'ready', posture: steep });
    expect(fitSchema.safeParse(held).success).toBe(true);
    expect(held.seats[0]!.pins).toMatchObject({ trunkRollDeg: 60, thighPitchDeg: -70 });
  });

  it('narrows trim, loads and joints at once, and the paddle with a picture of the drive', () => {
    const before = spreadsOf(evaluateFit(fit));
    const after = spreadsOf(evaluateFit(taken));
    // At most this share of the spread is left: a good deal less of what the posture rules, less of what mass and hull rule.
    const left = {
      trunkPitch: 0.5,
      kneelingHip: 0.5,
      trimAngle: 0.9,
      trimCatch: 0.9,
      frontLoad: 0.8,
      rearLoad: 0.95,
    };
    for (const [name, share] of Object.entries(left)) {
      const key = [...before.keys()].find((id) => id.startsWith(`${name}@`))!;
      expect(after.get(key)!, name).toBeLessThan(share * before.get(key)!);
    }
    const person = drawnStance(fit, 'catch', random);
    const driven = measuredFit(fit, { seat: 0, phase: 'drive', posture: seen('drive', person, false) });
    const paddle = (report: typeof before) => report.get('paddleByStance@0')!;
    expect(paddle(spreadsOf(evaluateFit(driven)))).toBeLessThan(0.9 * paddle(before));
  });

  it('is a sound document, dated, each reading with its own spread', () => {
    const again = fitSchema.parse(taken);
    expect(again).toEqual(taken);
    const reading = again.seats[0]!.pinReadings!.trunkPitchDeg!;
    expect(reading.takenOn).toBe('2026-11-24');
    expect(reading.atDeg).toBe(again.seats[0]!.pins.trunkPitchDeg);
    expect(reading.sdDeg).toBeGreaterThanOrEqual(1);
    expect(reading.sdDeg).toBeLessThan(3);
  });

  it('counts a pin that was moved by hand since as no reading', () => {
    const loose = { atDeg: 10, sdDeg: 6 };
    const seat = { ...fit.seats[0]!, pins: { trunkPitchDeg: 10 }, pinReadings: { trunkPitchDeg: loose } };
    const moved = { ...seat, pins: { trunkPitchDeg: 11 } };
    const sd = (s: typeof seat) => spreadsOf(evaluateFit({ ...fit, seats: [s] })).get('trunkPitch@0')!;
    expect(sd(seat)).toBeGreaterThan(1.5 * sd(moved));
  });

  it('takes trunk and shoulders of the catch, and the top hand of the drive, into the stroke', () => {
    const person = drawnStance(fit, 'catch', random);
    const caught = measuredFit(fit, { seat: 0, phase: 'catch', posture: seen('catch', person) });
    const { catchPitchDeg, catchRotationDeg } = caught.seats[0]!.stroke;
    expect(catchPitchDeg).toBeCloseTo(38, -1);
    expect(catchRotationDeg).toBeCloseTo(35, -1);
    const driven = measuredFit(fit, { seat: 0, phase: 'drive', posture: seen('drive', person, false) });
    expect(driven.seats[0]!.stroke.topHandOverM).toBeGreaterThan(0.1);
    expect(fitSchema.parse(driven)).toEqual(driven);
  });
});
