import { type Both, type LeftOutMark, leftOutMarks } from './left-out-mark.ts';
import { markSd, type ProblemPoint } from './posture-problem.ts';

/** One mark in so many is bad, as the chance before anything is known of it (estimate). */
const BAD_IN = 10;
/** How far a bad mark lies off, one standard deviation, share of the picture's longer side (estimate: the next joint, or a fold of cloth). */
const BAD_SD_SHARE = 0.03;

/** A mark that counts though it may be bad, and what the posture would be without it. */
export interface DoubtedMark extends LeftOutMark {
  /** Chance that it is bad, given all other marks. */
  readonly chance: number;
}

/**
 * The chance of each mark that counts to be bad after all: a mixture of good marks and of bad ones that lie anywhere about. A
 * mark that the others predict well is known to be good; one that nothing else checks keeps the chance that it had before.
 */
export function doubtedMarks(place: ProblemPoint): DoubtedMark[] {
  const { problem, camerasOf, figureOf } = place.ready;
  const cameras = camerasOf(place.x);
  const { points } = figureOf(place.x);
  return leftOutMarks(place).map((left) => {
    const camera = cameras[left.mark.view]!;
    const longer = Math.max(camera.image.width, camera.image.height);
    const bad = (BAD_SD_SHARE * longer) / markSd(problem, camera, points[left.mark.joint]);
    const { across, down, both } = left.variance;
    const wide = { across: across + bad ** 2, down: down + bad ** 2, both };
    const odds = density(left.off, wide) / (density(left.off, left.variance) * (BAD_IN - 1));
    return { ...left, chance: Number.isFinite(odds) ? odds / (1 + odds) : 1 };
  });
}

/** Density of a normal distribution of two numbers about nothing, but for a factor. */
function density([a, b]: Both, { across, down, both }: LeftOutMark['variance']): number {
  const whole = across * down - both ** 2;
  const square = (down * a ** 2 - 2 * both * a * b + across * b ** 2) / whole;
  return Math.exp(-square / 2) / Math.sqrt(whole);
}

/**
 * What hidden bad marks add to the variance of a value with these slopes by the unknowns: with a mark's chance the posture is the one
 * without it, which lies elsewhere and is less sure.
 */
export function addedVariance(marks: readonly DoubtedMark[], slope: (unknown: number) => number): number {
  return marks.reduce((sum, { chance, off, variance: { across, down, both }, pull }) => {
    let [a, b] = [0, 0];
    pull.forEach((by, i) => {
      a += slope(i) * by[0];
      b += slope(i) * by[1];
    });
    const wider = across * a ** 2 + 2 * both * a * b + down * b ** 2;
    return sum + chance * (wider + (a * off[0] + b * off[1]) ** 2);
  }, 0);
}
