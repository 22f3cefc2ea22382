import { describe, expect, it } from 'vitest';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { halfBreadth, keelHeight, sheerHeight } from '../../../core/hull/section-at.ts';
import { stemRise, withStems } from '../../../core/hull/stem-ends.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { exampleBoat } from '../example/example-fit.ts';
import { madeHull } from './made-hull.ts';

const usual = usualHull({ boatClass: 'C1' });
const single = hullOfBoat(usual);
const STRAIGHT = { rakeM: 0.2, curveM: 0 };

describe('raked ends', () => {
  it('rise from the foot to the head, in a straight line or rounded out by the curve', () => {
    const hull = withStems(single, { bow: STRAIGHT });
    const height = (x: number) => {
      const keel = keelHeight(single, x);
      return (keelHeight(hull, x) - keel) / (sheerHeight(single, x) - keel);
    };
    const foot = single.foreX - 0.2;
    expect(height(foot - 0.01)).toBeCloseTo(0, 2);
    for (const share of [0.25, 0.5, 0.75]) expect(height(foot + 0.2 * share)).toBeCloseTo(share, 1);
    // Halfway up a rounded stem stands forward of the straight line by the curve.
    const rounded = { rakeM: 0.2, curveM: 0.04 };
    expect(stemRise(rounded, (0.1 + 0.04) / 0.2)).toBeCloseTo(0.5, 9);
    expect([stemRise(rounded, 0), stemRise(rounded, 1)]).toEqual([0, expect.closeTo(1, 9)]);
  });

  it('leave the hull between their feet, its length and its sheer as they were', () => {
    const hull = withStems(single, { bow: STRAIGHT, stern: { rakeM: 0.1, curveM: 0.02 } });
    expect([hull.aftX, hull.foreX]).toEqual([single.aftX, single.foreX]);
    for (const x of [-2.2, -1, 0, 1, 2.2]) {
      expect(halfBreadth(hull, x, 0.12)).toBeCloseTo(halfBreadth(single, x, 0.12)!, 6);
      expect(sheerHeight(hull, x)).toBeCloseTo(sheerHeight(single, x), 9);
    }
    expect(withStems(single, {})).toBe(single);
  });

  it('take a wedge off a box: half of what stood over the rake', () => {
    const section = [
      [0, 0],
      [0.25, 0],
      [0.25, 0.4],
    ] as const;
    const box = madeHull({
      name: 'box',
      stations: [-2.5, 0, 2.5].map((x) => ({ x, section })),
      between: 'chords',
    });
    const rakeM = 0.4;
    const cut = withStems(box, { bow: { rakeM, curveM: 0 } });
    const gone = box.levelVolumes.at(-1)! - cut.levelVolumes.at(-1)!;
    expect(gone / (0.5 * 0.4 * rakeM * 0.5)).toBeCloseTo(1, 1);
  });

  it('reach no farther in than what a tape measured', () => {
    const boat = exampleBoat();
    if (boat.hull.kind !== 'tape') throw new Error('by tape');
    const foremost = Math.max(...boat.hull.stations.map(({ xM }) => xM));
    const hull = hullOfBoat({ ...boat, hull: { ...boat.hull, stems: { bow: { rakeM: 1, curveM: 0 } } } });
    const upright = hullOfBoat(boat);
    for (const x of [foremost, foremost - 0.1]) {
      expect(keelHeight(hull, x)).toBeCloseTo(keelHeight(upright, x), 3);
    }
    expect(keelHeight(hull, hull.foreX - 0.05)).toBeGreaterThan(keelHeight(upright, hull.foreX - 0.05) + 0.1);
  });
});
