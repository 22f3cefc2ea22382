import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { seatFrame } from '../../core/evaluation/seat-state.ts';
import { BOAT_MARKS, boatMarks } from '../../core/photograph/boat-marks.ts';
import { axesOf, type Camera, projectPoint } from '../../core/photograph/camera.ts';
import type { PhotoStudy } from '../../core/photograph/photo-study-schema.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';

/** A photograph of real persons, from the demo folder of `@vladmandic/face-api` (MIT); a pose model finds the one in the middle. */
export const REAL_PERSON = join(
  dirname(createRequire(import.meta.url).resolve('@vladmandic/face-api/package.json')),
  'demo/sample1.jpg',
);

const JOINTS = [
  'kneelingKnee',
  'kneelingHip',
  'kneelingAnkle',
  'frontHip',
  'frontKnee',
  'frontAnkle',
  'midShoulder',
  'headTop',
  'topHand',
  'lowerHand',
] as const;

/** Marks of boat and joints in a picture, from the side, of the first athlete of a fit with the trunk at a pitch (degrees). */
export function leaningMarks(
  fit: Fit,
  image: PhotoStudy['image'],
  trunkPitchDeg: number,
): Pick<PhotoStudy, 'boat' | 'joints'> {
  const camera: Camera = {
    ...axesOf({ azimuth: Math.PI / 2, pitch: -0.05, roll: 0 }),
    position: { x: 0.2, y: -7, z: 0.9 },
    focalPx: 1.3 * image.width,
    radial: 0,
    centre: { u: image.width / 2, v: image.height / 2 },
    image,
  };
  const seat = { ...fit.seats[0]!, pins: { trunkPitchDeg } };
  const stance = solveStance({
    body: bodyOfAthlete(seat.athlete!),
    seat,
    frame: seatFrame(fit.boat, seat, 0),
  });
  const places = boatMarks(fit, 0)!;
  return {
    boat: Object.fromEntries(BOAT_MARKS.map((name) => [name, projectPoint(camera, places[name])])),
    joints: Object.fromEntries(JOINTS.map((name) => [name, projectPoint(camera, stance.points[name])])),
  };
}
