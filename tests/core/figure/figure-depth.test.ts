import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../core/figure/figure.ts';
import { figureShapes } from '../../../core/figure/figure-shapes.ts';
import { along, norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { isInRing, ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import { inView, nearness, VIEWS, type ViewName, type ViewPoint } from '../../../core/graphics/view.ts';
import { cases } from '../../cases.ts';
import { type Drawn, drawnAtRandom } from './random-figures.ts';

/** A limb as its bone and the farthest that its flesh reaches from it, share of stature; `of` is what its shapes belong to. */
interface Limb {
  readonly of: string;
  readonly bone: readonly [Vec3, Vec3];
  readonly reach: number;
}

/** Half-depths are the greatest of the survey's (ANSUR II) for a limb, rounded up: the surfaces beyond them are apart. */
const REACH = { thigh: 0.056, shank: 0.036, arm: 0.03, trunk: 0.09, head: 0.06, paddle: 0.012 };

function limbsOf({ figure, stance: { points: p } }: Drawn): Limb[] {
  const limb = (of: string, bone: readonly [Vec3, Vec3], reach: number): Limb => ({ of, bone, reach });
  const arm = (which: 'lower' | 'top') => [
    limb(`${which}Arm`, [p[`${which}Shoulder`], p[`${which}Elbow`]], REACH.arm),
    limb(`${which}Arm`, [p[`${which}Elbow`], p[`${which}Hand`]], REACH.arm),
  ];
  return [
    limb('trunk', [p.midHip, p.midShoulder], REACH.trunk),
    limb('trunk', [p.kneelingHip, p.kneelingKnee], REACH.thigh),
    limb('kneelingLeg', [p.kneelingKnee, p.kneelingAnkle], REACH.shank),
    limb('frontLeg', [p.frontHip, p.frontKnee], REACH.thigh),
    limb('frontLeg', [p.frontKnee, p.frontAnkle], REACH.shank),
    limb('head', [figure.head.at, p.headTop], REACH.head),
    ...arm('lower'),
    ...arm('top'),
    limb('paddle', figure.paddle!.shaft, REACH.paddle),
  ];
}

/** A place this near to an end of a bone is at a joint or a hand, metres. */
const AT_AN_END = 0.08;
/** Places looked at along a bone. */
const PLACES = 16;

interface Place {
  readonly at: ViewPoint;
  readonly near: number;
}

function placesOn([from, to]: Limb['bone'], view: ViewName): Place[] {
  const least = AT_AN_END / norm(subtract(to, from));
  if (least >= 0.5) return [];
  return Array.from({ length: PLACES }, (_, k) => {
    const point = along(from, to, least + ((1 - 2 * least) * k) / (PLACES - 1));
    return { at: inView(view, point), near: nearness(view, point) };
  });
}

/** Where two limbs lie over each other in a view: places on their bones nearer to each other than half of what the thinner one reaches. */
function meetings(a: Limb, b: Limb, { view, stature }: { view: ViewName; stature: number }) {
  const half = (Math.min(a.reach, b.reach) / 2) * stature;
  const others = placesOn(b.bone, view);
  return placesOn(a.bone, view).flatMap((one) =>
    others
      .filter(({ at }) => Math.hypot(at[0] - one.at[0], at[1] - one.at[1]) < half)
      .map((other) => ({
        at: [(one.at[0] + other.at[0]) / 2, (one.at[1] + other.at[1]) / 2] as const,
        apart: one.near - other.near,
      })),
  );
}

/** The last shape of a limb that covers a place, as its number in the order of painting; -1 where none does. */
const lastOver = (shapes: readonly Shape[], of: string, at: ViewPoint) =>
  shapes.findLastIndex((shape) => shape.of === of && ringsOf([shape]).some((ring) => isInRing(ring, at)));

/** Hands close round the shaft: there neither is before the other. */
const isAtAHand = ({ stance: { points } }: Drawn, view: ViewName, at: ViewPoint) =>
  [points.lowerHand, points.topHand].some((hand) => {
    const [x, y] = inView(view, hand);
    return Math.hypot(at[0] - x, at[1] - y) < AT_AN_END;
  });

interface Crossed {
  readonly what: string;
  readonly nearerIsOver: boolean;
}

/** Every place where two limbs lie over each other and their flesh is apart: whether what is nearer is painted over the other. */
function crossedIn(drawn: Drawn, view: ViewName): Crossed[] {
  const limbs = limbsOf(drawn);
  const stature = statureOf(drawn.figure);
  const shapes = figureShapes(drawn.figure, view);
  const pairs = limbs.flatMap((a, i) => limbs.slice(i + 1).map((b) => [a, b] as const));
  return pairs.flatMap(([a, b]) => {
    if (a.of === b.of) return [];
    const found = meetings(a, b, { view, stature });
    const clear = found.filter(({ apart }) => Math.abs(apart) > (a.reach + b.reach) * stature);
    return clear.flatMap(({ at, apart }): Crossed[] => {
      const [near, far] = apart > 0 ? [a, b] : [b, a];
      if (isAtAHand(drawn, view, at)) return [];
      const [over, under] = [lastOver(shapes, near.of, at), lastOver(shapes, far.of, at)];
      if (over < 0 || under < 0) return [];
      return [{ what: `${near.of} over ${far.of} in ${view}`, nearerIsOver: over > under }];
    });
  });
}

/** The head is 0.13 of stature at 1.75 m; near enough for the room between limbs. */
const statureOf = ({ head }: Figure) => head.height / 0.13;

describe('the order of depth, of any fit at any instant of the stroke', () => {
  const figures = drawnAtRandom(cases(6, 500)).flat();
  const crossed = figures.flatMap((drawn) => VIEWS.flatMap((view) => crossedIn(drawn, view)));

  it('paints what is nearer over what is farther, wherever two limbs cross', () => {
    expect(crossed.length).toBeGreaterThan(20 * figures.length);
    expect(crossed.filter(({ nearerIsOver }) => !nearerIsOver).map(({ what }) => what)).toEqual([]);
  });

  it.each(VIEWS)('has crossings to look at in %s', (view) => {
    expect(
      new Set(crossed.filter(({ what }) => what.endsWith(view)).map(({ what }) => what)).size,
    ).toBeGreaterThan(0);
  });
});
