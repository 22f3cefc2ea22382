import { norm, subtract } from '../frame/vec3.ts';
import { chainRings } from '../graphics/chain.ts';
import { flatOval, hullRing, type Oval } from '../graphics/oval.ts';
import { type Fill, type Line, lineThrough, type Role, ringsOf, type Shape } from '../graphics/shape.ts';
import { inView, nearness, type ViewName } from '../graphics/view.ts';
import type { BodyPart, Cover, Flesh, Limb, Opening } from './body-part.ts';
import { drawOrder, type Ordered } from './draw-order.ts';
import type { Figure } from './figure.ts';
import { drawnHead } from './head.ts';
import { openBands } from './openings.ts';
import { paddleShapes } from './paddle-shapes.ts';

/** Directions in which an oval's outline is sampled, and points added between two of a head's outline. */
const DIRECTIONS = { screen: 24, paper: 60 } as const;
const HEAD_BETWEEN = { screen: 1, paper: 3 } as const;

/** Pairs whose order is fixed, whatever their depth: hands close over the shaft, the head stands on the trunk. */
const AFTER = [
  ['head', 'chest'],
  ['head', 'neck'],
  ['chest', 'neck'],
  ['chest', 'seat'],
  ['lowerHand', 'paddle'],
  ['topHand', 'paddle'],
  ['lowerHand', 'lowerForearm'],
  ['topHand', 'topForearm'],
] as const;

/** Shapes made earlier of a figure: every layer that needs the same view gets the same. */
const made = new WeakMap<Figure, Map<ViewName, readonly Shape[]>>();

/** The figure as a view shows it, from the far to the near. Metres to the right and up in the view, boat frame. */
export function figureShapes(figure: Figure, view: ViewName): readonly Shape[] {
  const known = made.get(figure) ?? new Map<ViewName, readonly Shape[]>();
  made.set(figure, known);
  const shapes = known.get(view) ?? shapesFor(figure, view);
  known.set(view, shapes);
  return shapes;
}

/** Limbs whose shapes may lie beyond both legs, and so beyond the fittings. */
const HELD = new Set(['paddle', 'lowerArm', 'topArm']);

/** A figure's shapes in two: paddle and arms beyond both legs, which lie behind the fittings too, and all else. */
export function aroundBoat(shapes: readonly Shape[]): [beyond: readonly Shape[], rest: readonly Shape[]] {
  const first = shapes.findIndex(({ of }) => !HELD.has(of));
  return [shapes.slice(0, first), shapes.slice(first)];
}

/** One part ready to be put in order: its bones tell its depth, its shapes are what is painted. */
interface Piece extends Ordered {
  readonly limb?: Limb;
  readonly opens?: readonly Opening[];
  readonly shapes: readonly Shape[];
}

/** All shapes of a figure in one view, the farthest first. */
function shapesFor(figure: Figure, view: ViewName): Shape[] {
  const { fineness, parts, paddle } = figure;
  const far = farLimbs(figure, view);
  const seeing = { view, directions: DIRECTIONS[fineness], far };
  const pieces: Piece[] = parts.map((part) => ({
    ...part,
    shapes: part.name === 'head' ? headShapes(figure, view, far) : partShapes(part, seeing),
  }));
  if (paddle) {
    const shapes = paddleShapes(paddle, view, DIRECTIONS[fineness]);
    pieces.push({ name: 'paddle', bones: [[paddle.shaft[0], paddle.spine]], girth: 0.03, shapes });
  }
  const ordered = drawOrder(pieces, view, AFTER);
  return ordered.flatMap((piece, k) => [
    ...piece.shapes,
    ...openings(piece, { view, far, before: ordered.slice(0, k) }),
  ]);
}

/** Areas that hide the line where a piece grows out of a neighbour drawn before it. */
function openings(
  piece: Piece,
  { view, far, before }: { view: ViewName; far: ReadonlySet<Limb>; before: readonly Piece[] },
): Shape[] {
  return (piece.opens ?? []).flatMap((opening): Shape[] => {
    const neighbour = before.find(({ name }) => name === opening.into);
    if (!neighbour?.limb) return [];
    const rings = openBands(opening, view, {
      own: ringsOf(piece.shapes),
      neighbour: ringsOf(neighbour.shapes),
    });
    const role = roleOf(opening.cover, far.has(neighbour.limb));
    return rings.map((ring) => ({
      kind: 'area',
      of: piece.limb ?? '',
      fills: [{ role, rings: [ring] }],
      outline: null,
    }));
  });
}

/** Names of the parts that make up both legs. */
const LEGS = ['kneelingLeg', 'frontLeg'] as const;
const ARMS = ['lowerArm', 'topArm'] as const;
/** From behind a limb this much beyond the trunk is drawn paler, metres. */
const BEYOND = 0.12;

/** Limbs drawn paler: of each pair the one farther from the eye; from behind what is beyond the trunk; from above the legs. */
function farLimbs({ parts }: Figure, view: ViewName): ReadonlySet<Limb> {
  if (view === 'plan') return new Set<Limb>(LEGS);
  const mean = (limb: Limb) => {
    const ends = parts.filter((part) => part.limb === limb).flatMap(({ bones }) => bones.flat());
    return ends.reduce((sum, at) => sum + nearness(view, at), 0) / Math.max(1, ends.length);
  };
  if (view === 'profile') return new Set([LEGS, ARMS].map(([a, b]) => (mean(a) < mean(b) ? a : b)));
  const trunk = mean('trunk') - BEYOND;
  return new Set([...LEGS, ...ARMS].filter((limb) => mean(limb) < trunk));
}

/** What every shape of one picture shares. */
interface Seeing {
  readonly view: ViewName;
  /** Directions in which an oval's outline is sampled; more are smoother and slower. */
  readonly directions: number;
  /** Limbs on the side away from the eye, which are toned down. */
  readonly far: ReadonlySet<Limb>;
}

/** How the outline of a part is drawn. */
const OUTLINE = { role: 'figureLine', weight: 'contour' } as const;

/** The painter's role of a cover: toned down for a far limb, but for hair, which has one tone. */
function roleOf(cover: Cover, far: boolean): Role {
  return cover === 'hair' || !far ? cover : `${cover}Far`;
}

/**
 * A part's area with its outline, what joins it to a neighbour without an outline, and the lines within it.
 */
function partShapes(part: BodyPart, seeing: Seeing): Shape[] {
  const area = (flesh: readonly Flesh[], outline: typeof OUTLINE | null): Shape => ({
    kind: 'area',
    of: part.limb,
    fills: flesh.map((each) => fillOf(each, part.limb, seeing)),
    outline,
  });
  const joins = isAlong(part, seeing.view) ? part.joins : [];

  return [
    area(part.flesh, OUTLINE),
    ...joins.map((flesh) => area([flesh], null)),
    ...innerLines(part, seeing.view),
  ];
}

/** One piece of flesh as rings: sleeves oval by oval, and convex outlines round groups. */
function fillOf(
  { cover, chains, hulls = [], limb }: Flesh,
  own: Limb,
  { view, directions, far }: Seeing,
): Fill {
  const flat = (ovals: readonly Oval[]) => ovals.map((oval) => flatOval(oval, view));
  const rings: Line[] = [];
  for (const chain of chains) rings.push(...chainRings(flat(chain), directions));
  for (const hull of hulls) rings.push(hullRing(flat(hull), directions));
  return { role: roleOf(cover, far.has(limb ?? own)), rings };
}

/** The head as areas with an outline, what is painted over that line, and the lines of face and hair. */
function headShapes({ head, fineness }: Figure, view: ViewName, far: ReadonlySet<Limb>): Shape[] {
  const { fills, over, lines } = drawnHead(head, view, HEAD_BETWEEN[fineness]);
  const covers = (rings: typeof fills): Fill[] =>
    rings.map(({ cover, ring }) => ({ role: roleOf(cover, far.has('head')), rings: [ring] }));
  return [
    { kind: 'area', of: 'head', fills: covers(fills), outline: OUTLINE },
    { kind: 'area', of: 'head', fills: covers(over), outline: null },
    { kind: 'line', of: 'head', role: 'figureLine', weight: 'detail', lines },
  ];
}

/** A line that seems at least this share of its length is seen from its side. */
const FROM_ITS_SIDE = 0.35;

/** Whether a piece's joins are drawn. A shank that points to the eye has its line all round, and so has its foot. */
function isAlong({ joinsAlong }: BodyPart, view: ViewName): boolean {
  if (!joinsAlong) return true;
  const [from, to] = joinsAlong;
  const [a, b] = [inView(view, from), inView(view, to)];
  return Math.hypot(b[0] - a[0], b[1] - a[1]) > FROM_ITS_SIDE * norm(subtract(to, from));
}

/** Lines within a piece are drawn where at least this share of their length, and of the way between them, is seen. */
const SEEN = 0.6;

/** Lines within a part, such as those between fingers, left out where they are seen end on. */
function innerLines({ lines = [], limb }: BodyPart, view: ViewName): Shape[] {
  if (lines.length < 2) return [];
  const flat = lines.map((line) => line.map((point) => inView(view, point)));
  const seen = (i: readonly [number, number], j: readonly [number, number]) => {
    const [[ax, ay], [bx, by]] = [flat[i[0]]!.at(i[1])!, flat[j[0]]!.at(j[1])!];
    return (
      Math.hypot(bx - ax, by - ay) > SEEN * norm(subtract(lines[i[0]]!.at(i[1])!, lines[j[0]]!.at(j[1])!))
    );
  };
  if (!seen([0, 0], [0, -1]) || !seen([0, 0], [1, 0])) return [];
  return [{ kind: 'line', of: limb, role: 'figureLine', weight: 'detail', lines: flat.map(lineThrough) }];
}
