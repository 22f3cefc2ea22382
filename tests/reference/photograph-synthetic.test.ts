import { describe, expect, it } from 'vitest';
import { postureFromMarks } from '../../core/photograph/posture-from-marks.ts';
import { solveCamera } from '../../core/photograph/solve-camera.ts';
import type { StanceAngle } from '../../core/posture/stance.ts';
import { cases, LONG } from '../cases.ts';
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
const SAGITTAL: readonly StanceAngle[] = [
  'frontKnee',
  'kneelingKnee',
  'kneelingHip',
  'frontHip',
  'rearAnkle',
  'frontAnkle',
  'trunkPitch',
  'thighPitch',
];

interface Seen {
  readonly offDeg: number;
  readonly inside: boolean;
}

/**
 * Seeds of the pictures held against their stated doubt; no seed was left out. The first 500 stand for themselves, 93 to 97 % of each
 * angle. By chance alone (binomial, 500 draws at 95 %) a share is within 95 ± 1.9 points 19 times in 20, so that about one in twenty of
 * the angles of any other seed lies outside 93 to 97; all 2,000 pictures together are within 95 ± 1.0.
 */
const SEEDS = LONG ? [2026, 31, 32, 33] : [2026];

/** Pictures of persons drawn from what is doubted of body and posture: random cameras, 3 px of noise, one mark in ten thrown off. */
function pictures(count: number, { oblique, seed }: { oblique: number; seed: number }) {
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

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** Share of cases within the stated 95 %, and what sampling alone leaves of it: three standard errors in the quick run's few cases. */
function expectHonest(seen: readonly Seen[], name: string) {
  const share = seen.filter(({ inside }) => inside).length / seen.length;
  const slack = LONG ? 0.02 : 3 * Math.sqrt((0.95 * 0.05) / seen.length);
  expect(share, `${name}: within its 95 %`).toBeGreaterThanOrEqual(0.95 - slack);
  expect(share, `${name}: within its 95 %`).toBeLessThanOrEqual(Math.min(1, 0.95 + slack));
}

describe('postures of synthetic pictures', () => {
  it('lie within their stated doubt, up to 35° oblique, and are off by under 3°', () => {
    const taken = SEEDS.map((seed) => pictures(cases(2, 500), { oblique: 35, seed }));
    for (const name of SAGITTAL) {
      const seen = taken.flatMap((of) => of[name]);
      expectHonest(taken[0]![name], `${name}, seed ${SEEDS[0]}`);
      expectHonest(seen, name);
      expect(median(seen.map(({ offDeg }) => offDeg)), name).toBeLessThanOrEqual(3);
    }
  });

  it('are off by under 1.5° side-on', () => {
    const seen = pictures(cases(1, 500), { oblique: 5, seed: 7 });
    // One picture scatters: twice is allowed for.
    const most = LONG ? 1.5 : 3;
    for (const name of SAGITTAL)
      expect(median(seen[name].map(({ offDeg }) => offDeg)), name).toBeLessThanOrEqual(most);
  });
});
