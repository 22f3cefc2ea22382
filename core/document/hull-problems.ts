import { checkOffsets } from './check-offsets.ts';
import type { HullSource, OffsetsHull, TapeHull } from './hull-kinds-schema.ts';
import type { Message } from './message.ts';

/** Something in a hull document that each field allows but that makes no hull. */
export interface HullProblem extends Message {
  /** Where in the hull document. */
  readonly path: readonly (string | number)[];
}

/** Fewest measured stations within the length of a hull by tape. */
const FEWEST_MEASURED = 2;

/**
 * Everything beyond the limits of single fields that keeps a document from being a hull. Empty: it makes a hull. Metres, boat
 * frame. Two stations at one place give one problem.
 */
export function hullProblems(hull: HullSource): HullProblem[] {
  if (hull.kind === 'usual') return [];
  return hull.kind === 'offsets' ? offsetsProblems(hull) : tapeProblems(hull);
}

/** Problems of a table of offsets, each at its field. */
function offsetsProblems({ stations }: OffsetsHull): HullProblem[] {
  const problems = checkOffsets(stations.map(({ xM, section }) => ({ x: xM, section })));
  return problems.map(({ station, row, ...message }) => ({
    path: [
      'stations',
      ...(station === null ? [] : [station]),
      ...(station === null || row === null ? [] : ['section', row]),
    ],
    ...message,
  }));
}

/** Problems of a taped hull: two stations at one place, a sheer under its keel. */
function tapeProblems({ lengthM, stations }: TapeHull): HullProblem[] {
  const problems: HullProblem[] = [];
  const tell = (station: number, field: string, message: Message) =>
    problems.push({ path: ['stations', station, field], ...message });
  const seen = new Map<number, number>();
  stations.forEach(({ xM, keelM, sheerM }, i) => {
    const first = seen.get(xM);
    if (first === undefined) seen.set(xM, i);
    else tell(i, 'xM', { key: 'offsets.same-place', values: { other: first + 1 } });
    if (sheerM <= keelM) tell(i, 'sheerM', { key: 'offsets.sheer' });
  });
  const within = stations.filter(({ xM }) => Math.abs(xM) <= lengthM / 2);
  if (within.length < FEWEST_MEASURED) {
    problems.push({ path: ['stations'], key: 'offsets.beyond' });
  }
  if (!stations.some(({ sheerBeamM, beams }) => sheerBeamM > 0 || beams.some(({ beamM }) => beamM > 0))) {
    problems.push({ path: ['stations'], key: 'offsets.no-breadth' });
  }
  return problems;
}
