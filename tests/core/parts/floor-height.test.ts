import { describe, expect, it } from 'vitest';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { floorHeightAt } from '../../../core/parts/floor-height.ts';
import { exampleBoat, exampleSeat } from '../example/example-fit.ts';

const board = { heightM: 0.03, widthM: 0.24, aftEndXM: -1.5, foreEndXM: 1.5 };
const profile = [
  { xM: 1.2, heightM: 0.06 },
  { xM: -1.2, heightM: 0.04 },
  { xM: 0, heightM: 0.03 },
];

describe('the height of a floorboard', () => {
  it('is the one height where there is no profile', () => {
    expect(floorHeightAt(board, -1)).toBe(0.03);
    expect(floorHeightAt({ ...board, profile: [] }, 5)).toBe(0.03);
  });

  it.each([
    [-1.2, 0.04],
    [0, 0.03],
    [1.2, 0.06],
    [0.4, 0.04],
    [-0.6, 0.035],
    [-3, 0.04],
    [3, 0.06],
  ])('at %d m follows the profile, points in any order: %d m', (x, height) => {
    expect(floorHeightAt({ ...board, profile }, x)).toBeCloseTo(height, 12);
  });

  it('jumps where two points stand at one place', () => {
    const step = [
      { xM: 0, heightM: 0.03 },
      { xM: 0, heightM: 0.05 },
      { xM: 1, heightM: 0.05 },
    ];
    expect(floorHeightAt({ ...board, profile: step }, -0.001)).toBe(0.03);
    expect(floorHeightAt({ ...board, profile: step }, 0.001)).toBeCloseTo(0.05, 9);
  });

  it('is each seat’s own at its mark', () => {
    const two = exampleBoat(2);
    const boat = { ...two, floorboard: { ...two.floorboard, profile } };
    const [bow, stern] = [0, 1].map((index) => seatFrame(boat, exampleSeat(), index).floorZ);
    expect(bow).toBeCloseTo(0.03 + 0.03 * (0.575 / 1.2), 12);
    expect(stern).toBeCloseTo(0.03 + 0.01 * (0.575 / 1.2), 12);
  });
});
