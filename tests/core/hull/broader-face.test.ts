import { describe, expect, it } from 'vitest';
import { broaderFace } from '../../../core/hull/broader-face.ts';
import { innerHalfBreadth } from '../../../core/hull/inner-half-breadth.ts';
import { innerSkin } from '../../../core/hull/inner-skin.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';
import { straightEdges } from '../example/straight-edges.ts';
import { madeHull } from './made-hull.ts';

const box = madeHull({
  name: 'box',
  stations: [-2, -1, 0, 1, 2].map((x) => ({
    x,
    section: straightEdges([
      [0, 0],
      [0.25, 0],
      [0.25, 0.3],
    ]),
  })),
});

describe('broaderFace', () => {
  it('moves each side out or in by as much, and leaves the bottom', () => {
    const inBroader = innerSkin(broaderFace(box, 0.01), 0);
    const inNarrower = innerSkin(broaderFace(box, -0.01), 0);
    for (const y of [0.2, -0.2]) {
      expect(inBroader({ x: 0.3, y, z: 0.2 })).toBeCloseTo(0.06, 12);
      expect(inNarrower({ x: 0.3, y, z: 0.2 })).toBeCloseTo(0.04, 12);
      expect(inBroader({ x: 0.3, y: 0, z: 0.05 })).toBeCloseTo(0.05, 12);
    }
  });

  it('is that of a hull made from broader stations, between them too', () => {
    const { stations, ...hull } = sampleHull('single');
    const broader = stations.map(({ x, section }) => ({
      x,
      section: section.map(([y, z]) => [y + 0.008, z] as const),
    }));
    const made = madeHull({ name: 'broader', stations: broader, between: hull.between });
    for (const x of [-1.23, -0.4, 0.05, 0.71, 1.6]) {
      const at = { x, z: 0.12 };
      const shifted = innerHalfBreadth(broaderFace({ ...hull }, 0.008), at, 0.004)!;
      expect(shifted).toBeCloseTo(innerHalfBreadth(made, at, 0.004)!, 3);
      expect(shifted).toBeCloseTo(innerHalfBreadth({ ...hull }, at, 0.004)! + 0.008, 3);
    }
  });

  it('lets no side pass the centreline', () => {
    expect(Math.min(...broaderFace(box, -0.3).loft.y)).toBe(0);
  });
});
