import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fairSections } from '../../../core/hull/fair-sections.ts';
import type { SectionPoint, Station } from '../../../core/hull/hull.ts';
import { monotoneCubic } from '../../../core/hull/monotone-cubic.ts';
import { cases } from '../../cases.ts';

const SEED = 3;

/** Sections of equal counts, on their own edges. */
const withCommonPoints = (stations: readonly Station[]) => fairSections(stations, 'chords');

const girth = (section: readonly SectionPoint[]) =>
  section.slice(1).reduce((sum, [y, z], i) => sum + Math.hypot(y - section[i]![0], z - section[i]![1]), 0);

const area = (section: readonly SectionPoint[]) =>
  section.slice(1).reduce((sum, [y, z], i) => sum + ((y + section[i]![0]) * (z - section[i]![1])) / 2, 0);

describe('sections of equal point counts', () => {
  it('leaves sections of equal counts as they are', () => {
    const section: SectionPoint[] = [
      [0, 0],
      [0.1, 0.1],
      [0.2, 0.3],
    ];
    expect(withCommonPoints([0, 1, 2].map((x) => ({ x, section })))).toEqual([section, section, section]);
  });

  it('starts a flat bottom on the centreline, everywhere at once', () => {
    const sections = withCommonPoints([
      {
        x: 0,
        section: [
          [0.1, 0],
          [0.1, 1],
        ],
      },
      {
        x: 1,
        section: [
          [0, 0.1],
          [0.2, 1],
        ],
      },
    ]);
    expect(sections).toEqual([
      [
        [0, 0],
        [0.1, 0],
        [0.1, 1],
      ],
      [
        [0, 0.1],
        [0, 0.1],
        [0.2, 1],
      ],
    ]);
  });

  it('keeps corresponding points at about the same share of girth', () => {
    const fine: SectionPoint[] = Array.from({ length: 11 }, (_, i) => [i / 10, i / 10]);
    const coarse: SectionPoint[] = [
      [0, 0],
      [0.3, 0.3],
      [1, 1],
    ];
    const [, spread] = withCommonPoints([
      { x: 0, section: fine },
      { x: 1, section: coarse },
    ]);
    expect(spread!.map(([y]) => y)).toEqual(fine.map((_, i) => expect.closeTo(i / 10, 9)));
  });

  it(`equal counts, same girth and area, every given point kept, seed ${SEED}`, () => {
    const point = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    const section = fc.array(point, { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.array(section, { minLength: 3, maxLength: 5 }), (sections) => {
        const stations = sections.map((s, x) => ({ x, section: s }));
        const open = sections.some((s) => s[0]![0] > 0);
        withCommonPoints(stations).forEach((common, i, all) => {
          expect(common).toHaveLength(all[0]!.length);
          const given: SectionPoint[] = open ? [[0, sections[i]![0]![1]], ...sections[i]!] : sections[i]!;
          expect(girth(common)).toBeCloseTo(girth(given), 9);
          expect(area(common)).toBeCloseTo(area(given), 9);
          for (const p of given) expect(common).toContainEqual(p);
        });
      }),
      { seed: SEED, numRuns: cases(60, 300) },
    );
  });
});

describe('monotoneCubic', () => {
  it('goes through its points, never beyond them, and holds its ends', () => {
    const [xs, ys] = [
      [0, 0.2, 0.5, 1],
      [0, 3, 3.1, 10],
    ];
    const curve = monotoneCubic(xs, ys);
    expect(xs.map(curve)).toEqual(ys.map((y) => expect.closeTo(y, 12)));
    let before = curve(0);
    for (let x = 0; x <= 1; x += 0.01) {
      expect(curve(x)).toBeGreaterThanOrEqual(before - 1e-12);
      before = curve(x);
    }
    expect([curve(-1), curve(2)]).toEqual([0, 10]);
  });

  it('a straight line stays straight', () => {
    const curve = monotoneCubic([0, 0.3, 1], [1, 1.6, 3]);
    for (const x of [0.1, 0.4, 0.9]) expect(curve(x)).toBeCloseTo(1 + 2 * x, 12);
  });
});
