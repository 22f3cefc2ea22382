import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { USUAL_LEAN } from '../../../core/paddle/usual-drive.ts';
import { BOAT_MARKS, boatMarks } from '../../../core/photograph/boat-marks.ts';
import { axesOf, type Camera, projectPoint } from '../../../core/photograph/camera.ts';
import { type PhotoStudy, photoStudySchema } from '../../../core/photograph/photo-study-schema.ts';
import { readPicture } from '../../../core/photograph/read-picture.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { exampleFit } from '../example/example-fit.ts';
import { JOINTS } from './synthetic-picture.ts';

const fit = exampleFit();
const [seat] = fit.seats;
const image = { width: 2048, height: 1536 };
const places = boatMarks(fit, 0)!;
const stance = solveStance({
  body: bodyOfAthlete(seat!.athlete!),
  seat: { ...seat!, pins: { trunkPitchDeg: 20 } },
  frame: seatFrame(fit.boat, seat!, 0),
});

function cameraAt(azimuth: number): Camera {
  const axes = axesOf({ azimuth, pitch: -0.06, roll: 0 });
  const position = { x: -7 * axes.forward.x, y: -7 * axes.forward.y, z: 0.9 };
  const centre = { u: image.width / 2, v: image.height / 2 };
  return { ...axes, position, focalPx: 2400, radial: 0, centre, image };
}

function study(camera: Camera, more: Partial<PhotoStudy> = {}): PhotoStudy {
  const boat = Object.fromEntries(BOAT_MARKS.map((name) => [name, projectPoint(camera, places[name])]));
  const joints = Object.fromEntries(JOINTS.map((name) => [name, projectPoint(camera, stance.points[name])]));
  return photoStudySchema.parse({ seat: 0, moment: 'ready', image, boat, joints, ...more });
}

const side = cameraAt(Math.PI / 2);

describe('a marked picture', () => {
  it('tells camera, posture and plan, the plan as it is drawn', () => {
    const read = readPicture(fit, study(side));
    if (read.camera.kind !== 'solved' || read.posture?.kind !== 'measured') throw new Error('not read');
    expect(read.posture.angles.trunkPitch).toBeCloseTo((20 * Math.PI) / 180, 1);
    expect(read.seen!.topHand.u).toBeCloseTo(projectPoint(side, stance.points.topHand).u, -1);
    expect(read.plan!.drawn!.shapes.length).toBeGreaterThan(10);
    const [port] = read.gunwales;
    const marked = projectPoint(side, places.sheerPort);
    expect(Math.min(...port!.map(({ u, v }) => Math.hypot(u - marked.u, v - marked.v)))).toBeLessThan(30);
    expect(read.afloat).toBeNull();
  });

  it('has in the middle of the drive the plan of that moment, not of the catch', () => {
    const plan = (moment: PhotoStudy['moment']) =>
      readPicture(fit, study(side, { moment, joints: {} })).plan!;
    expect(plan('drive').angles.trunkPitch).toBeCloseTo(USUAL_LEAN, 2);
    expect(plan('catch').angles.trunkPitch).toBeGreaterThan(plan('drive').angles.trunkPitch + 0.05);
  });

  it('is surer with another picture of the same moment', () => {
    const sd = (others: readonly PhotoStudy[]) => {
      const { posture } = readPicture(fit, study(side), others);
      return posture?.kind === 'measured' ? posture.sd.trunkRoll : Number.NaN;
    };
    expect(sd([study(cameraAt(0))])).toBeLessThan(0.6 * sd([]));
  });

  it('tells the trim that was seen beside the one that is planned, once the water is marked', () => {
    const at = (x: number) => projectPoint(side, { x, y: 0, z: 0.1 });
    const { boat } = study(side);
    const { afloat } = readPicture(
      fit,
      study(side, { boat: { ...boat, waterBow: at(2.4), waterStern: at(-2.4) }, joints: {} }),
    );
    expect(afloat!.seen.trim).toBeCloseTo(0, 2);
    expect(afloat!.seen.draft).toBeCloseTo(0.1, 2);
    expect(Math.abs(afloat!.planned!.value)).toBeLessThan(0.1);
    expect(afloat!.planned!.sd).toBeGreaterThan(0);
  });

  it('says nothing but why before the boat is marked', () => {
    const read = readPicture(fit, study(side, { boat: {} }));
    expect(read).toMatchObject({ camera: { kind: 'tooFew' }, posture: null, plan: null, afloat: null });
  });
});
