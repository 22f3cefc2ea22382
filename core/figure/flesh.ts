/**
 * Outlines of flesh as shares of stature, for drawing only: this project's own estimates, the same for everybody, so that
 * the drawing says nothing of anyone's weight. Joint centres and lengths come from the body estimate.
 *
 * A girth is [share of the way from joint to joint, radius, how far it bulges to the flexing side].
 */
export type Girth = readonly [at: number, radius: number, bulge: number];

/** Girths of limbs from joint to joint: radii and bulges as shares of stature. */
export const FLESH = {
  thigh: [
    [0, 0.0465, 0],
    [0.22, 0.0455, 0],
    [0.5, 0.039, -0.002],
    [0.8, 0.031, -0.001],
    [1, 0.0295, 0],
  ],
  shank: [
    [0, 0.0285, 0],
    [0.12, 0.0275, 0.003],
    [0.3, 0.0315, 0.011],
    [0.55, 0.026, 0.006],
    [0.8, 0.0185, 0],
    [1, 0.019, 0],
  ],
  upperArm: [
    [0, 0.031, 0],
    [0.25, 0.0285, 0],
    [0.55, 0.0245, 0.001],
    [0.85, 0.0205, 0],
    [1, 0.0205, 0],
  ],
  forearm: [
    [0, 0.0205, 0],
    [0.22, 0.0235, 0.001],
    [0.5, 0.0195, 0],
    [0.78, 0.0145, 0],
    [0.86, 0.014, 0],
  ],
} as const satisfies Record<string, readonly Girth[]>;

/** One level of the trunk: share of the way from mid-hip to mid-shoulder, half-width to the balls, their radius, how far ahead. */
export type TrunkLevel = readonly [at: number, half: number, radius: number, ahead: number];

/** The trunk from below the hips to the shoulders. */
export const TRUNK: readonly TrunkLevel[] = [
  [-0.06, 0.05, 0.043, -0.012],
  [0.06, 0.051, 0.0475, -0.013],
  [0.2, 0.043, 0.049, -0.004],
  [0.4, 0.03, 0.0475, 0.003],
  [0.6, 0.042, 0.0525, 0.005],
  [0.78, 0.055, 0.052, 0.004],
  [0.9, 0.068, 0.045, 0.001],
  [1.0, 0.085, 0.032, -0.001],
];

/** Points of the head as shares of stature: how far below the crown, how far ahead of the neck's line, radius. */
export const HEAD = {
  back: [0.0425, -0.0125, 0.0425],
  forehead: [0.0455, 0.0125, 0.04],
  cheek: [0.082, 0.02, 0.0275],
  chin: [0.113, 0.031, 0.0115],
  jaw: [0.098, 0.002, 0.0205],
  nape: [0.0935, -0.0135, 0.025],
  bridge: [0.062, 0.047, 0.0045],
  nose: [0.0785, 0.0555, 0.005],
  lip: [0.089, 0.043, 0.0065],
} as const satisfies Record<string, readonly [number, number, number]>;

/** Radii of neck, feet and hands as shares of stature. */
export const SMALL = {
  neck: 0.028,
  collar: 0.034,
  knee: 0.0295,
  ankle: 0.019,
  heel: 0.0175,
  instep: 0.0165,
  ball: 0.0135,
  toe: 0.0085,
  fist: 0.0185,
  thumb: 0.009,
} as const;
