import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOffsets, MOST_POINTS } from '../../../core/document/check-offsets.ts';
import type { Message } from '../../../core/document/message.ts';
import type { SectionPoint, Station } from '../../../core/hull/hull.ts';
import { hullFromOffsets } from '../../../core/hull/hull-from-offsets.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import type { Words } from '../../../core/text/words.ts';
import { cases } from '../../cases.ts';
import { english } from '../../english.ts';
import { madeHull } from './made-hull.ts';

/** A problem as it is read. */
const said = ({ key, values }: Message) => (english as Words).say(key, values);

const SEED = 41;

const boxSection: SectionPoint[] = [
  [0.25, 0],
  [0.25, 0.4],
];
const boxStations: Station[] = [-2.5, 0, 2.5].map((x) => ({ x, section: boxSection }));

describe('hullFromOffsets', () => {
  it('sorts stations, measures the hull, keeps copies', () => {
    const stations = [boxStations[2]!, boxStations[0]!, boxStations[1]!].map(({ x, section }) => ({
      x,
      section: section.map(([y, z]): [number, number] => [y, z]),
    }));
    const hull = madeHull({ name: 'box', stations });
    stations[0]!.section[0]![0] = 99;
    expect(hull.name).toBe('box');
    expect(hull.stations.map((s) => s.x)).toEqual([-2.5, 0, 2.5]);
    expect(hull.stations[2]!.section).toEqual(boxSection);
    expect([hull.aftX, hull.foreX, hull.length]).toEqual([-2.5, 2.5, 5]);
    expect([hull.lowestZ, hull.highestZ]).toEqual([0, 0.4]);
  });

  it('starts solves from volumes at even levels', () => {
    const { levelVolumes } = madeHull({ name: 'box', stations: boxStations });
    expect(levelVolumes[0]).toBe(0);
    levelVolumes.forEach((v, i) => {
      expect(v).toBeCloseTo((i / (levelVolumes.length - 1)) * 5 * 0.5 * 0.4, 12);
    });
  });

  it('takes an end that closes to one point, and stations of different point counts, without changing their shape', () => {
    const stations: Station[] = [
      { x: -1, section: [[0, 0.1]] },
      {
        x: 0,
        section: [
          [0, 0],
          [0.1, 0.02],
          [0.2, 0.1],
          [0.25, 0.3],
        ],
      },
      {
        x: 0.5,
        section: [
          [0, 0],
          [0.2, 0.3],
        ],
      },
      {
        x: 1,
        section: [
          [0, 0],
          [0, 0.3],
        ],
      },
    ];
    const hull = madeHull({ name: 'odd', stations, between: 'chords' });
    expect(hull.rows.points).toBe(4);
    // The V of x = .5 keeps its area whatever points were laid on its edge.
    const at = hull.rows.count - 3;
    expect(hull.rows.x[at]).toBe(0.5);
    expect(2 * hull.rows.area[(at + 1) * 4 - 1]!).toBeCloseTo(0.2 * 0.3, 12);
  });

  it('two hulls share nothing that a computation changes', () => {
    const [a, b] = [1, 2].map(() => madeHull({ name: 'box', stations: boxStations }));
    const before = immersedProperties(a!, { draft: 0.1, trim: 0, heel: 0 });
    immersedProperties(b!, { draft: 0.3, trim: 0.01, heel: 0.2 });
    expect(immersedProperties(a!, { draft: 0.1, trim: 0, heel: 0 })).toEqual(before);
    expect(a!.scratch.values).not.toBe(b!.scratch.values);
  });

  it('gives the first problem of a table that is no hull as a value', () => {
    const stations = [
      boxStations[0]!,
      {
        x: 0,
        section: [
          [-0.1, 0],
          [0.2, 0.3],
        ] as SectionPoint[],
      },
      boxStations[2]!,
    ];
    expect(hullFromOffsets({ name: 'bad', stations })).toEqual({
      kind: 'no-hull',
      station: 1,
      reason: { key: 'offsets.half-negative' },
    });
  });
});

describe('checkOffsets', () => {
  const withStation = (station: Station) => checkOffsets([boxStations[0]!, station, boxStations[2]!]);

  it('finds nothing wrong with a box', () => {
    expect(checkOffsets(boxStations)).toEqual([]);
  });

  it.each([
    ['too few stations', boxStations.slice(0, 2), null, null, /2 stations; at least 3/],
    ['no stations', [], null, null, /at least 3/],
    ['a station twice', [...boxStations, boxStations[1]!], 3, null, /Same place as station 2/],
    [
      'no water in it',
      boxStations.map(({ x }) => ({
        x,
        section: [
          [0, 0],
          [0, 1],
        ] as SectionPoint[],
      })),
      null,
      null,
      /Every breadth is 0/,
    ],
  ] as const)('%s', (_, stations, station, row, message) => {
    const [problem, ...rest] = checkOffsets(stations);
    expect(rest).toEqual([]);
    expect(problem).toMatchObject({ station, row });
    expect(said(problem!)).toMatch(message);
  });

  it.each([
    ['place', { x: Number.NaN, section: boxSection }, null, /place: a number/],
    [
      'breadth',
      {
        x: 0,
        section: [
          [Number.NaN, 0],
          [0.2, 0.3],
        ],
      },
      0,
      /half-breadth: a number/,
    ],
    [
      'negative',
      {
        x: 0,
        section: [
          [0, 0],
          [-0.2, 0.3],
        ],
      },
      1,
      /half-breadth is negative/,
    ],
    [
      'height',
      {
        x: 0,
        section: [
          [0, 0],
          [0.2, Number.POSITIVE_INFINITY],
        ],
      },
      1,
      /height: a number/,
    ],
    [
      'absurd',
      {
        x: 0,
        section: [
          [0, 0],
          [0.2, 1e9],
        ],
      },
      1,
      /height: a number in metres/,
    ],
    ['one point', { x: 0, section: [[0.1, 0]] }, null, /needs keel and sheer/],
    ['empty', { x: 0, section: [] }, null, /needs keel and sheer/],
    [
      'upside down',
      {
        x: 0,
        section: [
          [0.2, 0.3],
          [0, 0],
        ],
      },
      1,
      /sheer must be last, above/,
    ],
  ] as [string, Station, number | null, RegExp][])('%s', (_, station, row, message) => {
    const problems = withStation(station);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ station: 1, row });
    expect(said(problems[0]!)).toMatch(message);
  });

  it('lists every problem, not the first alone', () => {
    expect(
      withStation({
        x: 0,
        section: [
          [-1, 0],
          [-1, Number.NaN],
        ],
      }),
    ).toHaveLength(3);
  });

  it('takes a long table of short stations', () => {
    const stations = Array.from({ length: 150_000 }, (_, i) => ({ x: i / 1000, section: boxSection }));
    expect(checkOffsets(stations)).toEqual([]);
  });

  it('refuses a table too large to handle', () => {
    const section = Array.from({ length: 1001 }, (_, i): SectionPoint => [0.1, i / 1000]);
    const stations = Array.from({ length: Math.ceil(MOST_POINTS / 1000) }, (_, x) => ({ x, section }));
    expect(said(checkOffsets(stations)[0]!)).toMatch(/too many/);
  });

  it(`agrees with hullFromOffsets on random tables, seed ${SEED}`, () => {
    const number = fc.oneof(
      fc.double({ min: -1, max: 2, noNaN: true }),
      fc.constant(Number.NaN),
      fc.constant(0),
    );
    const stations = fc.array(
      fc.record({ x: number, section: fc.array(fc.tuple(number, number), { maxLength: 4 }) }),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(stations, (table) => {
        const sound = checkOffsets(table).length === 0;
        const built = hullFromOffsets({ name: 'random', stations: table }).kind === 'hull';
        expect(built).toBe(sound);
      }),
      { seed: SEED, numRuns: cases(100, 400) },
    );
  });
});
