import { expect } from 'vitest';
import { postureFromMarks } from '../../core/photograph/posture-from-marks.ts';
import { solveCamera } from '../../core/photograph/solve-camera.ts';
import type { StanceAngle } from '../../core/posture/stance.ts';
import { exampleFit } from '../core/example/example-fit.ts';
import {
  drawnStance,
  IMAGE,
  markedBoat,
  markedJoints,
  randomCamera,
  seeded,
  withBadMarks,
  withBadPoints,
} from '../core/photograph/synthetic-picture.ts';

/** Angles that a side view shows. */
export const SAGITTAL: readonly StanceAngle[] = [
  'frontKnee',
  'kneelingKnee',
  'kneelingHip',
  'frontHip',
  'rearAnkle',
  'frontAnkle',
  'trunkPitch',
  'thighPitch',
];

export interface Seen {
  readonly offDeg: number;
  readonly inside: boolean;
}

/** Pictures of persons drawn from what is doubted of body and posture: random cameras, 3 px of noise, one mark in ten thrown off. */
export function pictures(count: number, { oblique, seed }: { oblique: number; seed: number }) {
  const fit = exampleFit();
  const random = seeded(seed);
  const seen = Object.fromEntries(SAGITTAL.map((name) => [name, [] as Seen[]])) as Record<
    StanceAngle,
    Seen[]
  >;
  for (let taken = 0; taken < count; ) {
    const camera = randomCamera(random, { oblique });
    const stance = drawnStance(fit, 'ready', random);
    const points = withBadPoints(markedBoat(camera, random), random);
    const marks = withBadMarks(markedJoints(camera, stance, random), random);
    if (points.length < 6 || Object.keys(marks).length < 8) continue;
    taken += 1;
    const solved = solveCamera({ points, image: IMAGE });
    if (solved.kind !== 'solved') throw new Error(`camera ${taken}: ${solved.kind}`);
    const posture = postureFromMarks({ fit, seat: 0, phase: 'ready', camera: solved.camera, marks });
    if (posture.kind !== 'measured') throw new Error(`posture ${taken}: ${posture.kind}`);
    for (const name of SAGITTAL) {
      const off = Math.abs(posture.angles[name] - stance.angles[name]);
      seen[name].push({ offDeg: (off * 180) / Math.PI, inside: off < 1.96 * posture.sd[name] });
    }
  }
  return seen;
}

/** The middle one of the values. */
export const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** Share of cases within the stated 95 %, and what sampling alone leaves of it: three standard errors where there are few cases. */
export function expectHonest(seen: readonly Seen[], name: string) {
  const share = seen.filter(({ inside }) => inside).length / seen.length;
  const slack = seen.length >= 500 ? 0.02 : 3 * Math.sqrt((0.95 * 0.05) / seen.length);
  expect(share, `${name}: within its 95 %`).toBeGreaterThanOrEqual(0.95 - slack);
  expect(share, `${name}: within its 95 %`).toBeLessThanOrEqual(Math.min(1, 0.95 + slack));
}
