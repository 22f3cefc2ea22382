import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipRow } from '../../../core/hull/clip-row.ts';
import type { SectionPoint } from '../../../core/hull/hull.ts';
import { ROW, VALUES_PER_ROW } from '../../../core/hull/section-rows.ts';
import { madeHull } from './made-hull.ts';

const SEED = 7;

/** A prism of one section; its first row is that section. */
const prism = (section: SectionPoint[]) =>
  madeHull({ name: 'prism', stations: [0, 1, 2].map((x) => ({ x, section })), between: 'chords' });

function clipped(section: SectionPoint[], height: number, slope: number) {
  const { rows, scratch } = prism(section);
  clipRow(rows, { row: 0, height, slope }, scratch.values);
  const read = (name: keyof typeof ROW) => scratch.values[ROW[name]]!;
  return Object.fromEntries(Object.keys(ROW).map((k) => [k, read(k as keyof typeof ROW)])) as Record<
    keyof typeof ROW,
    number
  >;
}

/** Sutherland–Hodgman clip of the whole polygon and the shoelace sums: another way to the same figures. */
function byShoelace(section: SectionPoint[], height: number, slope: number) {
  const polygon = [...section, ...section.toReversed().map(([y, z]) => [-y, z] as const)];
  const depth = ([y, z]: SectionPoint) => height - slope * y - z;
  const kept: SectionPoint[] = [];
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    const [dp, dq] = [depth(p), depth(q)];
    if (dp >= 0) kept.push(p);
    if (dp >= 0 !== dq >= 0) {
      const u = dp / (dp - dq);
      kept.push([p[0] + u * (q[0] - p[0]), p[1] + u * (q[1] - p[1])]);
    }
  });
  let [area, momentY, momentZ] = [0, 0, 0];
  kept.forEach(([y0, z0], i) => {
    const [y1, z1] = kept[(i + 1) % kept.length]!;
    const cross = y0 * z1 - y1 * z0;
    area += cross / 2;
    momentY += (cross * (y0 + y1)) / 6;
    momentZ += (cross * (z0 + z1)) / 6;
  });
  return { area, momentY, momentZ };
}

const flatBottomed: SectionPoint[] = [
  [0.1, 0],
  [0.2, 0.1],
  [0.18, 0.3],
];

describe('clipRow', () => {
  it('a rectangle by a level line: by hand', () => {
    const v = clipped(
      [
        [0.25, 0],
        [0.25, 0.4],
      ],
      0.15,
      0,
    );
    expect(v.area).toBeCloseTo(0.075, 14);
    expect(v.momentY).toBe(0);
    expect(v.momentZ).toBeCloseTo(0.075 * 0.075, 14);
    expect([v.breadth, v.breadthY]).toEqual([0.5, 0]);
    expect(v.breadthYy).toBeCloseTo(0.5 ** 3 / 12, 14);
    expect(v.shell).toBeCloseTo(0.5 + 2 * 0.15, 14);
    expect([v.least, v.most]).toEqual([0, 0.4]);
  });

  it('a rectangle by a slope of 1 across its corner: a triangle', () => {
    // z = .1 − y: the water reaches the bottom at y = .1 to port, rises to .35 at the starboard side.
    const v = clipped(
      [
        [0.25, 0],
        [0.25, 0.4],
      ],
      0.1,
      1,
    );
    expect(v.area).toBeCloseTo(0.35 ** 2 / 2, 14);
    expect(v.momentY / v.area).toBeCloseTo(-0.25 + 0.35 / 3, 14);
    expect(v.momentZ / v.area).toBeCloseTo(0.35 / 3, 14);
    expect(v.breadth).toBeCloseTo(0.35, 14);
    expect(v.shell).toBeCloseTo(0.7, 14);
  });

  it('all under: the closed section, no waterline; all clear: nothing', () => {
    const under = clipped(flatBottomed, 5, 0.2);
    expect(under.area).toBeCloseTo(byShoelace(flatBottomed, 5, 0).area, 14);
    expect([under.breadth, under.breadthY, under.breadthYy]).toEqual([0, 0, 0]);
    const clear = clipped(flatBottomed, -5, 0.2);
    expect([clear.area, clear.breadth, clear.shell]).toEqual([0, 0, 0]);
  });

  it('water exactly at the sheer stands at the sheer: full breadth, no deck awash', () => {
    expect(clipped(flatBottomed, 0.3, 0).breadth).toBeCloseTo(0.36, 14);
    expect(clipped(flatBottomed, 0.3 + 1e-15, 0).breadth).toBeCloseTo(0.36, 14);
    expect(clipped(flatBottomed, 0.31, 0).breadth).toBe(0);
  });

  it('a deck half awash: the waterline runs across the deck', () => {
    const v = clipped(
      [
        [0.25, 0],
        [0.25, 0.4],
      ],
      0.4,
      0.2,
    );
    // At starboard the water stands .05 over the sheer; on the deck it ends at the centreline.
    expect(v.breadth).toBeCloseTo(0.25, 14);
    expect(v.area).toBeCloseTo(0.2 - (0.25 * 0.05) / 2, 14);
  });

  it(`agrees with a shoelace over the clipped polygon, mirrors exactly, seed ${SEED}`, () => {
    const point = fc.tuple(
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      fc.double({ min: 1e-3, max: 0.1, noNaN: true }),
    );
    const sections = fc.array(point, { minLength: 2, maxLength: 12 }).map((steps) => {
      const height = (upTo: number) => steps.slice(1, upTo + 1).reduce((z, [, dz]) => z + dz, 0);
      return steps.map(([y], i): SectionPoint => [y, height(i)]);
    });
    const slopes = fc.double({ min: -2, max: 2, noNaN: true });
    const heights = fc.double({ min: -0.2, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(sections, heights, slopes, (section, height, slope) => {
        if (!section.some(([y]) => y > 0)) return;
        const ours = clipped(section, height, slope);
        const theirs = byShoelace(section, height, slope);
        expect(ours.area).toBeCloseTo(theirs.area, 11);
        expect(ours.momentY).toBeCloseTo(theirs.momentY, 11);
        expect(ours.momentZ).toBeCloseTo(theirs.momentZ, 11);
        const mirrored = clipped(section, height, -slope);
        expect(mirrored.area).toBe(ours.area);
        expect(mirrored.momentY + ours.momentY).toBe(0);
        expect(mirrored.momentZ).toBe(ours.momentZ);
        expect(mirrored.breadth).toBe(ours.breadth);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('the breadth is the derivative of the area with the water’s height', () => {
    const step = 1e-6;
    for (const [height, slope] of [
      [0.12, 0],
      [0.15, 0.4],
      [0.2, -0.8],
      [0.28, 0.1],
    ] as const) {
      const [up, down] = [
        clipped(flatBottomed, height + step, slope),
        clipped(flatBottomed, height - step, slope),
      ];
      const here = clipped(flatBottomed, height, slope);
      expect((up.area - down.area) / (2 * step)).toBeCloseTo(here.breadth, 6);
      expect((up.momentY - down.momentY) / (2 * step)).toBeCloseTo(here.breadthY, 6);
    }
  });

  it('writes only its own row', () => {
    const { rows, scratch } = prism(flatBottomed);
    scratch.values.fill(-1);
    clipRow(rows, { row: 2, height: 0.1, slope: 0.1 }, scratch.values);
    const touched = [...scratch.values].findIndex((v) => v !== -1);
    expect(touched).toBe(2 * VALUES_PER_ROW);
    expect(scratch.values[3 * VALUES_PER_ROW]).toBe(-1);
  });
});
