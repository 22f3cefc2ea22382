import { checkOffsets } from './check-offsets.ts';
import type { HullSource, OffsetsHull, TapeHull } from './hull-kinds-schema.ts';

/** Something in a hull document that its fields allow one by one but that no hull can be. */
export interface HullProblem {
  /** Where in the hull document. */
  readonly path: readonly (string | number)[];
  readonly message: string;
}

/** Measured stations that a hull by tape must at least have within its length, sheer above keel. */
const FEWEST_MEASURED = 2;

/**
 * Everything in a hull document beyond the limits of its single fields that keeps it from being a hull; an empty list
 * means that one can be made of it. Metres, boat frame. Two stations at one place, for one, give one problem.
 */
export function hullProblems(hull: HullSource): HullProblem[] {
  if (hull.kind === 'usual') return [];
  return hull.kind === 'offsets' ? offsetsProblems(hull) : tapeProblems(hull);
}

function offsetsProblems({ stations }: OffsetsHull): HullProblem[] {
  const problems = checkOffsets(stations.map(({ xM, section }) => ({ x: xM, section })));
  return problems.map(({ station, row, message }) => ({
    path: [
      'stations',
      ...(station === null ? [] : [station]),
      ...(station === null || row === null ? [] : ['section', row]),
    ],
    message,
  }));
}

function tapeProblems({ lengthM, stations }: TapeHull): HullProblem[] {
  const problems: HullProblem[] = [];
  const say = (station: number, field: string, message: string) =>
    problems.push({ path: ['stations', station, field], message });
  const seen = new Map<number, number>();
  stations.forEach(({ xM, keelM, sheerM }, i) => {
    const first = seen.get(xM);
    if (first === undefined) seen.set(xM, i);
    else say(i, 'xM', `this station stands where station ${first + 1} does`);
    if (sheerM <= keelM) say(i, 'sheerM', 'the sheer must be higher than the keel');
  });
  const within = stations.filter(({ xM }) => Math.abs(xM) <= lengthM / 2);
  if (within.length < FEWEST_MEASURED) {
    problems.push({
      path: ['stations'],
      message: 'the stations lie beyond the length; two or more must lie within it',
    });
  }
  if (!stations.some(({ sheerBeamM, beams }) => sheerBeamM > 0 || beams.some(({ beamM }) => beamM > 0))) {
    problems.push({ path: ['stations'], message: 'every beam is 0: the hull holds no water' });
  }
  return problems;
}
