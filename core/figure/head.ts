import type { StatedSex } from '../body/sex.ts';
import { add, cross, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { fairRows } from '../graphics/fair.ts';
import { type Line, lineThrough, ringThrough } from '../graphics/shape.ts';
import { inView, type ViewName, type ViewPoint } from '../graphics/view.ts';
import { type BodyPart, type Cover, type Posed, squareTo, unit } from './body-part.ts';
import { HAIR, HAIR_OF, type HairStyle } from './hair-outlines.ts';
import { HEAD_OUTLINES } from './head-outlines.ts';

/**
 * Chin to crown over mid-shoulder to crown: the survey's 0.13 of stature (from memory) over its 0.2, at a stature of 1.75 m.
 * Heads differ less than statures do, and a child's is large for its body (from memory): by this power of the ratio.
 */
const HEAD_OF_HEADNECK = 0.65;
const USUAL_HEADNECK = 0.2 * 1.75;
const LESS = 0.3;
/** Paddlers look ahead: the head leans less than half as far as the trunk (estimate). */
const UPRIGHT = 1.6;
/** Middle of the skull's base from the middle of the head, head heights: ahead and up. */
const SKULL = [-0.14, -0.3] as const;

/** The head in space: its middle, its height from chin to crown, and unit vectors. */
export interface Head {
  /** Middle of the head, metres. */
  readonly at: Vec3;
  /** Chin to crown, metres: the unit of its outlines. */
  readonly height: number;
  /** The three axes are unit vectors, square to each other. */
  readonly ahead: Vec3;
  /** Square to `ahead` and `up`, toward the head's own left. */
  readonly port: Vec3;
  /** From the chin to the crown. */
  readonly up: Vec3;
  readonly hair: HairStyle;
}

/** Where the head is and how it looks: toward the bow, more upright than the trunk. */
export function headOf({ midShoulder, headTop }: Posed['points'], sex: StatedSex): Head {
  const neck = subtract(headTop, midShoulder);
  const height = HEAD_OF_HEADNECK * norm(neck) * (USUAL_HEADNECK / norm(neck)) ** LESS;
  const lean = unit(neck);
  const up = unit(add(lean, { x: 0, y: 0, z: UPRIGHT }));
  const ahead = squareTo({ x: 1, y: 0, z: 0 }, up);
  const at = add(headTop, scale(lean, -height / 2));
  return { at, height, ahead, up, port: cross(up, ahead), hair: HAIR_OF[sex] };
}

/** The head as a body part without flesh: it is drawn from its outlines. */
export function headPart(head: Head): BodyPart {
  return {
    name: 'head',
    limb: 'head',
    bones: [[onHead(head, SKULL[0], SKULL[1]), head.at]],
    girth: head.height * 0.4,
    flesh: [],
    joins: [],
  };
}

/** Middle of the skull's base, where the neck ends. */
export function skullOf(head: Head): Vec3 {
  return onHead(head, SKULL[0], SKULL[1]);
}

/** A place on the head's middle plane, by shares of its height. */
function onHead({ at, ahead, up, height }: Head, forward: number, high: number): Vec3 {
  return add(add(at, scale(ahead, forward * height)), scale(up, high * height));
}

/** One closed outline and what covers it. */
interface CoverRing {
  readonly cover: Cover;
  readonly ring: Line;
}

/** Outlines and lines of a head in a view. */
export interface DrawnHead {
  /** Painted first, and outlined. */
  readonly fills: readonly CoverRing[];
  /** Painted over them without a line: the nape's skin, and the hair over it once more. */
  readonly over: readonly CoverRing[];
  /** Lines of the face and the hair. */
  readonly lines: readonly Line[];
}

/** Points of a curve as rows of numbers, as the fairing wants them. */
type Rows = readonly (readonly number[])[];

/** A head's outlines in a view with fair points put between theirs, made once for each count. */
function fairOutline(
  { view, style }: { view: ViewName; style: HairStyle },
  between: number,
): { face: Rows } & Record<'hair' | 'ears' | 'lines', readonly Rows[]> {
  const key = `${view} ${style} ${between}`;
  const known = faired.get(key);
  if (known) return known;
  const { face, ears, lines } = HEAD_OUTLINES[view];
  const over = HAIR[style][view];
  const ring = (curve: Rows) => fairRows(curve, between, true);
  const made = {
    face: ring(face),
    hair: over.hair.map(ring),
    ears: over.ears ? ears.map(ring) : [],
    lines: [...lines, ...over.lines].map((line) => fairRows(line, between)),
  };
  faired.set(key, made);
  return made;
}

/** Outlines already faired, by name: every head has the same ones, in its own size. */
const faired = new Map<string, ReturnType<typeof fairOutline>>();

/** The head's fixed outlines where the head is, turned as it is. */
export function drawnHead(head: Head, view: ViewName, between: number): DrawnHead {
  const { face, hair, ears, lines } = fairOutline({ view, style: head.hair }, between);
  const [first, second] = {
    profile: [head.ahead, head.up],
    section: [head.port, head.up],
    plan: [head.ahead, head.port],
  }[view].map((axis) => inView(view, scale(axis, head.height))) as [ViewPoint, ViewPoint];
  const [x, y] = inView(view, head.at);
  const placed = (rows: Rows) =>
    rows.map(([a, b]) => [x + a! * first[0] + b! * second[0], y + a! * first[1] + b! * second[1]]);
  const skin = (ring: Rows) => ({ cover: 'skin' as const, ring: ringThrough(placed(ring)) });
  const seenEars = ears.map(skin);
  const hairs = hair.map((curve) => ({ cover: 'hair' as const, ring: ringThrough(placed(curve)) }));
  const fills = [skin(face), ...hairs];
  const { nape } = HEAD_OUTLINES[view];
  return {
    // From above the ears stand out from under the hair.
    fills: view === 'plan' ? [...seenEars, ...fills] : [...fills, ...seenEars],
    over: nape.length > 0 ? [skin(nape), ...hairs] : [],
    lines: [
      ...lines.map((line) => lineThrough(placed(line))),
      ...(view === 'profile' ? seenEars.map(({ ring }) => ring) : []),
    ],
  };
}
