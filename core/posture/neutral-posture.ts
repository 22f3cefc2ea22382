const deg = (angle: number) => (angle * Math.PI) / 180;

/** Preferred value of a joint or an offset, how far off counts as one unit, and the source. Radians or metres. */
export interface Neutral {
  /** Value in the middle of comfort. */
  readonly at: number;
  /** Same unit, positive. */
  readonly tolerance: number;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';
const TUNED = 'estimate: chosen so that the middle of the usual bands gives the usual posture';

/**
 * The posture that the solve departs from as little as it can. Lengths are for a stature of 1.80 m and scale with stature, so
 * that a body scaled with its boat keeps its angles.
 *
 * A tolerance is one standard deviation between persons: `postureResponse` computes the stance's own doubt from them. Lumbar
 * and pelvic angles of young canoeists at rest vary by 4–7° between persons (López-Miñarro, Muyor, Alacid 2011, J Hum Kinet).
 * Joints that depend on several of these, such as the front knee and hip, have up to twice that (estimates).
 */
export const NEUTRAL = {
  /** Included angle of the front knee: over 110° and well short of straight. */
  frontKnee: { at: deg(118), tolerance: deg(11), source: PRACTICE },
  /** Trunk–hip–thigh of the kneeling side: nearly a straight line in the high kneel. */
  kneelingHip: { at: deg(175), tolerance: deg(8.5), source: TUNED },
  frontHip: { at: deg(95), tolerance: deg(15), source: TUNED },
  /** Pelvic inclination at rest of young canoeists 15.2 ± 4.3°, López-Miñarro, Muyor, Alacid 2011; trunk a little less. */
  trunkPitch: { at: deg(11), tolerance: deg(5), source: 'estimate from López-Miñarro et al. 2011' },
  /** Upright or leaning slightly to the paddling side. */
  trunkRoll: { at: deg(2), tolerance: deg(3), source: PRACTICE },
  pelvisYaw: { at: deg(8), tolerance: deg(7), source: TUNED },
  thighPitch: { at: deg(8), tolerance: deg(7), source: TUNED },
  thighRoll: { at: 0, tolerance: deg(4), source: TUNED },
  /**
   * Centre of mass over the centreline: a balancing paddler keeps it there to a few millimetres, or would have to hold more than a
   * few newton metres all the time (estimate).
   */
  balanceAcross: { at: 0, tolerance: 0.004, source: TUNED },
  /** Preferred place of the centre of mass, as a share of the way from kneeling knee to front ball; tolerance in metres. */
  balanceFore: { at: 0.24, tolerance: 0.025, source: TUNED },
} as const satisfies Record<string, Neutral>;

/** Stature that the lengths above are written for, metres. */
export const NEUTRAL_STATURE = 1.8;

/** Past a limit each 2.5° counts as one unit (estimate). */
export const LIMIT_TOLERANCE = deg(2.5);

/** Missing reach that counts as one unit, metres at `NEUTRAL_STATURE` (estimate). */
export const REACH_TOLERANCE = 0.006;

/**
 * Anatomy limits, one-sided: they cost nothing inside. AAOS handbook values, from memory: hip extension 20–30°, flexion
 * 120°, knee flexion 135°, trunk flexion 80°, side 35°, rotation 45°.
 */
export const LIMITS = {
  kneelingHipMost: deg(200),
  frontHipLeast: deg(60),
  frontKneeLeast: deg(45),
  /** Full kneeling flexion, 142° (Soucie et al. 2011, from memory). */
  kneelingKneeLeast: deg(38),
  /** Toes drawn up by 17° (Soucie et al. 2011, from memory: 13–17°); past it the heel lifts. */
  frontAnkleLeast: deg(73),
  trunkPitchMost: deg(80),
  trunkRollMost: deg(35),
  pelvisYawMost: deg(45),
  /** Kneeling thigh from the vertical, either way: past this the knee no longer bears on the pad (estimate). */
  thighMost: deg(40),
} as const;

/** How the trunk and shoulders are held at catch and exit unless the athlete's own are set. */
export const STROKE_POSTURE = {
  /** Pelvic inclination at the catch 37.6 ± 6.3°, López-Miñarro, Muyor, Alacid 2011. */
  catchPitch: deg(38),
  /** Shoulders turned, paddling side forward (estimate). */
  catchRotation: deg(35),
  exitPitch: deg(12),
  exitRotation: deg(-15),
  readyRotation: deg(6),
} as const;
