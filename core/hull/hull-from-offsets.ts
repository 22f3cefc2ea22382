import type { Hull, HullStation } from './hull.ts';

/** A table of offsets: stations in any order, each a half-section of [y, z] pairs, keel to sheer. Metres, boat frame. */
export interface Offsets {
  readonly name: string;
  readonly stations: readonly {
    readonly x: number;
    readonly section: readonly (readonly [number, number])[];
  }[];
}

/** What is wrong with one station of a table of offsets. */
export interface OffsetsProblem {
  readonly station: number;
  readonly point: number | null;
  readonly message: string;
}

/** Lists everything wrong with a table of offsets; empty when a hull can be made of it. */
export function checkOffsets({ stations }: Offsets): OffsetsProblem[] {
  const problems: OffsetsProblem[] = [];
  if (stations.length < 3) {
    problems.push({ station: 0, point: null, message: 'a hull needs three stations or more' });
  }
  const seen = new Set<number>();
  stations.forEach(({ x, section }, station) => {
    const say = (message: string, point: number | null = null) => problems.push({ station, point, message });
    if (!Number.isFinite(x)) say('the station’s x must be a number');
    if (seen.has(x)) say(`another station already stands at x = ${x}`);
    seen.add(x);
    if (section.length < 2) say('a section needs two points or more, keel to sheer');
    section.forEach(([y, z], point) => {
      if (!Number.isFinite(y) || !Number.isFinite(z)) say('y and z must be numbers', point);
      else if (y < 0) say('half-breadths must not be negative', point);
      else if (point > 0 && z < section[point - 1]![1])
        say('heights must not fall from keel to sheer', point);
    });
  });
  return problems;
}

/**
 * A hull from its table of offsets. Throws RangeError naming the first problem when the table cannot be a hull; use
 * `checkOffsets` to list them all.
 */
export function hullFromOffsets(offsets: Offsets): Hull {
  const [problem] = checkOffsets(offsets);
  if (problem) throw new RangeError(`${offsets.name}, station ${problem.station + 1}: ${problem.message}`);
  const stations: HullStation[] = offsets.stations
    .map(({ x, section }) => ({
      x,
      y: Float64Array.from(section, ([y]) => y),
      z: Float64Array.from(section, ([, z]) => z),
    }))
    .sort((a, b) => a.x - b.x);
  const aftEnd = stations[0]!.x;
  const foreEnd = stations.at(-1)!.x;
  return { name: offsets.name, length: foreEnd - aftEnd, aftEnd, foreEnd, stations };
}
