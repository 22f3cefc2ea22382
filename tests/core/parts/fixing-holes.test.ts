import { describe, expect, it } from 'vitest';
import { boltsAcross, holeAt } from '../../../core/parts/fixing-holes.ts';
import { inPart } from '../../../core/parts/part.ts';
import { workParts } from '../../../core/setout/work-parts.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ROWS_OF_HOLES } from '../setout/invented-set-out.ts';

/** Wood that common practice leaves between a bolt and an edge, metres. */
const EDGE = 0.02;
const base = { along: 0, halfLength: 0.1, half: 0.07 };
const wide = { heightM: 0.03, widthM: 1, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.008 };
const at = (turn: number, y = 0.035, board = wide) => ({ place: { x: -0.175, y, turn }, board });

describe('a pair of bolts', () => {
  it('lies straight across the boat, whatever way the block is turned', () => {
    for (const turn of [-0.6, 0, 0.21, 1.1]) {
      const [a, b] = boltsAcross(at(turn), base);
      expect(a!.x).toBeCloseTo(b!.x, 12);
      expect((a!.y + b!.y) / 2).toBeCloseTo(0.035, 12);
    }
  });

  it('keeps its distance from every edge of a turned block', () => {
    for (const turn of [-1.2, -0.5, 0, 0.3, 0.9, 1.5]) {
      for (const bolt of notEmpty(boltsAcross(at(turn), base))) {
        const { along, across } = inPart(at(turn).place, bolt);
        expect(base.halfLength - Math.abs(along)).toBeGreaterThanOrEqual(EDGE - 1e-9);
        expect(base.half - Math.abs(across)).toBeGreaterThanOrEqual(EDGE - 1e-9);
      }
    }
  });

  it('is never wider than helps', () => {
    const [a, b] = boltsAcross(at(0), { ...base, half: 0.3 });
    expect(a!.y - b!.y).toBeCloseTo(0.09, 12);
  });

  it('becomes one bolt in the middle of a block too narrow for two', () => {
    expect(boltsAcross(at(0), { ...base, half: 0.03 })).toEqual([{ x: -0.175, y: 0.035 }]);
  });

  it('stays on a board that ends under the block, and its mirror image too', () => {
    const narrow = { ...wide, widthM: 0.2 };
    const [a, b] = boltsAcross(at(0, 0.07, narrow), base);
    expect(a!.y).toBeCloseTo(0.1 - 0.012, 12);
    expect(b!.y).toBeCloseTo(0.07 - 0.045, 12);
    const mirrored = boltsAcross(at(0, -0.07, narrow), base);
    expect(mirrored.map(({ y }) => -y).reverse()).toEqual([a!.y, b!.y]);
  });
});

describe('bolts and screws of the made-up seat', () => {
  const roomy = { floorWidthM: 0.6 };
  const screwed = workParts(inventedSetOut(roomy).work);
  const bolted = workParts(inventedSetOut({ ...roomy, hardware: ROWS_OF_HOLES }).work);
  const own = (part: (typeof screwed)['kneePad']) => part.holes.map(({ from }) => inPart(part.place, from));

  it('go through the pad under the knee, and through the rest under its middle', () => {
    const under = own(bolted.kneePad).reduce((sum, { along }) => sum + along / 2, 0);
    expect(under).toBeCloseTo(0, 9);
    const { baseFore, baseAft } = bolted.rearRest.shape;
    for (const { along } of own(bolted.rearRest)) {
      expect(along).toBeLessThan(baseFore);
      expect(along).toBeGreaterThan(baseAft);
    }
  });

  it('are four screws near the pad’s corners, inside them', () => {
    const { half, baseFore, baseAft } = screwed.kneePad.shape;
    const screws = own(screwed.kneePad);
    expect(screws).toHaveLength(4);
    for (const { along, across } of screws) {
      expect(half - Math.abs(across)).toBeCloseTo(EDGE, 9);
      expect(Math.min(baseFore - along, along - baseAft)).toBeCloseTo(EDGE, 9);
    }
    const quadrants = new Set(screws.map(({ along, across }) => `${Math.sign(along)} ${Math.sign(across)}`));
    expect(quadrants.size).toBe(4);
  });

  it('are two screws along the rest, inside it', () => {
    const [a, b] = own(screwed.rearRest);
    expect(a!.across).toBeCloseTo(-b!.across, 9);
    expect(screwed.rearRest.shape.half - Math.abs(a!.across)).toBeGreaterThanOrEqual(EDGE - 1e-9);
  });
});

describe('how far a hole goes up into its block', () => {
  // Common practice, no source: 30 mm of wood at most, and 8 mm left above the point.
  const shape = { baseFore: 0.1, baseAft: -0.1, topFore: 0.1, topAft: -0.1, half: 0.07 };
  it.each([
    [0.05, 0.03],
    [0.038, 0.03],
    [0.03, 0.022],
    [0.005, 0],
  ])('of %f m: %f m', (height, depth) => {
    const block = { ...shape, foreHeight: height, aftHeight: height };
    const hole = holeAt({ ...at(0), shape: block }, { x: -0.175, y: 0.035 }, 0.0065);
    expect(hole.to.z - wide.heightM).toBeCloseTo(depth, 12);
    // A bolt's head and washer stand out 6 mm under a board of 8 mm.
    expect(hole.from.z - wide.heightM).toBeCloseTo(-0.014, 12);
  });
});
