import type { Paddle } from '../document/seat-schema.ts';
import type { Vec3 } from '../frame/vec3.ts';
import { reachOf } from '../graphics/oval.ts';
import { BETWEEN, type BodyPart, type FigureBody, type Fineness, ovalsOf, type Posed } from './body-part.ts';
import { formOf } from './form.ts';
import { type Head, headOf, headPart, skullOf } from './head.ts';
import { armParts, frontThighPart, shankParts } from './limbs.ts';
import { type PaddleShape, paddleShape } from './paddle-shape.ts';
import { trunkParts } from './trunk.ts';

/** A kneeling paddler with the paddle in the hands, boat frame, metres; made once for a stance, seen in every view. */
export interface Figure {
  /** Trunk, limbs, hands and feet. In no order: a view decides which lies over which. */
  readonly parts: readonly BodyPart[];
  readonly head: Head;
  /** Null where nothing is held, as in the pictures of measuring. */
  readonly paddle: PaddleShape | null;
  /** How finely outlines are followed. */
  readonly fineness: Fineness;
}

/** The figure of a body in a stance (points in the boat frame, metres), as fine as it is needed; hands without a paddle are open. */
export function figureOf(
  points: Posed['points'],
  body: FigureBody,
  { paddle, fineness }: { paddle: Paddle | null; fineness: Fineness },
): Figure {
  const posed = {
    points,
    body,
    form: formOf(body.sex, BETWEEN[fineness]),
    between: BETWEEN[fineness],
    open: !paddle,
  };
  const head = headOf(points, body.sex);
  return {
    parts: [
      ...trunkParts(posed, skullOf(head)),
      headPart(head),
      ...shankParts(posed, 'kneeling'),
      frontThighPart(posed),
      ...shankParts(posed, 'front'),
      ...armParts(posed, 'lower'),
      ...armParts(posed, 'top'),
    ],
    head,
    paddle: paddle && paddleShape(paddle, { top: points.topHand, lower: points.lowerHand }),
    fineness,
  };
}

/** The box round a figure with its paddle, boat frame, metres. */
export function figureBox({ parts, head, paddle }: Figure): { least: Vec3; most: Vec3 } {
  const around = { at: head.at, by: { x: head.height / 2, y: head.height / 2, z: head.height / 2 } };
  const nothing = { x: 0, y: 0, z: 0 };
  const spans = [
    around,
    ...parts
      .flatMap(({ flesh }) => flesh.flatMap(ovalsOf))
      .map((oval) => ({ at: oval.at, by: reachOf(oval) })),
    ...(paddle?.blade ?? []).map((at) => ({ at, by: nothing })),
  ];
  const end = (sign: 1 | -1, axis: keyof Vec3) =>
    sign * Math.max(...spans.map(({ at, by }) => sign * at[axis] + by[axis]));
  const corner = (sign: 1 | -1) => ({ x: end(sign, 'x'), y: end(sign, 'y'), z: end(sign, 'z') });
  return { least: corner(-1), most: corner(1) };
}
