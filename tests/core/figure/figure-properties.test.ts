import { describe, expect, it } from 'vitest';
import { type Flesh, squareTo, unit } from '../../../core/figure/body-part.ts';
import type { Figure } from '../../../core/figure/figure.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { cross, dot, norm, scale, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { chainRings } from '../../../core/graphics/chain.ts';
import { flatOval, hullRing, type Oval } from '../../../core/graphics/oval.ts';
import { isInRing, type Line, pointsOf, ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import { inView, VIEWS, type ViewName, type ViewPoint } from '../../../core/graphics/view.ts';
import { cases } from '../../cases.ts';
import { type Drawn, drawnAtRandom, INSTANTS } from './random-figures.ts';

/** The same paddlers for every check: five instants of each. */
const drawn = drawnAtRandom(cases(6, 500));
const each = (check: (one: Drawn, instant: number) => void) => {
  for (const instants of drawn) {
    for (const [k, one] of instants.entries()) check(one, INSTANTS[k]!);
  }
};

const ringsIn = (figure: Figure, view: ViewName, of: string) =>
  ringsOf(figureShapes(figure, view).filter((shape) => shape.of === of));

/** Outlines of one part in a view. */
const partRings = (figure: Figure, view: ViewName, of: string) => {
  const { flesh } = figure.parts.find(({ name }) => name === of)!;
  return flesh.flatMap((each) => fleshRings(each, view));
};
const fleshRings = ({ chains, hulls = [] }: Pick<Flesh, 'chains' | 'hulls'>, view: ViewName) => [
  ...chains.flatMap((chain) =>
    chainRings(
      chain.map((oval) => flatOval(oval, view)),
      40,
    ),
  ),
  ...hulls.map((hull) =>
    hullRing(
      hull.map((oval) => flatOval(oval, view)),
      40,
    ),
  ),
];

describe('the figure of any fit at any instant of the stroke', () => {
  it('has no outline that crosses itself, in any view', () => {
    each(({ figure }) => {
      for (const view of VIEWS) {
        const crossed = ringsOf(figureShapes(figure, view)).filter((ring) => crossings(ring) > 0);
        expect(crossed.length, view).toBe(0);
      }
    });
  });

  it('has every joint inside its limb, in any view', () => {
    each(({ figure, stance: { points } }) => {
      for (const view of VIEWS) {
        for (const [joint, limb] of JOINTS) {
          const at = inView(view, points[joint]);
          const inside = ringsIn(figure, view, limb).some((ring) => isInRing(ring, at));
          expect(inside, `${joint} in ${view}`).toBe(true);
        }
      }
    });
  });

  it('has both hands closed round the shaft and the grip, to 5 mm', () => {
    each(({ figure, stance: { points } }) => {
      const { shaft, grip } = figure.paddle!;
      expect(toLine(points.lowerHand, shaft)).toBeLessThan(0.005);
      expect(toLine(points.topHand, grip)).toBeLessThan(0.005);
      for (const which of ['lower', 'top'] as const) {
        const hand = figure.parts.find(({ name }) => name === `${which}Hand`)!;
        const middles = hand.flesh[0]!.chains.slice(0, 4).map(([base, tip]) => middleOf(base!.at, tip!.at));
        const fist = scale(
          middles.reduce((sum, at) => ({ x: sum.x + at.x, y: sum.y + at.y, z: sum.z + at.z })),
          1 / 4,
        );
        expect(toLine(fist, which === 'lower' ? shaft : grip)).toBeLessThan(0.005);
      }
    });
  });

  it('has its feet on their places, to 4 mm: heel, sole and toes reach their points and no farther', () => {
    each(({ figure, stance: { points } }) => {
      for (const [leg, end] of [
        ['front', 'front'],
        ['kneeling', 'rear'],
      ] as const) {
        const [heel, ball, toe] = [points[`${end}Heel`], points[`${end}Ball`], points[`${end}Toe`]];
        const sole = unit(subtract(ball, heel));
        const up = squareTo(subtract(points[`${leg}Ankle`], heel), sole);
        const foot = figure.parts.find(({ name }) => name === `${leg}Foot`)!.flesh[0]!.hulls!.flat();
        expect(Math.abs(beyond(foot, heel, scale(sole, -1))), `${leg} heel`).toBeLessThan(0.004);
        expect(Math.abs(beyond(foot.slice(0, -1), ball, scale(up, -1))), `${leg} sole`).toBeLessThan(0.004);
        expect(Math.abs(beyond(foot.slice(-1), toe, unit(subtract(toe, ball)))), `${leg} toe`).toBeLessThan(
          0.004,
        );
      }
    });
  });

  it('paints no shorts without a line over the shirt, where the front thigh grows out of the seat', () => {
    each(({ figure }) => {
      const { joins } = figure.parts.find(({ name }) => name === 'frontThigh')!;
      const [thigh, chest] = ['frontThigh', 'chest'].map((of) => partRings(figure, 'profile', of));
      for (const [x, y] of fleshRings(joins[0]!, 'profile').flatMap(pointsOf))
        expect(covered(chest!, [x, y]) && !covered(thigh!, [x, y]), `${x} ${y}`).toBe(false);
    });
  });

  it('has a round buttock: no notch in its line from the side', () => {
    each(({ figure }) => {
      const seat = partRings(figure, 'profile', 'seat');
      const { flesh } = figure.parts.find(({ name }) => name === 'seat')!;
      const sections = flesh.at(-1)!.chains[0]!;
      const [low, high] = [sections[0]!.at.z, sections[4]!.at.z];
      const aft = (z: number) => Math.min(...seat.map((ring) => leftmost(ring, z)));
      const heights = Array.from({ length: 30 }, (_, k) => low + ((high - low) * k) / 29);
      const line = heights.map(aft);
      for (let k = 1; k + 1 < line.length; k++)
        expect(line[k]! - (line[k - 1]! + line[k + 1]!) / 2, `${k}`).toBeLessThan(0.0003);
    });
  });

  it('shows its face when ready: nothing is drawn over eye, nose, mouth and chin from the side', () => {
    for (const [{ figure }] of drawn as [Drawn][]) {
      const shapes = figureShapes(figure, 'profile');
      const over = shapes.slice(shapes.findLastIndex(({ of }) => of === 'head') + 1);
      for (const at of FACE) expect(covers(over, onHead(figure, at)), String(at)).toBe(false);
    }
  });
});

const JOINTS = [
  ['kneelingKnee', 'kneelingLeg'],
  ['kneelingAnkle', 'kneelingLeg'],
  ['frontHip', 'frontLeg'],
  ['frontKnee', 'frontLeg'],
  ['frontAnkle', 'frontLeg'],
  ['kneelingHip', 'trunk'],
  ['midHip', 'trunk'],
  ['midShoulder', 'trunk'],
  ['lowerShoulder', 'lowerArm'],
  ['lowerElbow', 'lowerArm'],
  ['topShoulder', 'topArm'],
  ['topElbow', 'topArm'],
] as const;

/** Eye, nose, mouth and chin in head heights from the head's middle: ahead and up. */
const FACE: readonly ViewPoint[] = [
  [0.33, 0.04],
  [0.45, -0.11],
  [0.38, -0.25],
  [0.34, -0.45],
];

function onHead({ head: { at, ahead, up, height } }: Figure, [forward, high]: ViewPoint): ViewPoint {
  const place = (axis: keyof Vec3) => at[axis] + height * (forward * ahead[axis] + high * up[axis]);
  return [place('x'), place('z')];
}

const covers = (shapes: readonly Shape[], at: ViewPoint) =>
  ringsOf(shapes).some((ring) => isInRing(ring, at));

const covered = (rings: readonly Line[], at: ViewPoint) => rings.some((ring) => isInRing(ring, at));

/** The least x at which a ring crosses a height; Infinity where it does not. */
function leftmost(ring: Line, z: number): number {
  const points = pointsOf(ring);
  let least = Infinity;
  points.forEach(([ax, az], k) => {
    const [bx, bz] = points[(k + 1) % points.length]!;
    if (az > z !== bz > z) least = Math.min(least, ax + ((bx - ax) * (z - az)) / (bz - az));
  });
  return least;
}

const middleOf = (a: Vec3, b: Vec3): Vec3 => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });

/** Distance of a point from a line through two. */
function toLine(point: Vec3, [a, b]: readonly [Vec3, Vec3]): number {
  return norm(cross(subtract(point, a), subtract(b, a))) / norm(subtract(b, a));
}

/** How far some ovals reach beyond a point in a direction (a unit vector), metres. */
function beyond(ovals: readonly Oval[], from: Vec3, way: Vec3): number {
  return Math.max(
    ...ovals.map(
      ({ at, axes }) => dot(subtract(at, from), way) + Math.hypot(...axes.map((axis) => dot(axis, way))),
    ),
  );
}

const turn = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number) =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** How many pairs of a ring's sides cross each other properly. */
function crossings(ring: Line): number {
  const count = ring.length / 2;
  const [x, y] = [0, 1].map((axis) =>
    Float64Array.from({ length: count + 1 }, (_, k) => ring[2 * (k % count) + axis]!),
  ) as [Float64Array, Float64Array];
  let found = 0;
  for (let i = 0; i < count; i++) {
    const [ax, ay, bx, by] = [x[i]!, y[i]!, x[i + 1]!, y[i + 1]!];
    const [left, right] = [Math.min(ax, bx), Math.max(ax, bx)];
    const [low, high] = [Math.min(ay, by), Math.max(ay, by)];
    for (let j = i + 2; j < count; j++) {
      const [cx, cy] = [x[j]!, y[j]!];
      const [dx, dy] = [x[j + 1]!, y[j + 1]!];
      if ((cx < left && dx < left) || (cx > right && dx > right)) continue;
      if ((cy < low && dy < low) || (cy > high && dy > high)) continue;
      if (i === 0 && j === count - 1) continue;
      const [c, d] = [turn(ax, ay, bx, by, cx, cy), turn(ax, ay, bx, by, dx, dy)];
      const [a, b] = [turn(cx, cy, dx, dy, ax, ay), turn(cx, cy, dx, dy, bx, by)];
      if (Math.min(Math.abs(a), Math.abs(b), Math.abs(c), Math.abs(d)) < LEAST_TURN) continue;
      if (c > 0 !== d > 0 && a > 0 !== b > 0) found += 1;
    }
  }
  return found;
}

/** Turns smaller than this are rounding, square metres: a tenth of a millimetre on a side of a millimetre. */
const LEAST_TURN = 1e-7;
