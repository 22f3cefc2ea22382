import { describe, expect, it } from 'vitest';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { exampleBoat } from '../example/example-fit.ts';

describe('the length of a hull', () => {
  it('is the tape’s', () => {
    expect(hullLengthOf(exampleBoat(2).hull)).toBe(6.5);
  });

  it('is from the first to the last station of the offsets, in any order', () => {
    const section: [number, number][] = [
      [0, 0],
      [0.2, 0.3],
    ];
    const stations = [0.5, -2.6, 2.6].map((xM) => ({ xM, section }));
    expect(hullLengthOf({ kind: 'offsets', stations })).toBeCloseTo(5.2, 12);
  });
});
