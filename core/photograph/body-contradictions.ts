import { BODY_LENGTHS, type BodyLength } from '../body/body.ts';
import type { PostureProblem } from './posture-problem.ts';

/** A length of the body that the marks show otherwise than tape and survey have it, metres. */
export interface Contradiction {
  /** Which length it is. */
  readonly length: BodyLength;
  /** As the marks show it. */
  readonly seen: number;
  /** As tape and survey have it. */
  readonly taken: number;
  /** Seen over taken, less one: 0.12 is 12 % longer. */
  readonly share: number;
  /** How many standard deviations of both together lie between the two. */
  readonly sigmas: number;
}

/** From so many standard deviations on it is said: one in four hundred of sound bodies for each length. */
const LEAST_SIGMAS = 3;
/** A length is seen where the marks cut its variance, as loose as it is taken, by at least this share. */
const SEEN_SHARE = 0.5;

/**
 * Lengths that contradict the body, the worst first. `seen` are the lengths after the marks in a problem whose lengths are
 * each doubted by the share `loose` of them more: what the marks say is parted from what was taken before.
 */
export function contradictionsOf(
  { body }: Pick<PostureProblem, 'body'>,
  seen: Readonly<Record<BodyLength, { readonly value: number; readonly sd: number }>>,
  loose: number,
): Contradiction[] {
  return BODY_LENGTHS.flatMap((length): Contradiction[] => {
    const { value: taken, sd } = body.lengths[length];
    const after = seen[length];
    const before = sd ** 2 + (loose * taken) ** 2;
    const gain = 1 - after.sd ** 2 / before;
    if (!(gain > SEEN_SHARE)) return [];
    const alone = taken + (after.value - taken) / gain;
    const own = 1 / (1 / after.sd ** 2 - 1 / before);
    const sigmas = (alone - taken) / Math.sqrt(sd ** 2 + own);
    if (Math.abs(sigmas) < LEAST_SIGMAS) return [];
    return [{ length, seen: alone, taken, share: alone / taken - 1, sigmas: Math.abs(sigmas) }];
  }).sort((a, b) => b.sigmas - a.sigmas);
}
