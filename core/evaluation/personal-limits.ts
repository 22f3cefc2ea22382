import type { LimitedJoint } from '../document/athlete-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { UPRIGHT_DEG } from '../posture/joint-limits.ts';
import { toRadians } from '../units/angle.ts';
import type { BandRule } from './bands.ts';
import type { QuantityId } from './quantities.ts';

/** The key of the source of a band that an athlete's own limit narrowed. */
export const PERSONAL_LIMIT = 'personal-limit';

/**
 * Least width of a band beside a personal limit, radians (estimate): where the usual band leaves less, its other edge moves. A
 * knee that must not bend past 50° is never within the usual 60° to 125°; a narrower band would call every setting wrong.
 */
const LEAST_ROOM = toRadians(20);

/** How a personal limit (degrees of motion) bounds quantities (radians, included angles), and from which side. */
interface Bound {
  readonly quantities: readonly QuantityId[];
  /** Which edge of the band it moves. */
  readonly edge: 'min' | 'max';
  /** The quantity at so many degrees of motion, radians. */
  readonly at: (deg: number) => number;
  /** The limit holds the other way as well. */
  readonly bothWays?: true;
}

/**
 * Flexion is counted from the straight limb, quantities are included angles: 130° of flexion are 50° between the
 * bones.
 */
const LIMIT_OF: Readonly<Record<LimitedJoint, Bound>> = {
  kneelingKneeFlexion: { quantities: ['kneelingKnee'], edge: 'min', at: (d) => toRadians(180 - d) },
  frontKneeFlexion: { quantities: ['frontKnee'], edge: 'min', at: (d) => toRadians(180 - d) },
  kneelingHipExtension: { quantities: ['kneelingHip'], edge: 'max', at: (d) => toRadians(180 + d) },
  frontHipFlexion: { quantities: ['frontHip'], edge: 'min', at: (d) => toRadians(180 - d) },
  rearAnklePlantarflexion: { quantities: ['rearAnkle'], edge: 'max', at: (d) => toRadians(90 + d) },
  frontAnkleDorsiflexion: { quantities: ['frontAnkle'], edge: 'min', at: (d) => toRadians(90 - d) },
  trunkForward: { quantities: ['trunkPitch', 'strokeLean'], edge: 'max', at: toRadians },
  trunkSideways: {
    quantities: ['trunkRoll'],
    edge: 'max',
    at: (d) => toRadians(Math.max(UPRIGHT_DEG, d)),
    bothWays: true,
  },
};

/**
 * Narrows a rule by the athlete's own limits; past a personal limit the finding says stop, also where the limit lies outside the
 * band. A limit beyond the band's other edge moves that edge: a band is never empty, and a limit never makes it narrower than 20°.
 */
export function withPersonalLimits<Rule extends BandRule & { readonly reason: string }>(
  rule: Rule,
  seat: Seat,
): Rule {
  let narrowed = rule;
  for (const { joint, maxDeg, reason } of seat.athlete?.limits ?? []) {
    const bound = LIMIT_OF[joint];
    if (!bound.quantities.includes(rule.quantity)) continue;
    const at = bound.at(maxDeg);
    const own = { reason, source: "coach's own" as const, sourceKey: PERSONAL_LIMIT };
    const { min, max, stopMin, stopMax } = narrowed;
    const stops =
      bound.edge === 'min' ? { stopMin: at } : { stopMax: at, ...(bound.bothWays && { stopMin: -at }) };
    const isWithin = (low: number | null | undefined, high: number | null | undefined) =>
      bound.edge === 'min' ? at > (low ?? Number.NEGATIVE_INFINITY) : at < (high ?? Number.POSITIVE_INFINITY);
    if (isWithin(min, max)) narrowed = { ...narrowed, ...own, [bound.edge]: at, ...stops };
    else if (isWithin(stopMin, stopMax)) narrowed = { ...narrowed, ...stops, stopBy: own };
  }
  return narrowed.sourceKey === PERSONAL_LIMIT ? withRoom(narrowed) : narrowed;
}

/** The band with room beside the edge that a limit set: the other edge steps aside. */
function withRoom<Rule extends BandRule>(rule: Rule): Rule {
  const { min, max, stopMin, stopMax } = rule;
  if (min === null || max === null || max - min >= LEAST_ROOM) return rule;
  if (stopMin === min) return { ...rule, max: min + LEAST_ROOM };
  return { ...rule, min: Math.max(stopMin ?? Number.NEGATIVE_INFINITY, (stopMax ?? max) - LEAST_ROOM) };
}
