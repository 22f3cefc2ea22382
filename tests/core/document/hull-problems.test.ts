import { describe, expect, it } from 'vitest';
import { hullSchema } from '../../../core/document/boat-schema.ts';
import type { HullSource } from '../../../core/document/hull-kinds-schema.ts';
import { hullProblems } from '../../../core/document/hull-problems.ts';
import { hullOrNot } from '../../../core/hull/hull-of-boat.ts';

const section: [number, number][] = [
  [0, 0],
  [0.2, 0.05],
  [0.22, 0.3],
];
const offsets = (...xs: number[]): HullSource => ({
  kind: 'offsets',
  stations: xs.map((xM) => ({ xM, section })),
});
const tape = (
  change: (station: { xM: number; sheerM: number; sheerBeamM: number }, i: number) => object,
): HullSource => ({
  kind: 'tape',
  lengthM: 5,
  stations: [-2, -1, 0, 1, 2].map((xM, i) => {
    const station = { xM, keelM: 0, sheerM: 0.3, sheerBeamM: 0.4, beams: [] };
    return { ...station, ...change(station, i) };
  }),
});
const built = (hull: HullSource) => hullOrNot({ hull, name: 'probe', correction: null }).kind;

describe('what keeps a hull document from being a hull', () => {
  it('is nothing for a sound table or tape, and the hull can then be made', () => {
    for (const hull of [offsets(-2, 0, 2), tape(() => ({}))]) {
      expect(hullProblems(hull)).toEqual([]);
      expect(built(hull)).toBe('hull');
    }
  });

  it('is two stations at one place', () => {
    const twice = offsets(-2, 0, 0, 2);
    expect(hullProblems(twice)).toMatchObject([{ path: ['stations', 2] }]);
    expect(built(twice)).toBe('no-hull');
    expect(hullProblems(tape((_, i) => (i === 3 ? { xM: 0 } : {})))).toMatchObject([
      { path: ['stations', 3, 'xM'] },
    ]);
  });

  it('is a sheer below the keel, a hull without breadth, a tape beyond the boat', () => {
    const falling: HullSource = {
      kind: 'offsets',
      stations: [-2, 0, 2].map((xM) => ({ xM, section: [...section].reverse() })),
    };
    expect(hullProblems(falling).length).toBeGreaterThan(0);
    expect(built(falling)).toBe('no-hull');
    expect(hullProblems(tape((_, i) => (i === 2 ? { sheerM: 0.02, keelM: 0.1 } : {})))).toMatchObject([
      { path: ['stations', 2, 'sheerM'] },
    ]);
    expect(hullProblems(tape(() => ({ sheerBeamM: 0 })))).toMatchObject([{ path: ['stations'] }]);
    const beyond = { ...tape(() => ({})), lengthM: 1 } as HullSource;
    expect(hullProblems(beyond)).toMatchObject([{ path: ['stations'] }]);
    // Stations at the very ends of the boat are on it: −1, 0 and 1 of 2 m.
    expect(hullProblems({ ...tape(() => ({})), lengthM: 2 } as HullSource)).toEqual([]);
  });

  it('is told by the schema, at its place in the document', () => {
    const read = hullSchema.safeParse(offsets(-2, 0, 0, 2));
    expect(read.error?.issues).toMatchObject([{ code: 'custom', path: ['stations', 2] }]);
  });
});
