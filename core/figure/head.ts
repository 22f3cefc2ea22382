import { add, cross, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { fairRows } from '../graphics/fair.ts';
import { type Line, lineThrough, ringThrough } from '../graphics/shape.ts';
import { inView, type ViewName, type ViewPoint } from '../graphics/view.ts';
import { type BodyPart, type Cover, type Posed, squareTo, unit } from './body-part.ts';
import { HEAD_OUTLINES } from './head-outlines.ts';

/** Chin to crown as a share of mid-shoulder to crown: the survey's 0.13 of stature (recalled) over its 0.2. */
const HEAD_OF_HEADNECK = 0.65;
/** Paddlers look ahead: of the trunk's lean the head keeps less than half. */
const UPRIGHT = 1.6;
/** Middle of the skull's base from the middle of the head, head heights: ahead and up. */
const SKULL = [-0.14, -0.3] as const;

/** The head in space: its middle, its height from chin to crown, and unit vectors. */
export interface Head {
  readonly at: Vec3;
  readonly height: number;
  readonly ahead: Vec3;
  readonly port: Vec3;
  readonly up: Vec3;
}

/** Where the head is and how it looks: toward the bow, more upright than the trunk. */
export function headOf({ midShoulder, headTop }: Posed['points']): Head {
  const neck = subtract(headTop, midShoulder);
  const height = HEAD_OF_HEADNECK * norm(neck);
  const lean = unit(neck);
  const up = unit(add(lean, { x: 0, y: 0, z: UPRIGHT }));
  const ahead = squareTo({ x: 1, y: 0, z: 0 }, up);
  const at = add(headTop, scale(lean, -height / 2));
  return { at, height, ahead, up, port: cross(up, ahead) };
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

function onHead({ at, ahead, up, height }: Head, forward: number, high: number): Vec3 {
  return add(add(at, scale(ahead, forward * height)), scale(up, high * height));
}

/** Outlines and lines of a head in a view. */
export interface DrawnHead {
  readonly fills: readonly { readonly cover: Cover; readonly ring: Line }[];
  readonly lines: readonly Line[];
}

type Rows = readonly (readonly number[])[];

/** The outlines of a view with fair points put between theirs, made once for each count. */
function fairOutline(
  view: ViewName,
  between: number,
): Record<'face' | 'hair', Rows> & Record<'ears' | 'lines', readonly Rows[]> {
  const key = `${view} ${between}`;
  const known = faired.get(key);
  if (known) return known;
  const { face, hair, ears, lines } = HEAD_OUTLINES[view];
  const ring = (curve: Rows) => fairRows(curve, between, true);
  const made = {
    face: ring(face),
    hair: ring(hair),
    ears: ears.map(ring),
    lines: lines.map((line) => fairRows(line, between)),
  };
  faired.set(key, made);
  return made;
}

const faired = new Map<string, ReturnType<typeof fairOutline>>();

/** The head's fixed outlines where the head is, turned as it is. */
export function drawnHead(head: Head, view: ViewName, between: number): DrawnHead {
  const { face, hair, ears, lines } = fairOutline(view, between);
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
  const fills = [skin(face), { cover: 'hair' as const, ring: ringThrough(placed(hair)) }];
  return {
    // From above the ears stand out from under the hair.
    fills: view === 'plan' ? [...seenEars, ...fills] : [...fills, ...seenEars],
    lines: [
      ...lines.map((line) => lineThrough(placed(line))),
      ...(view === 'profile' ? seenEars.map(({ ring }) => ring) : []),
    ],
  };
}
