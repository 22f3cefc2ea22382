import type { Message } from './message.ts';

/** One station of a table of offsets: its place and its half-section, keel to sheer, metres. */
interface Station {
  /** Place along the boat, forward of amidships. */
  readonly x: number;
  readonly section: readonly (readonly [y: number, z: number])[];
}

/** Something wrong with a table of offsets. `station` and `row` count from 0, as given; null when it is the whole. */
export interface OffsetsProblem extends Message {
  /** Index of the station. */
  readonly station: number | null;
  /** Index of the point within its station. */
  readonly row: number | null;
}

/** Most points a prepared hull may hold (stations × points of the fullest): tens of megabytes of numbers. */
export const MOST_POINTS = 500_000;

/** Farthest that any coordinate may lie from the origin, metres. Beyond it the unit is wrong. */
const FARTHEST = 1000;

/** Fewest stations that a hull can be faired through. */
const FEWEST_STATIONS = 3;

/**
 * Everything that keeps a table of offsets from being a hull; an empty list means it is one. Metres. Stations may come in any
 * order. A half-section runs from keel to sheer with y ≥ 0. An end station may be a single point.
 */
export function checkOffsets(stations: readonly Station[]): OffsetsProblem[] {
  const whole = (message: Message): OffsetsProblem => ({ station: null, row: null, ...message });
  if (stations.length < FEWEST_STATIONS) {
    return [whole({ key: 'offsets.few', values: { least: FEWEST_STATIONS, count: stations.length } })];
  }
  const fullest = stations.reduce((most, { section }) => Math.max(most, section.length), 0);
  if (stations.length * fullest > MOST_POINTS) {
    return [whole({ key: 'offsets.many', values: { count: stations.length, points: fullest } })];
  }
  const xs = stations.map((s) => s.x);
  const ends = [xs.reduce((a, b) => Math.min(a, b)), xs.reduce((a, b) => Math.max(a, b))];
  const problems = stations.flatMap((s, i) => stationProblems(s, i, ends.includes(s.x)));
  problems.push(...repeatedStations(xs));
  if (problems.length === 0 && !stations.some(({ section }) => section.some(([y]) => y > 0))) {
    problems.push(whole({ key: 'offsets.no-breadth' }));
  }
  return problems;
}

/** What is wrong within one station. The shape is judged only when all numbers are valid. */
function stationProblems({ x, section }: Station, station: number, isEnd: boolean): OffsetsProblem[] {
  const problems: OffsetsProblem[] = [];
  const tell = (row: number | null, key: string) => problems.push({ station, row, key });
  if (!within(x)) tell(null, 'offsets.station-number');
  section.forEach(([y, z], row) => {
    if (!within(y)) tell(row, 'offsets.half-number');
    else if (y < 0) tell(row, 'offsets.half-negative');
    if (!within(z)) tell(row, 'offsets.height-number');
  });
  if (problems.length > 0) return problems;
  if (section.length < (isEnd ? 1 : 2)) tell(null, 'offsets.two-points');
  else if (!isEnd && section[section.length - 1]![1] <= section[0]![1]) {
    tell(section.length - 1, 'offsets.sheer');
  }
  return problems;
}

/** Whether a number can be a coordinate of a boat at all. */
const within = (value: number) => Number.isFinite(value) && Math.abs(value) <= FARTHEST;

/** Stations that stand at the place of an earlier one. */
function repeatedStations(xs: readonly number[]): OffsetsProblem[] {
  const seen = new Map<number, number>();
  const problems: OffsetsProblem[] = [];
  xs.forEach((x, station) => {
    const first = seen.get(x);
    if (first === undefined) seen.set(x, station);
    else problems.push({ station, row: null, key: 'offsets.same-place', values: { other: first + 1 } });
  });
  return problems;
}
