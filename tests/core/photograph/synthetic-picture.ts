import { BODY_LENGTHS, type BodyEstimate } from '../../../core/body/body.ts';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { squareRootOf } from '../../../core/body/covariance-root.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import type { Vec3 } from '../../../core/frame/vec3.ts';
import {
  axesOf,
  type Camera,
  cornerSquare,
  type Pixel,
  projectPoint,
} from '../../../core/photograph/camera.ts';
import type { MarkedPoint } from '../../../core/photograph/camera-problem.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import type { FigurePoint, Phase, Stance } from '../../../core/posture/stance.ts';
import { STANCE_TERMS } from '../../../core/posture/stance-terms.ts';
import { normalOf, uniform } from '../../random32.ts';

/** Seeded numbers: uniform in (0, 1), standard normal, and uniform between two bounds. */
export function seeded(seed: number) {
  const next = uniform(seed);
  return {
    uniform: next,
    normal: normalOf(next),
    between: (low: number, high: number) => low + (high - low) * next(),
  };
}
export type Seeded = ReturnType<typeof seeded>;

export const IMAGE = { width: 4000, height: 3000 };
export const NOISE_PX = 3;
const TARGET = { x: 0, y: 0, z: 0.55 };

/** Points of a boat that a coach can mark: ends, gunwale, board, pad and rest. Metres, boat frame. */
export const BOAT_POINTS: readonly Vec3[] = [
  { x: 2.6, y: 0, z: 0.32 },
  { x: -2.6, y: 0, z: 0.32 },
  { x: 0, y: 0.2, z: 0.3 },
  { x: 0, y: -0.2, z: 0.3 },
  { x: 0.8, y: 0.17, z: 0.3 },
  { x: 0.8, y: -0.17, z: 0.3 },
  { x: -0.8, y: 0.17, z: 0.3 },
  { x: -0.8, y: -0.17, z: 0.3 },
  { x: 0.5, y: 0.12, z: 0.03 },
  { x: -0.75, y: -0.12, z: 0.03 },
  { x: -0.1, y: 0.08, z: 0.14 },
  { x: -0.3, y: -0.03, z: 0.14 },
];

/** Joints that can be marked on a kneeling paddler. */
export const JOINTS: readonly FigurePoint[] = [
  'kneelingKnee',
  'kneelingHip',
  'kneelingAnkle',
  'rearBall',
  'frontHip',
  'frontKnee',
  'frontAnkle',
  'frontToe',
  'midHip',
  'midShoulder',
  'lowerShoulder',
  'topShoulder',
  'headTop',
  'lowerHand',
  'topHand',
  'lowerElbow',
  'topElbow',
];

/** One mark for each joint of the legs, and one alone for the trunk: nothing else tells whether the shoulder's is bad. */
export const UNCHECKED: readonly FigurePoint[] = [
  'kneelingKnee',
  'kneelingHip',
  'kneelingAnkle',
  'frontKnee',
  'midShoulder',
];

/** A camera about `aroundDeg` from straight abeam (port or starboard) or, with `rear`, from straight astern. */
export function randomCamera(
  random: Seeded,
  { oblique, rear = false }: { oblique: number; rear?: boolean },
): Camera {
  const longer = Math.max(IMAGE.width, IMAGE.height);
  const focalPx = longer * Math.exp(random.between(Math.log(24 / 36), Math.log(200 / 36)));
  const around = random.between(-oblique, oblique);
  const abeam = random.uniform() < 0.5 ? 90 : -90;
  const azimuth = (((rear ? 0 : abeam) + around) * Math.PI) / 180;
  const axes = axesOf({ azimuth, pitch: random.between(-0.3, 0.02), roll: random.between(-0.05, 0.05) });
  const distance = random.between(3, 15);
  return {
    ...axes,
    position: {
      x: TARGET.x - distance * axes.forward.x,
      y: TARGET.y - distance * axes.forward.y,
      z: TARGET.z - distance * axes.forward.z,
    },
    focalPx,
    radial: random.between(-0.02, 0.02) / cornerSquare(IMAGE, focalPx),
    centre: { u: IMAGE.width / 2, v: IMAGE.height / 2 },
    image: IMAGE,
  };
}

/** A body drawn from the doubt of the estimate. */
export function drawnBody(body: BodyEstimate, random: Seeded): BodyEstimate {
  const roots = squareRootOf(body.covariance);
  const z = roots.map(() => random.normal());
  const lengths = Object.fromEntries(
    BODY_LENGTHS.map((name, i) => {
      const value = roots.reduce((sum, c, k) => sum + c[i]! * z[k]!, body.lengths[name].value);
      return [name, { ...body.lengths[name], value }];
    }),
  ) as BodyEstimate['lengths'];
  return { ...body, lengths };
}

/** A person who kneels in a fit: a body and a way of kneeling within what is doubted of both. */
export function drawnStance(fit: Fit, phase: Phase, random: Seeded): Stance {
  const seat = fit.seats[0]!;
  const body = drawnBody(bodyOfAthlete(seat.athlete!), random);
  const strays = STANCE_TERMS.map(() => random.normal());
  return solveStance({ body, seat, frame: seatFrame(fit.boat, seat, 0), phase, strays });
}

export type Marks = Partial<Record<FigurePoint, Pixel>>;

/** Marks of the joints that fall inside the picture, with noise. */
export function markedJoints(camera: Camera, stance: Stance, random: Seeded): Marks {
  const marks: Marks = {};
  for (const joint of JOINTS) {
    const pixel = noisy(projectPoint(camera, stance.points[joint]), random);
    if (inside(pixel)) marks[joint] = pixel;
  }
  return marks;
}

/** Marks of the boat's points that fall inside the picture, with noise. */
export function markedBoat(camera: Camera, random: Seeded): MarkedPoint[] {
  return BOAT_POINTS.map((world) => ({ world, pixel: noisy(projectPoint(camera, world), random) })).filter(
    ({ pixel }) => inside(pixel),
  );
}

const noisy = ({ u, v }: Pixel, { normal }: Seeded): Pixel => ({
  u: u + NOISE_PX * normal(),
  v: v + NOISE_PX * normal(),
});

const inside = ({ u, v }: Pixel) => u >= 0 && u <= IMAGE.width && v >= 0 && v <= IMAGE.height;

/** A pixel thrown off by 40 to 250 pixels. */
export function thrown({ u, v }: Pixel, random: Seeded): Pixel {
  const way = random.between(0, 2 * Math.PI);
  const by = random.between(40, 250);
  return { u: u + by * Math.cos(way), v: v + by * Math.sin(way) };
}

/** One mark in ten thrown off, drawn at random. */
export function withBadMarks(marks: Marks, random: Seeded): Marks {
  const names = Object.keys(marks) as FigurePoint[];
  const bad = new Set(
    Array.from(
      { length: Math.round(names.length / 10) },
      () => names[Math.floor(random.uniform() * names.length)]!,
    ),
  );
  return Object.fromEntries(
    names.map((name) => [name, bad.has(name) ? thrown(marks[name]!, random) : marks[name]!]),
  );
}

/** One boat point in ten thrown off. */
export function withBadPoints(points: readonly MarkedPoint[], random: Seeded): MarkedPoint[] {
  const bad = Math.floor(random.uniform() * points.length);
  return points.map((point, i) =>
    i === bad && points.length >= 7 ? { ...point, pixel: thrown(point.pixel, random) } : point,
  );
}
