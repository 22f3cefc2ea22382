import type { StatedSex } from '../body/sex.ts';
import { along, cross, dot, norm, plus, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import type { FigurePoint } from '../posture/stance.ts';
import type { BodyForm, Section } from './form.ts';

/** The parts of a body estimate that the figure is drawn from. Metres. */
export interface FigureBody {
  /** Metres. */
  readonly stature: number;
  readonly sex: StatedSex;
  /** Metres; of all lengths the figure reads the knee's alone. */
  readonly lengths: { readonly kneeRadius: { readonly value: number } };
}

/** A stance's points (boat frame, metres) and the body that takes it, with what is drawn from both. */
export interface Posed {
  /** Joints and ends of the stance, metres, in the caller's frame. */
  readonly points: Readonly<Record<FigurePoint, Vec3>>;
  readonly body: FigureBody;
  /** Sections of trunk and limbs, per metre of stature. */
  readonly form: BodyForm;
  /** How many sections are faired in between two that the form gives. */
  readonly between: number;
  /** Hands that hold nothing are open. */
  readonly open: boolean;
}

/** What a piece is part of, for tones: of a pair, the one nearer the eye is darker. */
export type Limb = 'kneelingLeg' | 'frontLeg' | 'lowerArm' | 'topArm' | 'trunk' | 'head';

/** What is seen of a body part. */
export type Cover = 'skin' | 'top' | 'shorts' | 'hair';

/** Flesh of one cover: chains of ovals, neighbours joined by their tight hull, and hulls round several; together one area. */
export interface Flesh {
  /** Skin or cloth: it chooses the tone. */
  readonly cover: Cover;
  /** Rows of ovals, each row joined from one oval to the next like a sleeve. */
  readonly chains: readonly (readonly Oval[])[];
  /** Groups of ovals, each drawn as the one convex outline round them all. */
  readonly hulls?: readonly (readonly Oval[])[];
  /** The limb whose tone it has, where that is not the piece's own. */
  readonly limb?: Limb;
}

/** A round end of a piece, drawn without a line where it lies on a neighbour drawn before it. Metres. */
export interface Opening {
  /** Middle of the opening, metres. */
  readonly at: Vec3;
  /** Half its width, metres. */
  readonly radius: number;
  /** The neighbour's name. */
  readonly into: string;
  /** The neighbour's cover there. */
  readonly cover: Cover;
}

/** One piece of the figure in space, boat frame, metres. */
export interface BodyPart {
  /** `draw-order.ts` and the openings find a part by its name. */
  readonly name: string;
  /** The limb that it belongs to; far limbs are toned down as a whole. */
  readonly limb: Limb;
  /** Lines that decide whether it is before or behind others, metres. */
  readonly bones: readonly (readonly [Vec3, Vec3])[];
  /** How far flesh reaches from the bones, metres. */
  readonly girth: number;
  /** What is filled and outlined. */
  readonly flesh: readonly Flesh[];
  /** Where it grows out of a neighbour drawn before it: no line is drawn there. */
  readonly joins: readonly Flesh[];
  /** Joins are drawn only where this line is seen from its side; without it they always are. */
  readonly joinsAlong?: readonly [Vec3, Vec3];
  /** Places where its outline is left open, because the flesh goes on in a neighbour. */
  readonly opens?: readonly Opening[];
  /** Lines within it, drawn where they are seen from their side. */
  readonly lines?: readonly (readonly Vec3[])[];
}

/** A vector of length 1; of nothing, toward the bow. */
export function unit(v: Vec3): Vec3 {
  const length = norm(v);
  return length > 1e-9 ? scale(v, 1 / length) : { x: 1, y: 0, z: 0 };
}

/** The part of `v` that stands square to the unit vector `axis`, as a unit vector. */
export function squareTo(v: Vec3, axis: Vec3): Vec3 {
  return unit(subtract(v, scale(axis, dot(v, axis))));
}

/** Where sums of vectors begin. */
const NOTHING: Vec3 = { x: 0, y: 0, z: 0 };

/** A ball. */
export function ball(at: Vec3, radius: number): Oval {
  return {
    at,
    axes: [
      { x: radius, y: 0, z: 0 },
      { x: 0, y: radius, z: 0 },
      { x: 0, y: 0, z: radius },
    ],
  };
}

/** A flat oval across a limb: half-breadth along one unit vector, half-depth along another. */
export function disc(
  at: Vec3,
  [across, breadth]: readonly [Vec3, number],
  [ahead, depth]: readonly [Vec3, number],
): Oval {
  return { at, axes: [scale(across, breadth), scale(ahead, depth), NOTHING] };
}

/** All ovals of some flesh. */
export function ovalsOf({ chains, hulls = [] }: Flesh): Oval[] {
  return [...chains.flat(), ...hulls.flat()];
}

/** A limb's bone with the direction of its front (a unit vector square to it). */
export interface Bone {
  /** Near end, metres: the hip of a thigh. */
  readonly from: Vec3;
  /** Far end, metres: the knee of a thigh. */
  readonly to: Vec3;
  /** Unit vector across the bone toward the side that its sections call the front. */
  readonly front: Vec3;
  /** Of the whole figure, metres: sections are shares of it. */
  readonly stature: number;
}

/** How finely a figure is drawn: for a screen, or for paper and full size. */
export type Fineness = 'screen' | 'paper';

/** Fair sections put between two of a table. */
export const BETWEEN = { screen: 1, paper: 2 } as const satisfies Record<Fineness, number>;

/** The ovals across a limb, from its first joint to its last. */
export function limbOvals({ from, to, front, stature }: Bone, sections: readonly Section[]): Oval[] {
  const across = cross(front, unit(subtract(to, from)));
  return sections.map(([at, breadth, depth, ahead]) => {
    const centre = plus(along(from, to, at), ahead * stature, front);
    return disc(centre, [across, breadth * stature], [front, depth * stature]);
  });
}
