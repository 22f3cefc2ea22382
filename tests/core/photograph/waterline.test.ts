import { describe, expect, it } from 'vitest';
import { axesOf, type Camera, projectPoint } from '../../../core/photograph/camera.ts';
import { solveCamera } from '../../../core/photograph/solve-camera.ts';
import { seenWaterline } from '../../../core/photograph/waterline.ts';
import { cases, LONG } from '../../cases.ts';
import { IMAGE, markedBoat, NOISE_PX, seeded } from './synthetic-picture.ts';

const camera = (azimuth = Math.PI / 2): Camera => {
  const axes = axesOf({ azimuth, pitch: -0.08, roll: 0.01 });
  return {
    ...axes,
    position: { x: -9 * axes.forward.x, y: -9 * axes.forward.y, z: 1.2 },
    focalPx: 5200,
    radial: 0.05,
    centre: { u: 2000, v: 1500 },
    image: IMAGE,
  };
};

/** Where the water stands in the centre plane of a boat with this trim and draft, metres and radians. */
const waterAt = (x: number, { trim, draft }: { trim: number; draft: number }) => ({
  x,
  y: 0,
  z: draft - x * Math.tan(trim),
});
const FLOATS = { trim: 0.008, draft: 0.11 };
const ends = { waterBow: 2.5, waterStern: -2.4 };

const marksBy = (seen: Camera, noise = () => 0) =>
  Object.fromEntries(
    Object.entries(ends).map(([name, x]) => {
      const { u, v } = projectPoint(seen, waterAt(x, FLOATS));
      return [name, { u: u + noise(), v: v + noise() }];
    }),
  );

describe('how a boat floats, from two marks at the water', () => {
  it('comes back exactly, the bow up being positive', () => {
    for (const azimuth of [Math.PI / 2, -Math.PI / 2, 1]) {
      const seen = seenWaterline(camera(azimuth), marksBy(camera(azimuth)))!;
      expect(seen.trim).toBeCloseTo(FLOATS.trim, 6);
      expect(seen.draft).toBeCloseTo(FLOATS.draft, 6);
    }
  });

  it('lies within its stated doubt, with noisy marks and a camera that was solved', () => {
    const random = seeded(77);
    const z: number[] = [];
    for (let i = 0; i < cases(4, 200); i++) {
      const solved = solveCamera({ points: markedBoat(camera(), random), image: IMAGE });
      if (solved.kind !== 'solved') throw new Error(solved.kind);
      const marks = marksBy(camera(), () => NOISE_PX * random.normal());
      const seen = seenWaterline(solved.camera, marks)!;
      z.push(
        Math.abs(seen.trim - FLOATS.trim) / seen.trimSd,
        Math.abs(seen.draft - FLOATS.draft) / seen.draftSd,
      );
      // A centimetre of ripple at each end of five metres.
      expect(seen.trimSd).toBeGreaterThan(0.0028);
    }
    // The stated doubt holds ripple too, which these marks have not.
    expect(z.filter((off) => off < 1.96).length / z.length).toBeGreaterThanOrEqual(LONG ? 0.93 : 0.7);
  });

  it('is not told from astern, nor by one mark', () => {
    expect(seenWaterline(camera(0.1), marksBy(camera(0.1)))).toBeNull();
    const { waterBow } = marksBy(camera());
    expect(seenWaterline(camera(), { waterBow })).toBeNull();
  });
});
