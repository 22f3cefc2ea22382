import type { StatedSex } from '../body/sex.ts';
import { tablesOf } from '../body/sex.ts';
import { fairRows } from '../graphics/fair.ts';
import { keysOf } from '../units/entries.ts';

/**
 * Breadths and depths of a body as shares of stature, for drawing only. From the public release of ANSUR II (US Army 2012;
 * NATICK/TR-15/007): means of its persons with a body-mass index of 21 to 25, 729 men and 622 women; hand and foot
 * breadth of all its persons. Waist and chest breadth are estimates of this project. Everybody of one sex gets the same
 * shares, so that the drawing says nothing of anyone's weight.
 */
interface Breadths {
  /** Front to back at the breast. */
  readonly chestDepth: number;
  /** Side to side at the breast, without the arms. */
  readonly chestBreadth: number;
  /** Side to side at the narrowest. */
  readonly waistBreadth: number;
  /** Front to back at the narrowest. */
  readonly waistDepth: number;
  /** Side to side at the widest, standing. */
  readonly hipBreadth: number;
  /** Front to back, near the hip. */
  readonly thighDepth: number;
  /** Front to back of the kneecap's level. */
  readonly kneeDepth: number;
  /** Round the thickest of the lower leg: a girth, not a breadth. */
  readonly calfGirth: number;
  /** Half of its breadth. */
  readonly neckRadius: number;
  /** Half of the arm's breadth near the shoulder. */
  readonly armRadius: number;
  /** Across the knuckles, without the thumb. */
  readonly handBreadth: number;
  /** Across the ball of the foot. */
  readonly footBreadth: number;
}

/** Shares of stature by sex, drawn by eye after the survey's means: they shape the picture and no figure. */
const BREADTHS: Readonly<Record<'female' | 'male', Breadths>> = {
  male: {
    chestDepth: 0.13,
    chestBreadth: 0.17,
    waistBreadth: 0.15,
    waistDepth: 0.106,
    hipBreadth: 0.186,
    thighDepth: 0.095,
    kneeDepth: 0.062,
    calfGirth: 0.209,
    neckRadius: 0.0325,
    armRadius: 0.0275,
    handBreadth: 0.0503,
    footBreadth: 0.058,
  },
  female: {
    chestDepth: 0.136,
    chestBreadth: 0.156,
    waistBreadth: 0.137,
    waistDepth: 0.1,
    hipBreadth: 0.2,
    thighDepth: 0.097,
    kneeDepth: 0.061,
    calfGirth: 0.214,
    neckRadius: 0.029,
    armRadius: 0.0245,
    handBreadth: 0.048,
    footBreadth: 0.057,
  },
};

/** One section across a limb: where along the bone (0–1), half-breadth, half-depth, how far toward the limb's front. */
export type Section = readonly [at: number, breadth: number, depth: number, ahead: number];

/** The sections of a body from joint to joint, shares of stature, and sizes of what is no limb. */
export interface BodyForm {
  /** From the seat up to the shoulders. */
  readonly trunk: readonly Section[];
  /** From hip to knee. */
  readonly thigh: readonly Section[];
  /** From knee to ankle. */
  readonly shank: readonly Section[];
  /** From shoulder to elbow. */
  readonly upperArm: readonly Section[];
  /** From elbow to wrist. */
  readonly forearm: readonly Section[];
  /** Half of the neck's breadth. */
  readonly neckRadius: number;
  /** Radius of the round end at the top of the arm. */
  readonly shoulderRadius: number;
  /** Half of the knee's depth. */
  readonly kneeRadius: number;
  /** Across the knuckles. */
  readonly handBreadth: number;
  /** Across the ball of the foot. */
  readonly footBreadth: number;
}

/**
 * The form of a body of a stated sex; where it is not stated, half way between both. So many fair sections are put between
 * each two of the tables; made once.
 */
export function formOf(sex: StatedSex, between: number): BodyForm {
  const key = `${sex} ${between}`;
  const known = forms.get(key);
  if (known) return known;
  const tables = tablesOf(sex).map((each) => BREADTHS[each]);
  const mean: Record<keyof Breadths, number> = { ...tables[0]! };
  for (const key of keysOf(mean)) {
    mean[key] = tables.reduce((sum, table) => sum + table[key], 0) / tables.length;
  }
  const made = fairForm(formFrom(mean), between);
  forms.set(key, made);
  return made;
}

/** Forms already made: there are only as many as sexes and finenesses. */
const forms = new Map<string, BodyForm>();

/** The form with sections faired in between, so that outlines bend instead of breaking. */
function fairForm(form: BodyForm, between: number): BodyForm {
  const fair = (sections: readonly Section[]) => fairRows<Section>(sections, between);
  return {
    ...form,
    trunk: fair(form.trunk),
    thigh: fair(form.thigh),
    shank: fair(form.shank),
    upperArm: fair(form.upperArm),
    forearm: fair(form.forearm),
  };
}

/** Sections as multiples of the breadths; how they run between is drawn, not measured. */
function formFrom(b: Breadths): BodyForm {
  return {
    ...armSections(b.armRadius),
    ...legSections(b),
    trunk: trunkSections(b),
    neckRadius: b.neckRadius,
    shoulderRadius: b.armRadius * 1.04,
    kneeRadius: b.kneeDepth / 2,
    handBreadth: b.handBreadth,
    footBreadth: b.footBreadth,
  };
}

/** From below the seat (under mid-hip) to the base of the shoulders (mid-shoulder is 1). */
function trunkSections(b: Breadths): Section[] {
  const [hip, waist, chest] = [b.hipBreadth / 2, b.waistBreadth / 2, b.chestBreadth / 2];
  const [deep, narrow] = [b.chestDepth / 2, b.waistDepth / 2];
  return [
    [-0.2, hip * 0.6, 0.03, -0.03],
    [-0.13, hip * 0.84, 0.05, -0.025],
    [-0.05, hip * 0.96, 0.062, -0.02],
    [0.04, hip, 0.064, -0.015],
    [0.16, hip * 0.93, 0.058, -0.007],
    [0.29, hip * 0.42 + waist * 0.58, 0.03 + narrow * 0.45, -0.001],
    [0.42, waist, narrow, 0.003],
    [0.56, waist * 0.45 + chest * 0.55, narrow * 0.5 + deep * 0.49, 0.003],
    [0.7, chest, deep, 0.001],
    [0.85, chest * 0.99, deep * 0.9, -0.007],
    [0.97, chest * 0.84, deep * 0.7, -0.012],
  ];
}

/**
 * Sections of thigh and shank: place along the bone from 0 to 1, half breadth, half depth, and offset to the front.
 */
function legSections(b: Breadths): Pick<BodyForm, 'thigh' | 'shank'> {
  const thigh = b.thighDepth / 2;
  const knee = b.kneeDepth / 2;
  const calf = b.calfGirth / (2 * Math.PI);
  return {
    thigh: [
      [0, b.hipBreadth * 0.205, thigh * 1.1, -0.001],
      [0.13, b.hipBreadth * 0.23, thigh * 1.12, -0.002],
      [0.3, b.hipBreadth * 0.222, thigh * 1.04, 0.001],
      [0.5, thigh * 0.86, thigh * 0.91, 0.003],
      [0.72, thigh * 0.71, thigh * 0.75, 0.002],
      [0.88, knee * 0.95, knee * 1.04, 0.001],
    ],
    shank: [
      [0.12, knee * 0.9, knee * 0.94, -0.001],
      [0.28, calf, calf * 1.04, -0.008],
      [0.46, calf * 0.88, calf * 0.92, -0.007],
      [0.68, calf * 0.63, calf * 0.68, -0.003],
      [0.87, calf * 0.5, calf * 0.58, -0.001],
      [1, calf * 0.54, calf * 0.62, 0],
    ],
  };
}

/** The same for the arm, from one radius. */
function armSections(r: number): Pick<BodyForm, 'upperArm' | 'forearm'> {
  return {
    upperArm: [
      [0, r * 0.98, r * 1.02, 0],
      [0.18, r * 1.02, r * 1.06, 0],
      [0.45, r * 0.88, r * 0.94, 0.001],
      [0.7, r * 0.78, r * 0.84, 0.001],
      [0.9, r * 0.76, r * 0.74, 0],
      [1, r * 0.76, r * 0.72, 0],
    ],
    forearm: [
      [0, r * 0.76, r * 0.72, 0],
      [0.16, r * 0.9, r * 0.84, 0.001],
      [0.35, r * 0.84, r * 0.78, 0.001],
      [0.65, r * 0.64, r * 0.56, 0],
      [0.88, r * 0.58, r * 0.45, 0],
      [1, r * 0.6, r * 0.46, 0],
    ],
  };
}
