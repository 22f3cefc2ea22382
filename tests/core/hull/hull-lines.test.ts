import { describe, expect, it } from 'vitest';
import { hullLines } from '../../../core/hull/hull-lines.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { halfBreadth, keelHeight, sheerHeight } from '../../../core/hull/section-at.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { notEmpty } from '../../not-empty.ts';
import { SAMPLE_HULLS, sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { box, wigley } from '../../reference/hydro-shapes.ts';

describe('hullLines', () => {
  it('a box: every waterline is its plan, every buttock its floor', () => {
    const lines = hullLines(box(), { heights: [0.1, 0.39], halfBreadths: [0.1, 0.24] });
    for (const { z, runs } of lines.waterlines) {
      expect(runs).toHaveLength(1);
      const points = runs[0]!;
      expect(points.map((p) => p.y)).toEqual(points.map(() => 0.25));
      expect(points.every((p) => p.z === z)).toBe(true);
      expect([points[0]!.x, points.at(-1)!.x]).toEqual([-2.5, 2.5]);
    }
    for (const { runs } of lines.buttocks) expect(runs[0]!.every((p) => p.z === 0)).toBe(true);
    expect(lines.sections).toHaveLength(3);
  });

  it('a Wigley form: waterlines are parabolas, buttocks rise to the sheer where they leave', () => {
    const [L, B, T] = [5.2, 0.42, 0.25];
    const hull = wigley({ L, B, T }, { stations: 41, points: 161 });
    const { waterlines, buttocks } = hullLines(hull, { heights: [0.1], halfBreadths: [0.1] });
    const full = (B / 2) * (1 - (1 - 0.1 / T) ** 2);
    for (const p of waterlines[0]!.runs[0]!) expect(p.y).toBeCloseTo(full * (1 - ((2 * p.x) / L) ** 2), 4);
    const ends = [buttocks[0]!.runs[0]![0]!, buttocks[0]!.runs[0]!.at(-1)!];
    const leaves = (L / 2) * Math.sqrt(1 - 0.1 / (B / 2));
    expect(ends.map((p) => Math.abs(p.x))).toEqual([expect.closeTo(leaves, 2), expect.closeTo(leaves, 2)]);
    for (const p of ends) expect(p.z).toBeCloseTo(T, 9);
    for (const p of buttocks[0]!.runs[0]!) expect(p.y).toBe(0.1);
  });

  it.each(SAMPLE_HULLS)('%s: sheer, keel and waterlines lie on the hull; the defaults cut it', (name) => {
    const hull = sampleHull(name);
    const lines = hullLines(hull);
    expect(lines.waterlines).toHaveLength(6);
    expect(lines.buttocks).toHaveLength(3);
    for (const { x, z } of lines.sheer) expect(z).toBeCloseTo(sheerHeight(hull, x), 12);
    for (const { x, z } of lines.keel) expect(z).toBeCloseTo(keelHeight(hull, x), 12);
    for (const { z, runs } of lines.waterlines) {
      expect(runs.flat().length).toBeGreaterThan(10);
      for (const p of runs.flatMap((run) => run.slice(1, -1)))
        expect(p.y).toBeCloseTo(halfBreadth(hull, p.x, z) ?? 0, 9);
    }
    for (const { runs } of lines.buttocks) {
      const points = runs[0]!;
      expect(points.length).toBeGreaterThan(10);
      points.forEach((p, i) => {
        if (i > 0) expect(p.x).toBeGreaterThan(points[i - 1]!.x);
      });
    }
  });

  it('a waterline over the lowest sheer runs in two, fore and aft', () => {
    const hull = sampleHull('training');
    const { runs } = hullLines(hull, { heights: [0.31] }).waterlines[0]!;
    expect(runs).toHaveLength(2);
    const [aft, fore] = runs.map((run) => run.map((p) => p.x));
    expect(aft!.at(-1)).toBeLessThan(0);
    expect(fore![0]).toBeGreaterThan(0);
    expect(sheerHeight(hull, fore![0]!)).toBeCloseTo(0.31, 3);
  });

  it('a cut beside the hull has no runs', () => {
    const lines = hullLines(sampleHull('single'), { heights: [-1, 9], halfBreadths: [3] });
    for (const { runs } of [...lines.waterlines, ...lines.buttocks]) expect(runs).toEqual([]);
  });

  it('a waterline under a rockered keel’s ends closes on the centreline', () => {
    const hull = sampleHull('single');
    const [points = []] = hullLines(hull, { heights: [0.01] }).waterlines[0]!.runs;
    expect(points[0]!.y).toBe(0);
    expect(points.at(-1)!.y).toBe(0);
    expect(points[0]!.x).toBeGreaterThan(hull.aftX);
    expect(keelHeight(hull, points[0]!.x)).toBeCloseTo(0.01, 3);
  });

  it('buttocks run fair: no corner where the cut passes from one pair of a section’s points to the next', () => {
    const hull = hullOfBoat(usualHull({ boatClass: 'C1' }));
    for (const { runs } of notEmpty(hullLines(hull).buttocks)) {
      const run = runs[0]!;
      const [aft, fore] = [run[0]!.x + 0.15, run.at(-1)!.x - 0.15];
      const inner = run.filter(({ x }) => x > aft && x < fore);
      const slopes = inner.slice(1).map((p, k) => (p.z - inner[k]!.z) / (p.x - inner[k]!.x));
      const turns = slopes.slice(1).map((slope, k) => Math.abs(Math.atan(slope) - Math.atan(slopes[k]!)));
      expect((180 / Math.PI) * Math.max(...turns)).toBeLessThan(1.1);
    }
  });
});
